package org.loomwright.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

/**
 * The shop's documents, pictures and releases in one database. Every save is a new revision;
 * nothing is overwritten or deleted. May be used by many threads at once.
 */
public final class Store implements AutoCloseable {
  private final Database database;
  private final Documents documents;
  private final StoredPictures pictures;
  private final Workspaces workspaces;
  private final Releases releases;
  private final Papers papers;

  private Store(Database database, Clock clock) {
    this.database = database;
    this.documents = new Documents(database, clock);
    this.pictures = new StoredPictures(database, documents);
    this.workspaces = new Workspaces(database, documents);
    this.releases = new Releases(database, clock);
    this.papers = new Papers(database);
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

  /** Pictures and their file names. */
  public StoredPictures pictures() {
    return pictures;
  }

  /** Import and export. */
  public Workspaces workspaces() {
    return workspaces;
  }

  /** Released kits. */
  public Releases releases() {
    return releases;
  }

  /** Papers that are kept. */
  public Papers papers() {
    return papers;
  }

  /**
   * A number that grows with every revision and every release, whoever wrote it; cheap enough to
   * ask for at every page. A picture that no name was given yet does not count.
   */
  public long state() {
    return database.read(Revisions::state);
  }

  /** How much it holds, with its last seals; what a backup of this moment would hold. */
  public BackupSummary summary() {
    return database.read(BackupSummary::of);
  }

  /**
   * Recomputes every hash and every chain, and has the database check its file.
   *
   * @return what is not as it was written; empty when all is well
   */
  public List<Damage> verify() {
    return database.read(handle -> Verification.of(handle, database.vendor()));
  }

  /**
   * Writes the state of this moment into a file, while others go on saving. It can be restored into
   * either kind of database.
   *
   * @param file a file that is not there yet
   * @throws StoreException when it can't be written or this store is damaged; there is no file then
   */
  public BackupSummary backup(Path file) {
    return database.read(
        handle -> {
          List<Damage> damages = Verification.of(handle, database.vendor());
          if (!damages.isEmpty()) {
            throw new StoreException(
                database.target().shown()
                    + " is damaged, so it is not backed up: "
                    + damages.get(0).words()
                    + "; restore the newest good backup");
          }
          return NewFile.write(file, out -> Backup.write(handle, out));
        });
  }

  /**
   * Makes a store from a backup, checks every hash and every count, and opens it.
   *
   * @param target a place that holds nothing yet
   * @throws StoreException when the backup is damaged or the place is not empty; nothing is
   *     restored then
   */
  public static Store restore(Path file, StoreTarget target) {
    if (!Files.isRegularFile(file)) {
      throw new StoreException(file + " is no file; name the backup to restore");
    }
    Store store = open(target);
    try {
      store.database.write(
          handle -> {
            boolean hasPictures =
                handle.createQuery("SELECT count(*) FROM blob").mapTo(Long.class).one() > 0;
            if (hasPictures || Revisions.tail(handle, "revision").seq() != 0) {
              throw new StoreException(
                  target.shown()
                      + " holds documents or pictures already; restore to a new file or an empty database");
            }
            return Restore.read(handle, store.database.vendor(), file);
          });
      return store;
    } catch (RuntimeException e) {
      store.close();
      throw e;
    }
  }

  /** Ends all connections. */
  @Override
  public void close() {
    database.close();
  }
}
