package org.loomwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

/**
 * Words lead back to the cavity they were made for, in all eight views, and no words are shorter.
 */
class FaceWordsPropertyTest {
  private static final List<View> VIEWS =
      Stream.of(Side.values())
          .flatMap(side -> Stream.of(LatchDirection.values()).map(latch -> new View(side, latch)))
          .toList();

  @Property(tries = 600)
  void rows(@ForAll long seed) {
    leadBack(RandomFaces.ROWS, seed, 2);
  }

  @Property(tries = 600)
  void rowsOfMixedSizes(@ForAll long seed) {
    leadBack(RandomFaces.MIXED_ROWS, seed, 4);
  }

  @Property(tries = 400)
  void blocks(@ForAll long seed) {
    leadBack(RandomFaces.BLOCKS, seed, 55);
  }

  @Property(tries = 500)
  void rings(@ForAll long seed) {
    leadBack(RandomFaces.RINGS, seed, 4);
  }

  @Property(tries = 400)
  void brokenRings(@ForAll long seed) {
    leadBack(RandomFaces.BROKEN_RING, seed, 12);
  }

  @Property(tries = 400)
  void roundFacesFilledByRows(@ForAll long seed) {
    leadBack(RandomFaces.ROUND_ROWS, seed, 5);
  }

  @Property(tries = 1000)
  void anyScatter(@ForAll long seed) {
    leadBack(RandomFaces.SCATTER, seed, 100);
  }

  /**
   * Of all phrases of the forms that serve the face, none that means a cavity and no other is
   * shorter than the one that was written.
   */
  @Property(tries = 1500)
  void noShorterPhraseMeansTheSameCavity(@ForAll long seed) {
    Housing housing = RandomFaces.any(seed);
    View view = VIEWS.get(new Random(seed).nextInt(VIEWS.size()));
    Map<String, String> written = FaceWords.positions(housing, view);
    PositionReader reader = new PositionReader(PositionReader.look(housing, view));
    Map<String, String> shortest = new HashMap<>();
    for (String phrase : phrases(housing, Seen.of(housing, view))) {
      List<String> meant = reader.find(phrase);
      if (meant.size() == 1) {
        shortest.merge(
            meant.get(0),
            phrase,
            (one, other) -> Forms.SHORTER.compare(one, other) <= 0 ? one : other);
      }
    }
    int byPosition = 0;
    for (Map.Entry<String, String> it : written.entrySet()) {
      String other = shortest.get(it.getKey());
      if (other != null) {
        byPosition++;
        assertThat(Forms.SHORTER.compare(it.getValue(), other))
            .as("'%s' for %s, but '%s' would do", it.getValue(), it.getKey(), other)
            .isLessThanOrEqualTo(0);
      }
    }
    Statistics.label("cavities with words for their position")
        .collect(byPosition > 0)
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 70));
  }

  /** Left for right and right for left, read in the mirrored view, is the same cavity. */
  @Property(tries = 1000)
  void mirroredWordsInTheMirroredViewMeanTheSame(@ForAll long seed) {
    Housing housing = RandomFaces.any(seed);
    for (LatchDirection latch : List.of(LatchDirection.UP, LatchDirection.DOWN)) {
      PositionReader mating =
          new PositionReader(PositionReader.look(housing, new View(Side.MATING_SIDE, latch)));
      FaceWords.positions(housing, new View(Side.WIRE_SIDE, latch))
          .forEach(
              (number, words) -> {
                if (!words.contains("clock")) {
                  assertThat(mating.find(mirrored(words))).containsExactly(number);
                }
              });
    }
  }

  private static String mirrored(String words) {
    return words.replace("left", "\0").replace("right", "left").replace("\0", "right");
  }

  private static List<String> phrases(Housing housing, Seen seen) {
    int count = seen.cavities().size();
    List<String> phrases = new ArrayList<>(List.of("the only cavity"));
    if (count == 1) {
      return phrases;
    }
    if (housing.round() && !ClockWords.of(seen).isEmpty()) {
      phrases.addAll(Forms.clock(3, count));
      return phrases;
    }
    boolean rows = !GridWords.byRow(seen).isEmpty();
    boolean columns = !GridWords.byColumn(seen).isEmpty();
    if (rows) {
      phrases.addAll(Forms.singles(count));
      phrases.addAll(Forms.rows(Math.min(count, 8), Math.min(count, 15)));
    }
    if (columns) {
      phrases.addAll(Forms.columns(Math.min(count, 15), Math.min(count, 8)));
    }
    if (rows && columns) {
      phrases.addAll(Forms.corners());
    }
    phrases.addAll(Forms.extremes());
    return phrases;
  }

  /**
   * @param mostByNumber percent of the views in which some cavity may have its number only
   */
  private static void leadBack(RandomFaces kind, long seed, double mostByNumber) {
    Housing housing = kind.housing(new Random(seed));
    for (View view : VIEWS) {
      Map<String, String> words = FaceWords.positions(housing, view);
      assertThat(new HashSet<>(words.values())).hasSize(housing.cavities().size());
      PositionReader reader = new PositionReader(PositionReader.look(housing, view));
      words.forEach(
          (number, position) ->
              assertThat(reader.find(position))
                  .as("%s in %s", position, view)
                  .containsExactly(number));
      Statistics.label("some cavity has its number only")
          .collect(words.values().stream().anyMatch(it -> it.startsWith("cavity number")))
          .coverage(coverage -> coverage.check(true).percentage(share -> share <= mostByNumber));
    }
  }
}
