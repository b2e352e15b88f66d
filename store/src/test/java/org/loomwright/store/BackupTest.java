package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.loomwright.store.Samples.ANNA;
import static org.loomwright.store.Samples.van;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.design.Verdict;

/** Backups, and what comes back from them. */
class BackupTest {
  private static final byte[] PAPER = "as fitted".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"SQLITE,SQLITE", "SQLITE,POSTGRES", "POSTGRES,SQLITE", "POSTGRES,POSTGRES"})
  void everythingComesBackInEitherDatabase(Place from, Place to) throws IOException {
    Path file = folder.resolve("backup.zip");
    StoreTarget target = to.fresh(folder);
    try (Store store = Store.open(from.fresh(folder))) {
      fill(store);
      BackupSummary summary = store.backup(file);
      assertThat(summary.pictures()).isEqualTo(2);
      assertThat(summary.releases()).isEqualTo(1);
      assertThat(summary.revisions()).isEqualTo(21);
      assertThat(summary.files()).isEqualTo(3);
      assertThat(store.summary()).isEqualTo(summary);
      try (Store restored = Store.restore(file, target)) {
        assertThat(restored.verify()).isEmpty();
        assertThat(restored.documents().newest()).isEqualTo(store.documents().newest());
        for (Revision revision : store.documents().newest()) {
          assertThat(restored.documents().history(revision.key()))
              .isEqualTo(store.documents().history(revision.key()));
        }
        assertThat(restored.releases().of("trailer")).isEqualTo(store.releases().of("trailer"));
        ReleasesTest.PACK.forEach(
            (name, bytes) ->
                assertThat(restored.releases().file("trailer", 1, name)).contains(bytes));
        assertThat(restored.papers().find(Papers.hash(PAPER))).contains(PAPER);
        assertThat(restored.documents().retired())
            .isEqualTo(store.documents().retired())
            .hasSize(1);
        Path again = folder.resolve("again.zip");
        assertThat(restored.backup(again)).isEqualTo(summary);
        assertThat(again).hasSameBinaryContentAs(file);
        // Work goes on where it was.
        assertThat(restored.documents().save(van(", \"a\": 3"), 2))
            .isInstanceOf(SaveResult.Saved.class);
        assertThat(restored.verify()).isEmpty();
      }
    }
    assertThatThrownBy(() -> Store.restore(file, target))
        .hasMessage(
            target.shown()
                + " holds documents or pictures already; restore to a new file or an empty database");
  }

  @Test
  void aDamagedBackupIsNotRestoredAtAll() throws IOException {
    Path file = folder.resolve("backup.zip");
    try (Store store = Store.open(Place.SQLITE.fresh(folder))) {
      fill(store);
      store.backup(file);
      assertThatThrownBy(() -> store.backup(file))
          .hasMessage(file + " is there already; name a new file");
    }
    byte[] good = Files.readAllBytes(file);
    assertRefused(java.util.Arrays.copyOf(good, good.length / 2), "");
    assertRefused("no zip".getBytes(StandardCharsets.UTF_8), "it is cut off, or no backup");
    assertRefused(
        edited(good, Backup.REVISIONS, it -> it.replace("\\\"a\\\": 2", "\\\"a\\\": 3")),
        "job 'van', revision 2: its text is not the one that was saved");
    assertRefused(
        edited(good, Backup.REVISIONS, it -> it.substring(0, it.lastIndexOf("{\"seq\""))),
        "it does not hold all that was written");
    assertRefused(
        edited(good, Backup.RELEASES, it -> it.replace("measured it", "a guess")),
        "kit 'trailer', release 1: who, when, why");
    assertRefused(
        edited(good, Backup.RELEASES, it -> it.replace("\"packKept\":true", "\"packKept\":false")),
        "kit 'trailer', release 1: who, when, why");
    assertRefused(
        edited(good, Backup.REVISIONS, it -> it.replace("\"retired\":true", "\"retired\":false")),
        "job 'car', revision 2: who, when, why");
    String csv = Hashes.of("a,b\r\n");
    assertRefused(
        edited(good, Backup.PAPERS + csv, it -> "a,c\r\n"),
        "the paper " + csv + " has other bytes");
    assertRefused(
        edited(good, Backup.REVISIONS, it -> it.replace("\"" + Papers.hash(PAPER) + "\"", "\"\"")),
        "job 'signed', revision 1: who, when, why");
    assertRefused(edited(good, Backup.SUMMARY, it -> "{}"), "it does not hold all");
    Path none = folder.resolve("none.zip");
    assertThatThrownBy(() -> Store.restore(none, Place.SQLITE.fresh(folder)))
        .hasMessage(none + " is no file; name the backup to restore");
  }

  private void assertRefused(byte[] backup, String why) throws IOException {
    Path file = Files.write(folder.resolve("damaged.zip"), backup);
    StoreTarget target = Place.SQLITE.fresh(folder);
    assertThatThrownBy(() -> Store.restore(file, target))
        .isInstanceOf(StoreException.class)
        .hasMessageStartingWith(file + " can't be restored: " + why);
    try (Store store = Store.open(target)) {
      assertThat(store.documents().newest()).isEmpty();
    }
  }

  private static void fill(Store store) {
    store.documents().save(van(", \"a\": 1"), 0);
    store.documents().save(van(", \"a\": 2, \"text\": \"Ä\\u0000\u2028\""), 1);
    DocumentKey car = new DocumentKey("job", "car");
    store.documents().save(Samples.draft(car, "", ANNA), 0);
    store.documents().retire(car, 1, ANNA);
    DocumentKey signed = new DocumentKey("job", "signed");
    store
        .documents()
        .save(
            new Draft(signed, Samples.draft(signed, "", ANNA).content(), ANNA, List.of(PAPER)), 0);
    ReleasesTest.demo(store);
    store.releases().release(ReleasesTest.draft(store, Verdict.MARGINAL, ANNA));
  }

  private static byte[] edited(byte[] zip, String name, UnaryOperator<String> edit)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        out.putNextEntry(new ZipEntry(entry.getName()));
        byte[] content = in.readAllBytes();
        if (entry.getName().equals(name)) {
          String before = new String(content, StandardCharsets.UTF_8);
          String after = edit.apply(before);
          assertThat(after).isNotEqualTo(before);
          content = after.getBytes(StandardCharsets.UTF_8);
        }
        out.write(content);
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
