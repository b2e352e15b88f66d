package org.loomwright.store;

import java.time.Clock;

/**
 * The shop's documents, pictures and releases in one database. Every save is a new revision;
 * nothing is overwritten or deleted. May be used by many threads at once.
 */
public final class Store implements AutoCloseable {
  private final Database database;
  private final Documents documents;

  private Store(Database database, Clock clock) {
    this.database = database;
    this.documents = new Documents(database, clock);
  }

  /**
   * Opens a store, makes it when it is not there, and brings its tables up to date.
   *
   * @throws StoreException when it can't be opened; the message names the place and what to do
   */
  public static Store open(StoreTarget target) {
    return open(target, Clock.systemUTC());
  }

  /** As {@link #open(StoreTarget)}, with the clock that says when something was saved. */
  public static Store open(StoreTarget target, Clock clock) {
    return new Store(Database.open(target), clock);
  }

  /** Documents and their revisions. */
  public Documents documents() {
    return documents;
  }

  /** Ends all connections. */
  @Override
  public void close() {
    database.close();
  }
}
