package org.loomwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

/** Words lead back to the cavity they were made for, in all eight views. */
class FaceWordsPropertyTest {

  @Property(tries = 150)
  void wordsLeadBackInRowsStaggeredOrNot(@ForAll("rows") Housing housing) {
    leadsBack(housing);
    for (View view : views()) {
      Statistics.label("falls back to the number")
          .collect(
              FaceWords.positions(housing, view).values().stream()
                  .anyMatch(it -> it.startsWith("cavity number")))
          .coverage(coverage -> coverage.check(true).percentage(share -> share < 50));
    }
  }

  @Property(tries = 150)
  void wordsLeadBackInRings(@ForAll("rings") Housing housing) {
    leadsBack(housing);
  }

  @Property(tries = 400)
  void wordsAreNeverWrongInAnyScatter(@ForAll("scatters") Housing housing) {
    leadsBack(housing);
  }

  private static void leadsBack(Housing housing) {
    for (View view : views()) {
      Map<String, String> words = FaceWords.positions(housing, view);
      assertThat(new HashSet<>(words.values())).hasSize(housing.cavities().size());
      List<PositionReader.Point> seen = PositionReader.look(housing, view);
      words.forEach(
          (number, position) ->
              assertThat(PositionReader.find(position, seen))
                  .as("%s in %s", position, view)
                  .containsExactly(number));
    }
  }

  private static List<View> views() {
    return Stream.of(Side.values())
        .flatMap(side -> Stream.of(LatchDirection.values()).map(latch -> new View(side, latch)))
        .toList();
  }

  @Provide
  Arbitrary<Housing> rows() {
    return Arbitraries.longs()
        .map(
            seed -> {
              Random random = new Random(seed);
              int rows = 1 + random.nextInt(4);
              int columns = 1 + random.nextInt(14);
              boolean staggered = random.nextBoolean();
              double jitter = random.nextBoolean() ? 0 : 0.2;
              List<Cavity> cavities = new ArrayList<>();
              int number = 1;
              for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                  if (random.nextInt(8) == 0 && cavities.size() > 1) {
                    continue;
                  }
                  cavities.add(
                      Housings.cavity(
                          "" + number++,
                          round(
                              4
                                  + 4 * column
                                  + (staggered && row % 2 == 1 ? 2 : 0)
                                  + jitter * random.nextDouble()),
                          round(4 + 4.2 * row + jitter * random.nextDouble()),
                          3,
                          3.5));
                }
              }
              return Housings.housing(
                  10 + 4 * columns, 6 + 4.2 * rows, false, random.nextBoolean(), cavities);
            });
  }

  @Provide
  Arbitrary<Housing> rings() {
    return Arbitraries.longs()
        .map(
            seed -> {
              Random random = new Random(seed);
              List<Cavity> cavities = new ArrayList<>();
              if (random.nextBoolean()) {
                cavities.add(Housings.cavity("1", 20, 20, 2, 2));
              }
              int rings = 1 + random.nextInt(3);
              for (int ring = 1; ring <= rings; ring++) {
                int count = 2 + random.nextInt(5 * ring);
                cavities.addAll(
                    Housings.ring(
                        count,
                        5 * ring,
                        20,
                        cavities.size() + 1,
                        random.nextBoolean() ? 0 : random.nextInt(360)));
              }
              return Housings.housing(40, 40, true, random.nextBoolean(), cavities);
            });
  }

  @Provide
  Arbitrary<Housing> scatters() {
    return Arbitraries.longs()
        .map(
            seed -> {
              Random random = new Random(seed);
              List<Cavity> cavities = new ArrayList<>();
              int count = 1 + random.nextInt(9);
              for (int i = 0; i < count; i++) {
                cavities.add(
                    Housings.cavity(
                        "" + (i + 1),
                        round(2 + 26 * random.nextDouble()),
                        round(2 + 16 * random.nextDouble()),
                        round(1 + 3 * random.nextDouble()),
                        round(1 + 3 * random.nextDouble())));
              }
              return Housings.housing(30, 20, random.nextBoolean(), true, cavities);
            });
  }

  private static double round(double value) {
    return Math.round(value * 1000) / 1000.0;
  }
}
