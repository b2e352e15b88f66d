package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.store.Samples.ANNA;
import static org.loomwright.store.Samples.VAN;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.model.json.JsonText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Twenty people edit one document at once. Each counts up a field of their own (merged with what
 * others did) and a field all share (a conflict whenever someone else was faster, then tried
 * again). Every count that was acknowledged must be in the end. {@code -Dstore.writing=60} goes on
 * for a minute.
 */
class ManyWritersTest {
  private static final int WRITERS = 20;
  private static final Duration TIME = Duration.ofSeconds(Integer.getInteger("store.writing", 5));

  @TempDir Path folder;

  /** What one writer did. */
  private record Done(int own, int shared, int merged, int conflicts) {}

  @ParameterizedTest
  @EnumSource
  void noUpdateIsLost(Place place) throws ExecutionException, InterruptedException {
    ExecutorService pool = Executors.newFixedThreadPool(WRITERS);
    StoreTarget target = place.fresh(folder);
    // Half of them work through a second program's connections.
    try (Store store = Store.open(target);
        Store other = Store.open(target)) {
      StringBuilder fields = new StringBuilder(", \"shared\": 0");
      for (int i = 0; i < WRITERS; i++) {
        fields.append(", \"own").append(i).append("\": 0");
      }
      store.documents().save(Samples.draft(VAN, fields.toString(), ANNA), 0);
      long end = System.nanoTime() + TIME.toNanos();
      List<Future<Done>> running = new ArrayList<>();
      for (int i = 0; i < WRITERS; i++) {
        String own = "own" + i;
        Store mine = i % 2 == 0 ? store : other;
        running.add(pool.submit(() -> write(mine, own, end)));
      }
      List<Done> done = new ArrayList<>();
      for (Future<Done> it : running) {
        done.add(it.get());
      }
      Version newest = store.documents().newest(VAN).orElseThrow();
      JsonNode tree = tree(newest);
      for (int i = 0; i < WRITERS; i++) {
        assertThat(tree.path("own" + i).intValue()).as("own%d", i).isEqualTo(done.get(i).own());
      }
      int shared = done.stream().mapToInt(Done::shared).sum();
      assertThat(tree.path("shared").intValue()).isEqualTo(shared);
      int saves = shared + done.stream().mapToInt(Done::own).sum();
      assertThat(newest.revision().number()).isEqualTo(1 + saves);
      int merged = done.stream().mapToInt(Done::merged).sum();
      int conflicts = done.stream().mapToInt(Done::conflicts).sum();
      // Without these nothing was tried.
      assertThat(merged).isPositive();
      assertThat(conflicts).isPositive();
      assertThat(store.verify()).isEmpty();
      System.out.printf(
          "%s: %d saves by %d writers in %d s, %d of them merged, %d conflicts%n",
          place, saves, WRITERS, TIME.toSeconds(), merged, conflicts);
    } finally {
      pool.shutdownNow();
    }
  }

  private static Done write(Store store, String own, long end) {
    Done done = new Done(0, 0, 0, 0);
    for (int turn = 0; System.nanoTime() < end; turn++) {
      String field = turn % 2 == 0 ? own : "shared";
      Version seen = store.documents().newest(VAN).orElseThrow();
      ObjectNode tree = (ObjectNode) tree(seen);
      tree.put(field, tree.path(field).intValue() + 1);
      SaveResult result =
          store.documents().save(new Draft(VAN, tree.toString(), ANNA), seen.revision().number());
      // Someone else wrote the same number: that is a conflict told as "says the same already".
      boolean conflict =
          result instanceof SaveResult.Conflict || result instanceof SaveResult.Unchanged;
      int merged = result instanceof SaveResult.Merged ? 1 : 0;
      int one = conflict ? 0 : 1;
      done =
          new Done(
              done.own() + (field.equals(own) ? one : 0),
              done.shared() + (field.equals(own) ? 0 : one),
              done.merged() + merged,
              done.conflicts() + 1 - one);
    }
    return done;
  }

  private static JsonNode tree(Version version) {
    return ((JsonText.Tree) JsonText.parse(version.content())).node();
  }
}
