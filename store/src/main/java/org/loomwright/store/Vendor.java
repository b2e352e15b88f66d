package org.loomwright.store;

import com.zaxxer.hikari.HikariConfig;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * What differs between the databases.
 *
 * @param scripts folder of its own migrations beside the common ones
 * @param bytesType type of a column of bytes
 * @param beginRead starts a transaction that sees one state of the data and hinders nobody
 * @param lockWrites first statement of a writing transaction, so that writes follow one another
 */
record Vendor(String scripts, String bytesType, String beginRead, Optional<String> lockWrites) {
  private static final int BUSY_MS = 10_000;
  private static final int CONNECTIONS = 4;

  private static final Vendor SQLITE =
      new Vendor("sqlite", "BLOB", "BEGIN DEFERRED", Optional.empty());

  /** The number of the lock is our own; any fixed one does. */
  private static final Vendor POSTGRES =
      new Vendor(
          "postgresql",
          "BYTEA",
          "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY",
          Optional.of("SELECT pg_advisory_xact_lock(5610713)"));

  static Vendor of(StoreTarget target) {
    return target instanceof StoreTarget.SqliteFile ? SQLITE : POSTGRES;
  }

  boolean isSqlite() {
    return equals(SQLITE);
  }

  Map<String, String> placeholders() {
    return Map.of("bytes", bytesType);
  }

  /** How to connect; SQLite safely: a commit is on the disk before it is reported. */
  static HikariConfig pool(StoreTarget target) {
    HikariConfig pool = new HikariConfig();
    pool.setPoolName("store");
    pool.setMaximumPoolSize(CONNECTIONS);
    if (target instanceof StoreTarget.SqliteFile sqlite) {
      Path file = sqlite.file();
      checkPlace(file);
      SQLiteConfig config = new SQLiteConfig();
      config.setJournalMode(SQLiteConfig.JournalMode.WAL);
      config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
      config.enforceForeignKeys(true);
      config.setBusyTimeout(BUSY_MS);
      config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
      SQLiteDataSource source = new SQLiteDataSource(config);
      source.setUrl("jdbc:sqlite:" + file);
      pool.setDataSource(source);
    } else if (target instanceof StoreTarget.PostgresServer server) {
      pool.setJdbcUrl(server.url());
    }
    return pool;
  }

  private static void checkPlace(Path file) {
    Path folder = file.getParent();
    if (folder == null || Files.isDirectory(file)) {
      throw new StoreException(file + " is a folder; name a file in it");
    }
    if (!Files.isDirectory(folder)) {
      throw new StoreException(
          file + " can't be made: there is no folder " + folder + "; make it first");
    }
    if (Files.exists(file) && !Files.isWritable(file)) {
      throw new StoreException(file + " can't be written; allow writing to it");
    }
    if (!Files.isWritable(folder)) {
      throw new StoreException(
          file
              + " can't be written: the folder "
              + folder
              + " is read-only, and beside the file others are needed; allow writing to it");
    }
  }
}
