package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.store.Samples.ANNA;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.model.design.Verdict;

/**
 * A store and a backup as the first form of the program wrote them ({@code first.db}, {@code
 * first-backup.zip}): tables of version 2, no retired documents, of packs the hashes alone. Five
 * documents with two revisions each, a job, a picture and two releases.
 */
class OldStoreTest {
  private static final String REVISION_SEAL =
      "ad825208ffd336a9332119a0e75fe7e6db570fc95a9f2c4fd3d889db5d1de4fa";
  private static final String RELEASE_SEAL =
      "e15deae464e298138aae2ef1979c99a52624e5a3e76f852b48da2dba71311b5f";
  private static final BackupSummary HELD =
      new BackupSummary(12, 1, 2, 0, REVISION_SEAL, RELEASE_SEAL);

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void itIsBroughtUpToDateAndWorkGoesOn(Place place) throws IOException, SQLException {
    StoreTarget target = old(place);
    try (Store store = Store.open(target)) {
      assertHolds(store);
      goOn(store);
      Path backup = folder.resolve("backup.zip");
      store.backup(backup);
      try (Store restored = Store.restore(backup, place.fresh(folder))) {
        assertThat(restored.releases().all()).isEqualTo(store.releases().all());
        assertThat(restored.summary()).isEqualTo(store.summary());
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void aBackupOfItCanBeRestored(Place place) throws IOException {
    Path backup = copied("first-backup.zip");
    try (Store store = Store.restore(backup, place.fresh(folder))) {
      assertHolds(store);
      goOn(store);
    }
  }

  /** Guards against a file that some later program touched. */
  @Test
  void theFileIsAnOldOne() throws IOException, SQLException {
    try (Connection raw = OpeningTest.raw(new StoreTarget.SqliteFile(copied("first.db")));
        ResultSet version =
            raw.createStatement()
                .executeQuery(
                    "SELECT max(installed_rank), max(version) FROM flyway_schema_history")) {
      assertThat(version.next()).isTrue();
      assertThat(version.getString(2)).isEqualTo("2");
    }
  }

  private static void assertHolds(Store store) {
    assertThat(store.verify()).isEmpty();
    assertThat(store.summary()).isEqualTo(HELD);
    assertThat(store.documents().newest()).hasSize(7).noneMatch(Revision::retired);
    DocumentKey kit = new DocumentKey("kit", "first");
    assertThat(store.documents().newest(kit).orElseThrow().content()).contains("two");
    assertThat(store.documents().version(kit, 1).orElseThrow().content()).contains("one");
    List<Release> releases = store.releases().of("first");
    assertThat(releases).extracting(Release::number).containsExactly(2L, 1L);
    assertThat(releases)
        .extracting(Release::verdict)
        .containsExactly(Verdict.MARGINAL, Verdict.HOLDS);
    assertThat(releases).noneMatch(Release::packKept);
    assertThat(releases.get(0).pack())
        .containsEntry("leads.csv", Hashes.of("x"))
        .containsOnlyKeys("leads.csv", "pack.pdf");
    assertThat(store.releases().file("first", 1, "pack.pdf")).isEqualTo(Optional.empty());
  }

  private static void goOn(Store store) {
    DocumentKey job = new DocumentKey("job", "van");
    assertThat(store.documents().retire(job, 1, ANNA)).isInstanceOf(SaveResult.Saved.class);
    byte[] csv = "a;b\n".getBytes(StandardCharsets.UTF_8);
    List<Pin> pins =
        store.releases().of("first").get(0).pins().stream().map(it -> it.pin()).toList();
    store
        .releases()
        .release(new ReleaseDraft("first", pins, Verdict.HOLDS, Map.of("leads.csv", csv), ANNA));
    assertThat(store.releases().file("first", 3, "leads.csv")).contains(csv);
    assertThat(store.verify()).isEmpty();
  }

  private StoreTarget old(Place place) throws IOException, SQLException {
    StoreTarget file = new StoreTarget.SqliteFile(copied("first.db"));
    if (place == Place.SQLITE) {
      return file;
    }
    StoreTarget target = place.fresh(folder);
    Flyway.configure()
        .dataSource(((StoreTarget.PostgresServer) target).url(), "workshop", "")
        .loggers("slf4j")
        .locations(
            "classpath:org/loomwright/store/db/tables",
            "classpath:org/loomwright/store/db/postgresql")
        .placeholders(Map.of("bytes", "BYTEA"))
        .target("2")
        .load()
        .migrate();
    try (Connection from = OpeningTest.raw(file);
        Connection to = OpeningTest.raw(target)) {
      for (String table : List.of("revision", "blob", "release", "release_pin", "release_file")) {
        copy(from, to, table);
      }
    }
    return target;
  }

  private static void copy(Connection from, Connection to, String table) throws SQLException {
    try (ResultSet rows = from.createStatement().executeQuery("SELECT * FROM " + table)) {
      int columns = rows.getMetaData().getColumnCount();
      String marks = String.join(", ", Collections.nCopies(columns, "?"));
      try (PreparedStatement insert =
          to.prepareStatement("INSERT INTO " + table + " VALUES (" + marks + ")")) {
        while (rows.next()) {
          for (int i = 1; i <= columns; i++) {
            insert.setObject(i, rows.getObject(i));
          }
          insert.executeUpdate();
        }
      }
    }
  }

  private Path copied(String name) throws IOException {
    Path file = folder.resolve(name);
    try (InputStream in = Objects.requireNonNull(OldStoreTest.class.getResourceAsStream(name))) {
      Files.copy(in, file);
    }
    return file;
  }
}
