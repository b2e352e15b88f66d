package org.loomwright.cli.store;

import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --db} of all commands that work on the store. */
public final class StoreOption {

  @Option(
      names = "--db",
      paramLabel = "PLACE",
      description = {
        "The store: a file, or a PostgreSQL database as jdbc:postgresql://HOST/DATABASE?user=NAME.",
        "Without it " + Place.VARIABLE + " of the environment, or shop.db in your data folder."
      })
  private Optional<String> db;

  /** Whether a place was named on the command line. */
  public boolean named() {
    return db.isPresent();
  }

  /**
   * The place meant.
   *
   * @throws org.loomwright.cli.shell.WrongInput when it is neither a file nor an address
   */
  public Place place() {
    return Place.of(db);
  }
}
