package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.loomwright.store.Samples.van;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No room left, or nothing may be written: said clearly, and what was saved is kept. */
class FullDiskTest {
  @TempDir Path folder;

  /** A limit on the size of files, set by a shell, stops the database's file from growing. */
  @Test
  void aFileThatMayNotGrowIsNamedAndNothingIsLost() throws IOException, InterruptedException {
    Path file = folder.resolve("shop.db");
    // Blocks of 512 or 1024 bytes, as the shell has it: four megabytes or eight. The driver has to
    // unpack its library below that.
    Process program =
        Programs.start(
            List.of("sh", "-c", "ulimit -f 8000; exec \"$@\"", "sh"),
            SavingProgram.class,
            file.toString(),
            "full");
    List<String> saved = new ArrayList<>();
    List<String> refused = new ArrayList<>();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8))) {
      out.lines().forEach(it -> (it.startsWith("saved ") ? saved : refused).add(it));
    }
    program.waitFor();
    assertThat(saved).hasSizeGreaterThan(20);
    assertThat(refused)
        .isNotEmpty()
        .allSatisfy(
            it ->
                assertThat(it)
                    .startsWith("refused " + file + ": ")
                    .containsAnyOf("no room left on the disk", "the disk refuses")
                    .endsWith("what was saved before is kept"));
    assertAllThere(new StoreTarget.SqliteFile(file), saved);
  }

  /** Root can make a small disk of its own; others are shown the size limit above. */
  @Test
  void aFullDiskIsNamedAndNothingIsLost() throws IOException, InterruptedException {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    if (!mounted("-t", "tmpfs", "-o", "size=2m", "tmpfs", disk.toString())) {
      System.out.println("NOT RUN: this user can't mount a small disk; the size limit was tried");
      return;
    }
    try {
      Path file = disk.resolve("shop.db");
      StoreTarget target = new StoreTarget.SqliteFile(file);
      List<String> saved = new ArrayList<>();
      try (Store store = Store.open(target)) {
        assertThatThrownBy(
                () -> {
                  for (long n = 0; n < 100_000; n++) {
                    Draft draft = van(", \"n\": " + n + ", \"x\": \"" + "x".repeat(3_000) + "\"");
                    store.documents().save(draft, n);
                    saved.add("saved van " + (n + 1) + " " + Hashes.of(draft.content()));
                  }
                })
            .isInstanceOf(StoreException.class)
            .hasMessageStartingWith(file + ": ")
            .hasMessageContaining("disk")
            .hasMessageEndingWith("what was saved before is kept");
        assertThat(saved).hasSizeGreaterThan(20);
        // Reading still works, and a backup elsewhere saves the day.
        assertThat(store.documents().newest(Samples.VAN).orElseThrow().revision().number())
            .isEqualTo(saved.size());
        store.backup(folder.resolve("backup.zip"));
        assertThatThrownBy(() -> store.backup(disk.resolve("backup.zip")))
            .hasMessageStartingWith(disk.resolve("backup.zip") + " can't be written (");
      }
      Store.restore(folder.resolve("backup.zip"), Place.SQLITE.fresh(folder)).close();
      assertThat(mounted("-o", "remount,size=8m", disk.toString())).isTrue();
      assertAllThere(target, saved);
      assertReadOnlyIsSaid(disk, target);
    } finally {
      run("umount", disk.toString());
    }
  }

  private static void assertReadOnlyIsSaid(Path disk, StoreTarget target)
      throws IOException, InterruptedException {
    assertThat(mounted("-o", "remount,ro", disk.toString())).isTrue();
    assertThatThrownBy(() -> Store.open(target))
        .isInstanceOf(StoreException.class)
        .hasMessage(target.shown() + " can't be written; allow writing to it");
    StoreTarget other = new StoreTarget.SqliteFile(disk.resolve("other.db"));
    assertThatThrownBy(() -> Store.open(other))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("the folder " + disk + " is read-only");
  }

  /** For root permissions mean nothing, but some folders take no files from anyone. */
  @Test
  void aReadOnlyFolderIsNamed() throws IOException {
    Path closed = Files.createDirectory(folder.resolve("closed"));
    assertThat(closed.toFile().setWritable(false)).isTrue();
    Path place = Files.isWritable(closed) ? Path.of("/proc/self") : closed;
    StoreTarget target = new StoreTarget.SqliteFile(place.resolve("shop.db"));
    assertThatThrownBy(() -> Store.open(target))
        .isInstanceOf(StoreException.class)
        .hasMessageStartingWith(target.shown())
        .message()
        .containsAnyOf("is read-only", "can't be opened or made; check that its folder");
    Files.setPosixFilePermissions(
        closed, java.nio.file.attribute.PosixFilePermissions.fromString("rwx------"));
  }

  private static void assertAllThere(StoreTarget target, List<String> saved) {
    try (Store store = Store.open(target)) {
      for (String line : saved) {
        String[] words = line.split(" ");
        Version version =
            store
                .documents()
                .version(new DocumentKey("job", words[1]), Long.parseLong(words[2]))
                .orElseThrow();
        assertThat(version.revision().contentHash()).isEqualTo(words[3]);
      }
      assertThat(store.verify()).isEmpty();
      // Room again: saving goes on.
      DocumentKey key = new DocumentKey("job", "after");
      assertThat(store.documents().save(Samples.draft(key, "", Samples.ANNA), 0))
          .isInstanceOf(SaveResult.Saved.class);
    }
  }

  private static boolean mounted(String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("mount"));
    command.addAll(List.of(arguments));
    return run(command.toArray(new String[0])) == 0;
  }

  private static int run(String... command) throws IOException, InterruptedException {
    try {
      return new ProcessBuilder(command)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start()
          .waitFor();
    } catch (IOException e) {
      // No such program, so no disk.
      return -1;
    }
  }
}
