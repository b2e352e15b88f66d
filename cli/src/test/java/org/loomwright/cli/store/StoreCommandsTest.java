package org.loomwright.cli.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.cli.Run;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.store.StoreTarget;

/** import, export, backup and restore as a person types them. */
class StoreCommandsTest {
  private static final String DEMO = Path.of("..", "demo").toString();
  private static final String HELD = "16 revisions, 2 pictures, 0 releases with 0 files.";

  @TempDir Path folder;
  private String db = "";

  @BeforeEach
  void nameTheStore() {
    db = folder.resolve("shop.db").toString();
  }

  @Test
  void theDemoGoesInAndOut() throws IOException {
    String first = done("import", DEMO, "--db", db, "--by", "Anna");
    assertThat(first)
        .startsWith("Imported from " + DEMO + " into " + db + ":\n  new        ")
        .contains("  new        vehicle 'packer'\n", "  picture    van-plan.png\n")
        .hasLineCount(17);
    assertThat(done("import", DEMO, "--db", db)).endsWith(":\n  unchanged  14 documents\n");

    Path out = folder.resolve("out");
    assertThat(done("export", out.toString(), "--db", db))
        .isEqualTo("Exported 14 documents and 2 pictures of " + db + " to " + out + ".\n");
    assertThat(names(out)).hasSize(16);
    Path zip = folder.resolve("out.zip");
    done("export", zip.toString(), "--db", db);
    String other = folder.resolve("other.db").toString();
    done("import", zip.toString(), "--db", other);
    Path again = folder.resolve("again.zip");
    done("export", again.toString(), "--db", other);
    assertThat(again).hasSameBinaryContentAs(zip);
  }

  @Test
  void whatChangedIsSaidAndSigned() throws IOException {
    done("import", DEMO, "--db", db, "--by", " Anna ");
    Path in = Files.createDirectory(folder.resolve("in"));
    Path rules = Path.of(DEMO, "rules.rules.json");
    Files.writeString(
        in.resolve("rules.json"),
        Files.readString(rules).replaceFirst("\"name\": \"", "\"name\": \"New "));
    assertThat(done("import", in.toString(), "--db", db))
        .endsWith(":\n  changed    rules 'shop-rules', now revision 2\n");
    try (Store store = Store.open(StoreTarget.parse(db))) {
      List<Revision> history = store.documents().history(new DocumentKey("rules", "shop-rules"));
      assertThat(history)
          .extracting(it -> it.by().who())
          .containsExactly(System.getProperty("user.name"), "Anna");
      assertThat(history)
          .extracting(it -> it.by().why())
          .containsExactly("imported from in", "imported from demo");
    }
  }

  @Test
  void everyProblemIsListedAndNothingIsImported() throws IOException {
    Path in = Files.createDirectory(folder.resolve("in"));
    Files.copy(Path.of(DEMO, "rules.rules.json"), in.resolve("a.json"));
    Files.writeString(in.resolve("b.json"), "{\"kind\": ");
    Files.writeString(in.resolve("c.json"), "{\"kind\": \"job\"}");
    Run run = Run.of("import", in.toString(), "--db", db);
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("b.json")
        .contains("\nc.json", "2 problems in " + in + "; nothing was imported.");
    assertThat(Run.of("export", folder.resolve("out").toString(), "--db", db).err())
        .isEqualToIgnoringNewLines(db + " holds no documents; nothing was exported.");
  }

