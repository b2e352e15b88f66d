package org.loomwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.store.Samples.ANNA;
import static org.loomwright.store.Samples.van;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.model.design.Verdict;

/** Someone with the database's own tools changes a row: the check says which. */
class VerificationTest {
  private static final byte[] PAPER = "as fitted".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void everyKindOfTamperingIsFound(Place place) throws SQLException {
    String forged = "{\"kind\": \"job\", \"id\": \"van\", \"a\": 9}";
    assertFound(
        place,
        "UPDATE revision SET content = '" + forged + "' WHERE kind = 'job' AND number = 2",
        "job 'van', revision 2: its text is not the one that was saved");
    // Whoever adapts the hash too is found by the chain.
    assertFound(
        place,
        "UPDATE revision SET content = '"
            + forged
            + "', content_hash = '"
            + Hashes.of(forged)
            + "' WHERE kind = 'job' AND number = 2",
        "job 'van', revision 3: the text before it is not the one it was saved after");
    assertFound(
        place,
        "UPDATE revision SET author = 'Carl' WHERE kind = 'job' AND number = 1",
        "job 'van', revision 1: who, when, why or its place in the order is not as it was written");
    assertFound(
        place,
        "UPDATE revision SET saved_at = 'noon' WHERE kind = 'job' AND number = 1",
        "job 'van', revision 1: Text 'noon' could not be parsed at index 0");
    assertFound(
        place,
        "DELETE FROM revision WHERE kind = 'job' AND number = 2",
        "job 'van', revision 3: the revision before it is missing");
    assertFound(
        place,
        place == Place.SQLITE
            ? "UPDATE blob SET bytes = X'00'"
            : "UPDATE blob SET bytes = '\\x00'::bytea",
        "picture ",
        ": its bytes are not those saved");
    assertFound(
        place, "DELETE FROM blob", "picture 'van-plan.png', revision 1: its bytes are missing");
    assertFound(
        place,
        "UPDATE revision SET retired = 1 WHERE kind = 'job' AND number = 3",
        "job 'van', revision 3: who, when, why or its place in the order is not as it was written");
    assertFound(
        place,
        place == Place.SQLITE
            ? "UPDATE paper SET bytes = X'00'"
            : "UPDATE paper SET bytes = '\\x00'::bytea",
        "paper or file of a pack ",
        ": its bytes are not those saved");
    assertFound(
        place,
        "DELETE FROM paper WHERE hash = '" + Papers.hash(PAPER) + "'",
        "job 'van', revision 3: its paper " + Papers.hash(PAPER) + " is missing");
    assertFound(
        place,
        "UPDATE revision SET papers = '' WHERE kind = 'job' AND number = 3",
        "job 'van', revision 3: who, when, why or its place in the order is not as it was written");
    assertFound(
        place, "DELETE FROM paper", "kit 'trailer', release 1: its file 'leads.csv' is missing");
    assertFound(
        place,
        "UPDATE release SET pack_kept = 0",
        "kit 'trailer', release 1: who, when, why or its place in the order is not as it was");
    assertFound(
        place,
        "UPDATE release SET reason = 'none'",
        "kit 'trailer', release 1: who, when, why or its place in the order is not as it was");
    assertFound(
        place,
        "UPDATE release_file SET hash = '" + "1".repeat(64) + "'",
        "kit 'trailer', release 1: who, when, why or its place in the order is not as it was");
    assertFound(
        place,
        "UPDATE release_pin SET content_hash = '' WHERE kind = 'kit'",
        "kit 'trailer', release 1: it pins a text of kit 'trailer', revision 1, that is no longer");
  }

  private void assertFound(Place place, String sql, String... words) throws SQLException {
    StoreTarget target = place.fresh(folder);
    try (Store store = Store.open(target)) {
      store.documents().save(van(", \"a\": 1"), 0);
      store.documents().save(van(", \"a\": 2"), 1);
      Draft last = van(", \"a\": 3");
      store.documents().save(new Draft(last.key(), last.content(), ANNA, List.of(PAPER)), 2);
      ReleasesTest.demo(store);
      store.releases().release(ReleasesTest.draft(store, Verdict.MARGINAL, ANNA));
      assertThat(store.verify()).isEmpty();
    }
    try (Connection raw = OpeningTest.raw(target)) {
      for (String guard : guards(place)) {
        raw.createStatement().execute(guard);
      }
      assertThat(raw.createStatement().executeUpdate(sql)).as(sql).isPositive();
    }
    try (Store store = Store.open(target)) {
      List<String> found = store.verify().stream().map(Damage::words).toList();
      assertThat(found)
          .as(sql)
          .anySatisfy(it -> assertThat(it).startsWith(words[0]).contains(List.of(words)));
    }
  }

  private static List<String> guards(Place place) {
    return List.of("revision", "blob", "release", "release_pin", "release_file", "paper").stream()
        .flatMap(
            table ->
                place == Place.SQLITE
                    ? java.util.stream.Stream.of(
                        "DROP TRIGGER " + table + "_no_update",
                        "DROP TRIGGER " + table + "_no_delete")
                    : java.util.stream.Stream.of("DROP TRIGGER " + table + "_is_kept ON " + table))
        .toList();
  }
}
