package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.loomwright.store.Samples.van;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Opening, refusing to open, closing, and what the database itself refuses. */
class OpeningTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void theDatabaseItselfRefusesToOverwriteOrDelete(Place place) throws SQLException {
    StoreTarget target = place.fresh(folder);
    try (Store store = Store.open(target)) {
      store.documents().save(van(""), 0);
    }
    try (Connection raw = raw(target)) {
      for (String sql :
          List.of(
              "UPDATE revision SET content = '{}'",
              "DELETE FROM revision",
              "INSERT OR REPLACE INTO revision SELECT seq, kind, id, number, based_on, author,"
                  + " saved_at, reason, '{}', content_hash, previous_hash, seal, retired,"
                  + " papers FROM revision",
              "TRUNCATE revision CASCADE")) {
        boolean known = place == Place.SQLITE ? !sql.startsWith("TR") : !sql.contains("REPLACE");
        if (known) {
          assertThatThrownBy(() -> raw.createStatement().execute(sql))
              .as(sql)
              .hasMessageContaining("what is kept in revision is never changed or deleted");
        }
      }
    }
    try (Store store = Store.open(target)) {
      assertThat(store.documents().newest(Samples.VAN).orElseThrow().content())
          .isEqualTo(van("").content());
    }
  }

  @Test
  void aClosedStoreIsOneFile() throws IOException {
    try (Store store = Store.open(Place.SQLITE.fresh(folder))) {
      store.documents().save(van(""), 0);
    }
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void commitsAreOnTheDiskBeforeTheyAreReported() {
    try (Database database = Database.open(Place.SQLITE.fresh(folder))) {
      assertThat(pragma(database, "journal_mode")).isEqualTo("wal");
      // 2 is FULL.
      assertThat(pragma(database, "synchronous")).isEqualTo("2");
      assertThat(pragma(database, "foreign_keys")).isEqualTo("1");
      assertThat(pragma(database, "busy_timeout")).isEqualTo("10000");
    }
  }

  private static String pragma(Database database, String name) {
    return database.read(handle -> handle.createQuery("PRAGMA " + name).mapTo(String.class).one());
  }

  @Test
  void aFolderThatIsNotThereIsNamed() {
    Path file = folder.resolve("none/shop.db");
    assertRefused(
        new StoreTarget.SqliteFile(file),
        file + " can't be made: there is no folder " + file.getParent() + "; make it first");
    assertRefused(new StoreTarget.SqliteFile(folder), folder + " is a folder; name a file in it");
  }

  @Test
  void aFileThatIsNoStoreIsLeftAlone() throws IOException, SQLException {
    Path text = Files.writeString(folder.resolve("notes.txt"), "buy terminals\n".repeat(100));
    assertRefused(new StoreTarget.SqliteFile(text), text + ": the file is no store");
    assertThat(text).hasContent("buy terminals\n".repeat(100));

    Path other = folder.resolve("other.db");
    try (Connection raw = raw(new StoreTarget.SqliteFile(other))) {
      raw.createStatement().execute("CREATE TABLE songs (title TEXT)");
    }
    assertRefused(
        new StoreTarget.SqliteFile(other),
        other + " is a database of another program; name a new file or an empty database");
  }

  @ParameterizedTest
  @EnumSource
  void aStoreOfANewerProgramIsLeftAlone(Place place) throws SQLException {
    StoreTarget target = place.fresh(folder);
    Store.open(target).close();
    try (Connection raw = raw(target)) {
      raw.createStatement()
          .execute("UPDATE flyway_schema_history SET version = '99' WHERE version = '2'");
    }
    assertRefused(
        target, target.shown() + " was written by a newer Loomwright; open it with that one");
  }

  @Test
  void aServerThatDoesNotAnswerIsNamedWithoutItsPassword() {
    StoreTarget target = StoreTarget.parse("jdbc:postgresql://127.0.0.1:1/shop?user=a&password=b");
    assertRefused(
        target,
        "jdbc:postgresql://127.0.0.1:1/shop?user=a&password=…: the server can't be reached");
    assertThat(target.toString()).doesNotContain("password=b");
  }

  @Test
  void aPlaceThatIsNoneIsRefused() {
    assertThatThrownBy(() -> StoreTarget.parse("jdbc:other:x"))
        .hasMessageStartingWith("'jdbc:other:x' is no place for a store; name a file");
    assertThatThrownBy(() -> StoreTarget.parse("a\0b")).isInstanceOf(StoreException.class);
    assertThat(StoreTarget.parse("shop.db")).isInstanceOf(StoreTarget.SqliteFile.class);
  }

  private static void assertRefused(StoreTarget target, String words) {
    assertThatThrownBy(() -> Store.open(target))
        .isInstanceOf(StoreException.class)
        .hasMessageStartingWith(words);
  }

  static Connection raw(StoreTarget target) throws SQLException {
    String url =
        target instanceof StoreTarget.PostgresServer server
            ? server.url()
            : "jdbc:sqlite:" + ((StoreTarget.SqliteFile) target).file();
    return DriverManager.getConnection(url);
  }
}