  @Test
  void aBackupIsCheckedRestoredAndNeverWrittenOver() throws IOException {
    done("import", DEMO, "--db", db);
    Path backup = folder.resolve("backup.zip");
    String said = done("backup", backup.toString(), "--db", db);
    assertThat(said).startsWith("Backed up " + db + " to " + backup + ": " + HELD);
    String seals = said.lines().skip(1).findFirst().orElseThrow();
    assertThat(seals).matches("Last seals: revision [0-9a-f]{64}, release none\\.");
    assertThat(done("backup", "--only-check", "--db", db))
        .isEqualTo("All is well in " + db + ": " + HELD + "\n" + seals + "\n");
    assertThat(done("restore", backup.toString(), "--only-check"))
        .isEqualTo("All is well in " + backup + ": " + HELD + "\n" + seals + "\n");
    String other = folder.resolve("other.db").toString();
    assertThat(done("restore", backup.toString(), "--db", other))
        .isEqualTo("Restored " + backup + " to " + other + ": " + HELD + "\n" + seals + "\n");
    assertWrong("holds documents or pictures already", "restore", backup.toString(), "--db", db);
    assertWrong("is there already; name a new file", "backup", backup.toString(), "--db", db);
    byte[] bytes = Files.readAllBytes(backup);
    Path half = Files.write(folder.resolve("half.zip"), java.util.Arrays.copyOf(bytes, 2_000));
    assertWrong("can't be restored: ", "restore", half.toString(), "--only-check");
  }

  @Test
  void aDamagedStoreIsSaidToBeSoAndNotBackedUp() throws SQLException {
    done("import", DEMO, "--db", db);
    try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + db)) {
      raw.createStatement().execute("DROP TRIGGER revision_no_update");
      raw.createStatement().execute("UPDATE revision SET content = '{}' WHERE kind = 'rules'");
    }
    Run check = Run.of("backup", "--only-check", "--db", db);
    assertThat(check.exitCode()).isEqualTo(1);
    assertThat(check.out())
        .startsWith("rules 'shop-rules', revision 1: its text is not the one that was saved")
        .contains("1 fault in " + db + "; restore the newest good backup");
    assertWrong(
        "is damaged, so it is not backed up",
        "backup",
        folder.resolve("backup.zip").toString(),
        "--db",
        db);
  }

  @Test
  void whatIsNotThereIsNamedAndNothingIsMade() {
    String none = folder.resolve("none").toString();
    assertWrong("no such folder or file; name the folder or zip", "import", none, "--db", db);
    assertWrong("There is no store at " + db, "export", none, "--db", db);
    assertWrong("There is no store at " + db, "backup", none, "--db", db);
    assertWrong("There is no store at " + db, "backup", "--only-check", "--db", db);
    assertWrong("there is no such file; name the backup", "restore", none, "--db", db);
    assertWrong("'jdbc:x:y' is no place for a store", "export", none, "--db", "jdbc:x:y");
    assertWrong("--by: the name is empty", "import", DEMO, "--by", " ", "--db", db);
    assertThat(folder).isEmptyDirectory();
    assertWrong("is no zip file", "import", Path.of(DEMO, "README.md").toString(), "--db", db);
    Run server =
        Run.of("backup", none, "--db", "jdbc:postgresql://127.0.0.1:1/shop?user=a&password=secret");
    assertThat(server.exitCode()).isEqualTo(3);
    assertThat(server.err()).contains("the server can't be reached").doesNotContain("secret");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "import",
        "export",
        "restore",
        "backup",
        "backup a.zip --only-check",
        "restore a.zip --only-check --db a.db",
        "import a b",
        "export a --by Anna"
      })
  void wrongUsageEndsWithTwo(String words) {
    Run run = Run.of(words.split(" ", -1));
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("Try: loomwright ").doesNotContain("Exception", "\tat ");
  }

  private static String done(String... words) {
    Run run = Run.of(words);
    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(run.err()).isEmpty();
    return run.out().replace("\r\n", "\n");
  }

  private static void assertWrong(String why, String... words) {
    Run run = Run.of(words);
    assertThat(run.exitCode()).as(run.err()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(why).endsWith("." + System.lineSeparator()).hasLineCount(1);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      List<String> names = new ArrayList<>();
      files.forEach(it -> names.add(it.getFileName().toString()));
      return names;
    }
  }
}
