package org.loomwright.store;

import java.nio.file.Path;
import java.util.regex.Pattern;

/** Where a store is kept. */
public sealed interface StoreTarget {

  /** A SQLite database in one file, made when it is not there; its folder must be. */
  record SqliteFile(Path file) implements StoreTarget {
    public SqliteFile {
      file = file.toAbsolutePath().normalize();
    }

    @Override
    public String shown() {
      return file.toString();
    }
  }

  /**
   * A database of a PostgreSQL server.
   *
   * @param url JDBC address, {@code jdbc:postgresql://host:port/database?user=…&password=…}
   */
  record PostgresServer(String url) implements StoreTarget {
    private static final Pattern SECRETS = Pattern.compile("(?i)((?:ssl)?password=)[^&]*");

    public PostgresServer {
      if (!url.startsWith(POSTGRES)) {
        throw new StoreException(
            "the address of a PostgreSQL database starts with " + POSTGRES + "//HOST/DATABASE");
      }
    }

    /** The address without its password. */
    @Override
    public String shown() {
      return SECRETS.matcher(url).replaceAll("$1…");
    }

    @Override
    public String toString() {
      return "PostgresServer[" + shown() + "]";
    }
  }

  /** How addresses of PostgreSQL databases start. */
  String POSTGRES = "jdbc:postgresql:";

  /** The name of the place for messages, without secrets. */
  String shown();

  /**
   * The target a person named: an address starting with {@code jdbc:postgresql:}, else a file.
   *
   * @throws StoreException when it is neither
   */
  static StoreTarget parse(String text) {
    if (text.startsWith(POSTGRES)) {
      return new PostgresServer(text);
    }
    if (text.startsWith("jdbc:") || text.contains("://") || text.isBlank()) {
      throw new StoreException(
          "'"
              + text
              + "' is no place for a store; name a file, or a PostgreSQL database as "
              + POSTGRES
              + "//HOST/DATABASE?user=NAME");
    }
    try {
      return new SqliteFile(Path.of(text));
    } catch (java.nio.file.InvalidPathException e) {
      throw new StoreException("'" + text + "' can't be the name of a file: " + e.getReason(), e);
    }
  }
}
