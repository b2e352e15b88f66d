package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.loomwright.store.Samples.ANNA;
import static org.loomwright.store.Samples.BEN;
import static org.loomwright.store.Samples.van;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.workspace.Problem;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;

/** Whole workspaces in and out. */
class WorkspacesTest {
  private static final Path DEMO = Path.of("../demo");

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void theDemoGoesInAndOutUnchanged(Place place) throws IOException {
    Path out = folder.resolve("out");
    Path zip = folder.resolve("out.zip");
    try (Store store = Store.open(place.fresh(folder))) {
      ImportResult.Done done = done(store.workspaces().importFolder(DEMO, ANNA));
      assertThat(done.added()).hasSize(14);
      assertThat(done.pictures()).containsExactly("rear-block-wire-side.png", "van-plan.png");
      store.workspaces().exportFolder(out);
      store.workspaces().exportZip(zip);
      WorkspaceContent content = store.workspaces().content();
      assertThat(WorkspaceReader.read(content.documents(), content.pictures()))
          .isInstanceOf(Read.Good.class);
      // What went out says the same as what came in.
      assertThat(documents(WorkspaceReader.read(out)))
          .isEqualTo(documents(WorkspaceReader.read(DEMO)));
      assertThat(done(store.workspaces().importFolder(out, BEN)))
          .isEqualTo(new ImportResult.Done(List.of(), List.of(), 14, List.of()));
      assertThat(store.verify()).isEmpty();
    }
    try (Store store = Store.open(place.fresh(folder))) {
      done(store.workspaces().importZip(zip, BEN));
      Path again = folder.resolve("again");
      store.workspaces().exportFolder(again);
      assertThat(bytes(again)).isEqualTo(bytes(out));
      ByteArrayOutputStream zipAgain = new ByteArrayOutputStream();
      store.workspaces().exportZip(zipAgain);
      assertThat(zipAgain.toByteArray()).isEqualTo(Files.readAllBytes(zip));
    }
  }

  @Test
  void whatIsThereAlreadyGetsANewRevision() throws IOException {
    Path in = Files.createDirectory(folder.resolve("in"));
    try (Store store = Store.open(Place.SQLITE.fresh(folder))) {
      store.documents().save(van(", \"a\": 1"), 0);
      Files.writeString(in.resolve("any.json"), "\ufeff" + van(", \"a\": 2").content());
      ImportResult.Done done = done(store.workspaces().importFolder(in, BEN));
      assertThat(done.changed()).extracting(Revision::number).containsExactly(2L);
      assertThat(store.documents().history(Samples.VAN)).hasSize(2);
    }
  }

  @Test
  void namesThatFilesCanNotHaveAreWrittenInOthers() {
    try (Store store = Store.open(Place.SQLITE.fresh(folder))) {
      for (String id : List.of("../up", "a:b/c", "Ä", "x", "X", ".x")) {
        DocumentKey key = new DocumentKey("job", id);
        store.documents().save(Samples.draft(key, "", ANNA), 0);
      }
      Path out = folder.resolve("out");
      store.workspaces().exportFolder(out);
      assertThat(bytes(out).keySet())
          .containsExactly(
              "%2E.%2Fup.job.json",
              "%2Ex.job.json",
              "%C3%84.job.json",
              "X.job.json",
              "a%3Ab%2Fc.job.json",
              "x.job.2.json");
      try (Store other = Store.open(Place.SQLITE.fresh(folder))) {
        assertThat(done(other.workspaces().importFolder(out, BEN)).added()).hasSize(6);
        assertThat(other.workspaces().content().documents())
            .isEqualTo(store.workspaces().content().documents());
      }
    }
  }

  @Test
  void allThatIsWrongIsSaidAndNothingIsTakenIn() throws IOException {
    Path in = Files.createDirectory(folder.resolve("in"));
    Files.writeString(in.resolve("a.json"), van(", \"photo\": \"p.png\"").content());
    Files.writeString(in.resolve("b.json"), "{\"kind\": \"job\"");
    Files.writeString(in.resolve("c.json"), "{\"kind\": \"job\"}");
    Files.writeString(in.resolve("d.json"), van("").content());
    Files.write(in.resolve("e.json"), new byte[] {(byte) 0xFF, 1});
    Files.writeString(in.resolve("p.png"), "no picture");
    Files.writeString(in.resolve("unused.png"), "no picture");
    try (Store store = Store.open(Place.SQLITE.fresh(folder))) {
      ImportResult.Refused refused =
          (ImportResult.Refused) store.workspaces().importFolder(in, ANNA);
      assertThat(refused.problems())
          .extracting(Problem::document)
          .containsExactly("b.json", "c.json", "d.json", "e.json", "p.png");
      assertThat(refused.problems().get(2).message())
          .isEqualTo("job 'van' is already in a.json; take one out");
      assertThat(store.documents().newest()).isEmpty();
      Path empty = Files.createDirectory(folder.resolve("empty"));
      assertThat(store.workspaces().importFolder(empty, ANNA))
          .isInstanceOf(ImportResult.Refused.class);
      assertThatThrownBy(() -> store.workspaces().importFolder(in.resolve("none"), ANNA))
          .hasMessageEndingWith("none is no folder; name the one that holds the documents");
      assertThatThrownBy(() -> store.workspaces().exportFolder(in))
          .hasMessage(in + " is not empty; name a new folder");
      Path there = in.resolve("a.json");
      assertThatThrownBy(() -> store.workspaces().exportZip(there))
          .hasMessage(there + " is there already; name a new file");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"../evil.json", "/evil.json", "a/../../evil.json", "C:evil.json", "..\\evil.json"})
  void aZipWhoseNamesLeadOutIsRefused(String name) throws IOException {
    byte[] zip = zip(Map.of(name, van("").content().getBytes(StandardCharsets.UTF_8)));
    assertZipRefused(zip, "in.zip: the file '" + name + "' would lie outside of the workspace");
  }

