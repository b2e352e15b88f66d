package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A program is killed (SIGKILL) in the middle of saving, again and again on one store: each save it
 * had acknowledged is there. {@code -Dstore.kills=200} kills more often.
 */
class KillTest {
  private static final Optional<Integer> ASKED =
      Optional.ofNullable(Integer.getInteger("store.kills"));

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void whatWasAcknowledgedIsThere(Place place) throws IOException, InterruptedException {
    long seed = System.nanoTime();
    Random random = new Random(seed);
    StoreTarget target = place.fresh(folder);
    // A server outlives its client, so few rounds tell much the same there.
    int rounds = ASKED.orElse(place == Place.SQLITE ? 12 : 3);
    int acknowledged = 0;
    for (int round = 0; round < rounds; round++) {
      List<String> saved = killed(target, "r" + round, 1 + random.nextInt(120));
      acknowledged += saved.size();
      try (Store store = Store.open(target)) {
        for (String line : saved) {
          String[] words = line.split(" ");
          DocumentKey key = new DocumentKey("job", words[1]);
          Version version = store.documents().version(key, Long.parseLong(words[2])).orElseThrow();
          assertThat(Hashes.of(version.content()))
              .as("seed %d: %s", seed, line)
              .isEqualTo(words[3]);
        }
        // Every round looks at all rounds before it, and at the database's own check.
        assertThat(store.verify()).as("seed %d, round %d", seed, round).isEmpty();
      }
    }
    System.out.printf(
        "%s: %d kills, %d acknowledged saves, none lost (seed %d)%n",
        place, rounds, acknowledged, seed);
  }

  /** Runs the program, kills it after some saves, and returns all it had acknowledged. */
  private static List<String> killed(StoreTarget target, String name, int after)
      throws IOException, InterruptedException {
    String address =
        target instanceof StoreTarget.PostgresServer server ? server.url() : target.shown();
    Process program = Programs.start(List.of(), SavingProgram.class, address, name);
    List<String> saved = new ArrayList<>();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        // The last line may have been cut off by the kill; then it acknowledged nothing.
        if (line.matches("saved \\S+ \\d+ [0-9a-f]{64}")) {
          saved.add(line);
        } else {
          assertThat(program.isAlive()).as(line).isFalse();
        }
        if (saved.size() == after) {
          // By its handle: the process itself would close what is still to be read.
          program.toHandle().destroyForcibly();
        }
      }
    }
    program.waitFor();
    assertThat(saved).hasSizeGreaterThanOrEqualTo(after);
    return saved;
  }
}
