package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.store.Samples.ANNA;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.model.design.Verdict;

/**
 * Writers never stop: they save, retire, bring back and release while backups are taken. What a
 * backup must hold is found without it: all rows up to the last one it has, read from the live
 * database with its own means, and the saves that writers noted down.
 */
class BackupUnderLoadTest {
  private static final int WRITERS = 4;
  private static final int ROUNDS = 5;

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void aRestoredBackupEqualsTheStateAtItsTime(Place place)
      throws ExecutionException, InterruptedException, IOException, SQLException, TimeoutException {
    AtomicBoolean stop = new AtomicBoolean();
    Queue<String> acknowledged = new ConcurrentLinkedQueue<>();
    ExecutorService writers = Executors.newFixedThreadPool(WRITERS + 1);
    StoreTarget target = place.fresh(folder);
    try (Store store = Store.open(target)) {
      ReleasesTest.demo(store);
      List<Future<?>> running = new ArrayList<>();
      for (int i = 0; i < WRITERS; i++) {
        DocumentKey key = new DocumentKey("job", "w" + i);
        running.add(writers.submit(() -> write(store, key, stop, acknowledged)));
      }
      running.add(writers.submit(() -> release(store, stop)));
      for (int round = 0; round < ROUNDS; round++) {
        Path file = folder.resolve("backup" + round + ".zip");
        while (acknowledged.size() < 40 * (round + 1)
            && running.stream().noneMatch(Future::isDone)) {
          Thread.sleep(1);
        }
        List<String> before = List.copyOf(acknowledged);
        BackupSummary summary = store.backup(file);
        long after = store.summary().revisions();
        assertThat(summary.revisions()).isBetween((long) before.size(), after);
        StoreTarget copy = (round % 2 == 0 ? Place.SQLITE : place).fresh(folder);
        try (Store restored = Store.restore(file, copy)) {
          assertThat(restored.summary()).isEqualTo(summary);
          assertEqual(target, copy, summary);
          assertThat(texts(restored)).isEqualTo(newestTexts(target, summary.revisions()));
          assertThat(all(restored)).containsAll(before);
          assertPacks(store, restored, summary);
        }
        Files.delete(file);
      }
      stop.set(true);
      for (Future<?> it : running) {
        it.get(60, TimeUnit.SECONDS);
      }
      assertThat(store.verify()).isEmpty();
      System.out.printf(
          "%s: %d backups while %d saves and %d releases went on%n",
          place, ROUNDS, acknowledged.size(), store.releases().all().size());
    } finally {
      stop.set(true);
      writers.shutdown();
      assertThat(writers.awaitTermination(60, TimeUnit.SECONDS)).isTrue();
    }
  }

  private static void write(
      Store store, DocumentKey key, AtomicBoolean stop, Queue<String> acknowledged) {
    for (long n = 0; !stop.get(); n++) {
      SaveResult result =
          n % 7 == 6
              ? store.documents().retire(key, n, ANNA)
              : store.documents().save(Samples.draft(key, ", \"n\": " + n, ANNA), n);
      acknowledged.add(words(((SaveResult.Saved) result).revision()));
    }
  }

  private static void release(Store store, AtomicBoolean stop) {
    for (int n = 0; !stop.get(); n++) {
      ReleaseDraft draft = ReleasesTest.draft(store, Verdict.HOLDS, ANNA);
      Map<String, byte[]> pack =
          Map.of(
              "same.txt",
              new byte[10_000],
              "other.txt",
              ("pack " + n).getBytes(StandardCharsets.UTF_8));
      store
          .releases()
          .release(new ReleaseDraft(draft.kit(), draft.pins(), draft.verdict(), pack, draft.by()));
    }
  }

  private static String words(Revision it) {
    return it.key().id() + " " + it.number() + " " + it.contentHash() + " " + it.retired();
  }

  /** Every row of both, column by column. */
  private static void assertEqual(StoreTarget live, StoreTarget copy, BackupSummary summary)
      throws SQLException {
    for (String table : List.of("revision", "release")) {
      long last = table.equals("revision") ? summary.revisions() : summary.releases();
      assertThat(rows(copy, table, Long.MAX_VALUE)).isEqualTo(rows(live, table, last));
    }
  }

  private static List<List<String>> rows(StoreTarget target, String table, long last)
      throws SQLException {
    List<List<String>> found = new ArrayList<>();
    try (Connection raw = OpeningTest.raw(target);
        PreparedStatement query =
            raw.prepareStatement("SELECT * FROM " + table + " WHERE seq <= ? ORDER BY seq")) {
      query.setLong(1, last);
      try (ResultSet rows = query.executeQuery()) {
        while (rows.next()) {
          List<String> row = new ArrayList<>();
          for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
            row.add(rows.getString(i));
          }
          found.add(row);
        }
      }
    }
    return found;
  }

  /** The texts in use after so many saves, found by going through all of them in order. */
  private static Map<String, String> newestTexts(StoreTarget live, long last) throws SQLException {
    Map<String, String> texts = new TreeMap<>();
    for (List<String> row : rows(live, "revision", last)) {
      String key = row.get(1) + " " + row.get(2);
      boolean retired = row.get(12).equals("1");
      if (retired) {
        texts.remove(key);
      } else {
        texts.put(key, row.get(8));
      }
    }
    return texts;
  }

  private static Map<String, String> texts(Store store) {
    Map<String, String> texts = new TreeMap<>();
    for (Revision it : store.documents().newest()) {
      texts.put(
          it.key().kind() + " " + it.key().id(),
          store.documents().newest(it.key()).orElseThrow().content());
    }
    return texts;
  }

  private static List<String> all(Store store) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < WRITERS; i++) {
      store.documents().history(new DocumentKey("job", "w" + i)).forEach(it -> all.add(words(it)));
    }
    return all;
  }

  private static void assertPacks(Store live, Store restored, BackupSummary summary) {
    List<Release> releases = restored.releases().all();
    assertThat(releases).hasSize((int) summary.releases());
    for (Release it : releases) {
      assertThat(live.releases().find(it.kit(), it.number())).contains(it);
      byte[] other = restored.releases().file(it.kit(), it.number(), "other.txt").orElseThrow();
      assertThat(new String(other, StandardCharsets.UTF_8)).isEqualTo("pack " + (it.number() - 1));
    }
  }
}