  @Test
  void aZipThatIsTooLargeOrDamagedOrNoneIsRefused() throws IOException {
    byte[] bomb = zip(Map.of("a.json", new byte[WorkspaceFiles.LARGEST_FILE + 1]));
    assertThat(bomb.length).isLessThan(200_000);
    assertZipRefused(bomb, "in.zip, a.json: the file has more than 48000000 bytes");
    Map<String, byte[]> many = new LinkedHashMap<>();
    for (int i = 0; i <= WorkspaceFiles.MOST_FILES; i++) {
      many.put(i + ".txt", new byte[0]);
    }
    assertZipRefused(zip(many), "in.zip holds more than 5000 files");
    byte[] good = zip(Map.of("a.json", new byte[5_000]));
    assertZipRefused(java.util.Arrays.copyOf(good, 60), "in.zip: the zip file is damaged");
    assertZipRefused("text".getBytes(StandardCharsets.UTF_8), "in.zip is no zip file");
  }

  @Test
  void aZippedFolderMeansWhatIsInIt() throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    bytes(DEMO).forEach((name, hex) -> files.put("demo/" + name, hexBytes(hex)));
    try (Store store = Store.open(Place.SQLITE.fresh(folder))) {
      ImportResult.Done done =
          done(store.workspaces().importZip(new ByteArrayInputStream(zip(files)), "in.zip", ANNA));
      assertThat(done.added()).hasSize(14);
      assertThat(done.pictures()).hasSize(2);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aPictureIsKeptOnceUnderAllItsNames(Place place) throws IOException {
    byte[] plan = Files.readAllBytes(DEMO.resolve("van-plan.png"));
    try (Store store = Store.open(place.fresh(folder))) {
      Blob one = store.pictures().put(plan);
      assertThat(store.pictures().put(plan)).isEqualTo(one);
      assertThat(store.pictures().find(one.hash())).contains(one);
      store.pictures().put("photos/a.png", plan, 0, ANNA);
      store.pictures().put("photos/b.png", plan, 0, ANNA);
      assertThat(store.pictures().named("photos/b.png")).contains(one.hash());
      assertThat(store.pictures().named("photos/c.png")).isEmpty();
      assertThat(Hashes.of(store.pictures().bytes(one.hash()).orElseThrow())).isEqualTo(one.hash());
      byte[] other = Files.readAllBytes(DEMO.resolve("rear-block-wire-side.png"));
      assertThat(store.pictures().put("photos/a.png", other, 1, BEN))
          .isInstanceOf(SaveResult.Saved.class);
      assertThat(store.pictures().put("photos/a.png", other, 0, BEN))
          .isInstanceOf(SaveResult.Unchanged.class);
      assertThat(store.pictures().put("photos/a.png", plan, 0, BEN))
          .isInstanceOf(SaveResult.Conflict.class);
      assertThat(store.verify()).isEmpty();
      for (String name : List.of("../a.png", "a.txt", "a/b/c.png", "C:a.png", "a\\b.png")) {
        assertThatThrownBy(() -> store.pictures().put(name, plan, 0, BEN))
            .hasMessageContaining("can't be the name of a picture; write FILE.png");
      }
    }
  }

  private void assertZipRefused(byte[] zip, String words) {
    try (Store store = Store.open(Place.SQLITE.fresh(folder))) {
      assertThatThrownBy(
              () -> store.workspaces().importZip(new ByteArrayInputStream(zip), "in.zip", ANNA))
          .isInstanceOf(StoreException.class)
          .hasMessageStartingWith(words);
      assertThat(store.documents().newest()).isEmpty();
    }
  }

  static ImportResult.Done done(ImportResult result) {
    assertThat(result).isInstanceOf(ImportResult.Done.class);
    return (ImportResult.Done) result;
  }

  private static java.util.Set<Object> documents(Read read) {
    assertThat(read).isInstanceOf(Read.Good.class);
    java.util.Set<Object> documents = new java.util.HashSet<>();
    ((Read.Good) read).files().forEach(it -> documents.add(it.document()));
    return documents;
  }

  /** Contents as hexadecimal digits, which can be compared. */
  private static Map<String, String> bytes(Path root) {
    try (var files = Files.walk(root)) {
      Map<String, String> bytes = new TreeMap<>();
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        bytes.put(
            root.relativize(file).toString(),
            java.util.HexFormat.of().formatHex(Files.readAllBytes(file)));
      }
      return bytes;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static byte[] hexBytes(String hex) {
    return java.util.HexFormat.of().parseHex(hex);
  }

  private static byte[] zip(Map<String, byte[]> files) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (var file : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(file.getKey()));
        zip.write(file.getValue());
        zip.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
