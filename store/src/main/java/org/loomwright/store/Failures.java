package org.loomwright.store;

import java.sql.SQLException;
import java.util.Optional;
import org.flywaydb.core.api.CoreErrorCode;
import org.flywaydb.core.api.FlywayException;
import org.sqlite.SQLiteException;

/** Turns what a database reports into words for the people who use it. */
final class Failures {
  private static final String KEPT = "; what was saved before is kept";

  private Failures() {}

  static StoreException of(Throwable failure, StoreTarget target) {
    if (failure instanceof StoreException known) {
      return known;
    }
    if (failure instanceof FlywayException e
        && e.getErrorCode() == CoreErrorCode.NON_EMPTY_SCHEMA_WITHOUT_SCHEMA_HISTORY_TABLE) {
      return new StoreException(
          target.shown()
              + " is a database of another program; name a new file or an empty database",
          failure);
    }
    String words = cause(failure).map(Failures::words).orElseGet(failure::toString);
    return new StoreException(target.shown() + ": " + words, failure);
  }

  private static Optional<SQLException> cause(Throwable failure) {
    Optional<SQLException> found = Optional.empty();
    for (Throwable at = failure; at != null; at = at.getCause()) {
      if (at instanceof SQLException e) {
        found = Optional.of(e);
      }
    }
    return found;
  }

  private static String words(SQLException e) {
    return e instanceof SQLiteException lite ? sqlite(lite) : server(e);
  }

  private static String sqlite(SQLiteException e) {
    // The low byte holds the kind of failure, the rest details of it.
    return switch (e.getResultCode().code & 0xFF) {
      case 5, 6 -> "the file is in use by another program; close that one and try again" + KEPT;
      case 8 -> "the file can't be written; allow writing to it and to its folder" + KEPT;
      case 10 ->
          "the disk refuses to read or write the file ("
              + e.getResultCode()
              + "); look for a full or failing disk or a limit on file sizes"
              + KEPT;
      case 11 -> "the file is damaged; restore the newest backup to a new file";
      case 13 -> "there is no room left on the disk for the file; free some and save again" + KEPT;
      case 14 ->
          "the file can't be opened or made; check that its folder exists and may be written to";
      case 26 -> "the file is no store, or it is damaged; name another file or restore a backup";
      default -> "the database refuses: " + e.getMessage();
    };
  }

  private static String server(SQLException e) {
    String state = String.valueOf(e.getSQLState());
    if (state.startsWith("08")) {
      return "the server can't be reached; check that it runs and that host and port are right ("
          + e.getMessage()
          + ")";
    }
    if (state.startsWith("28")) {
      return "the server refuses the login; check user and password in the address";
    }
    return switch (state) {
      case "3D000" -> "the server has no such database; make it with createdb, or name another";
      case "53100" -> "the server's disk is full; free some and save again" + KEPT;
      case "25006", "42501" -> "the user may not write there; grant it that right" + KEPT;
      default -> "the database refuses: " + e.getMessage();
    };
  }
}
