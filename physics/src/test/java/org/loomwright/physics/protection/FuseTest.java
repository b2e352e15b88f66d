package org.loomwright.physics.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.TestConductors;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class FuseTest {
  /** Opening-time limits of ISO 8820-3 blade fuses. */
  @Test
  void bandsAgreeWithTheTable() {
    int compared = 0;
    for (Row row : ReferenceTables.fuseTimes().rows()) {
      double multiple = row.number("percent") / 100;
      String[] range = row.text("rating_A_range").split("-");
      double low = Double.parseDouble(range[0]);
      double high = Double.parseDouble(range[range.length - 1]);
      for (FuseFamily family : FuseFamily.values()) {
        if (!family.label().equals(row.text("type"))) {
          continue;
        }
        for (double rating : family.ratingsA()) {
          if (rating < low || rating > high) {
            continue;
          }
          compared++;
          Fuse fuse = new Fuse(family, rating);
          double minS = row.blank("t_min_s") ? 0 : row.number("t_min_s");
          double maxS = row.blank("t_max_s") ? Double.POSITIVE_INFINITY : row.number("t_max_s");
          assertThat(fuse.shortestOpeningS(multiple * rating))
              .as(row.where())
              .isCloseTo(minS, within(1e-9));
          assertThat(fuse.longestOpeningS(multiple * rating)).as(row.where()).isEqualTo(maxS);
        }
      }
    }
    assertThat(compared).isGreaterThan(130);
  }

  /**
   * Melting I²t of data sheets: at 600 % of the rating a fuse that takes this energy opens within
   * its band.
   */
  @Test
  void meltingEnergyLiesWithinTheBand() {
    int compared = 0;
    for (Row row : ReferenceTables.fusePoints().rows()) {
      for (FuseFamily family : FuseFamily.values()) {
        if (family.label().equals(row.text("type"))) {
          compared++;
          Fuse fuse = new Fuse(family, row.number("rating_A"));
          double currentA = 6 * fuse.ratingA();
          double meltsS = row.number("i2t_A2s") / (currentA * currentA);
          assertThat(meltsS)
              .as(row.where())
              .isBetween(fuse.shortestOpeningS(currentA), fuse.longestOpeningS(currentA));
        }
      }
      if (!row.blank("typ_drop_mV")) {
        // Warm at its rating a fuse drops more than its cold resistance says.
        assertThat(row.number("typ_drop_mV"))
            .as(row.where())
            .isGreaterThan(row.number("cold_resistance_mohm") * row.number("rating_A"));
      }
    }
    assertThat(compared).isEqualTo(ReferenceTables.fusePoints().rows().size());
  }

  /** Ratings for which a body colour is known are those of the families, and the other way. */
  @Test
  void everyBladeRatingHasItsColour() {
    for (FuseFamily family :
        List.of(FuseFamily.REGULAR_BLADE, FuseFamily.SMALL_BLADE, FuseFamily.LARGE_BLADE)) {
      String word =
          switch (family) {
            case REGULAR_BLADE -> "regular";
            case SMALL_BLADE -> "small";
            default -> "large";
          };
      List<Double> coloured =
          ReferenceTables.bladeFuseColours().rows().stream()
              .filter(row -> List.of(row.text("family").split(" ")).contains(word))
              .map(row -> row.number("rating_A"))
              .toList();
      assertThat(coloured).as(family.label()).containsAll(family.ratingsA());
      // Only the 1 A colour has no small blade.
      coloured.stream()
          .filter(rating -> rating > 1)
          .forEach(rating -> assertThat(family.ratingsA()).contains(rating));
    }
  }

  /**
   * Rules of other standards: every band is at least as fast as UL 248-14 asks of a supplementary
   * fuse, and the makers' 75 to 80 % is the range of our limits at room temperature.
   */
  @Test
  void bandsAndLoadingKeepWithinTheRules() {
    for (Row row : ReferenceTables.fuseRules().rows()) {
      switch (row.text("rule")) {
        case "supplementary fuse opens at 135 %" -> fasterThan(1.35, row.number("high"));
        case "supplementary fuse of 0 to 30 A opens at 200 %" -> fasterThan(2, row.number("high"));
        case "continuous load at 23 to 25 C" ->
            assertThat(LoadingByPlace.of(FuseFamily.LARGE_BLADE, FusePlace.CABIN, 20).considered())
                .extracting(LoadingLimit::share)
                .contains(row.number("low") / 100, row.number("high") / 100);
        default -> throw new AssertionError(row.where());
      }
    }
  }

  private static void fasterThan(double multiple, double seconds) {
    for (FuseFamily family : FuseFamily.values()) {
      for (double ratingA : family.ratingsA()) {
        assertThat(new Fuse(family, ratingA).longestOpeningS(multiple * ratingA))
            .as(ratingA + " A " + family.label())
            .isLessThanOrEqualTo(seconds);
      }
    }
  }

  /** By hand: at 1.8 times, half way in logs from 1.6 to 2.0 is 1.789: √(0.25 · 0.15) = 0.194 s. */
  @Test
  void betweenTheGates() {
    Fuse fuse = new Fuse(FuseFamily.REGULAR_BLADE, 10);
    assertThat(fuse.shortestOpeningS(10 * Math.sqrt(1.6 * 2.0)))
        .isCloseTo(Math.sqrt(0.25 * 0.15), within(1e-9));
    // Between the first two gates the second counts.
    assertThat(fuse.shortestOpeningS(11.01)).isEqualTo(0.75);
    // The longest time never improves before the next gate is reached.
    assertThat(fuse.longestOpeningS(15.9)).isEqualTo(600);
    assertThat(fuse.longestOpeningS(19.9)).isEqualTo(50);
    // No shortest time is known at 600 % of 35 and 40 A, so none is claimed on the way there.
    assertThat(new Fuse(FuseFamily.REGULAR_BLADE, 40).shortestOpeningS(150)).isZero();
  }

  @Test
  void beyondTheGates() {
    Fuse fuse = new Fuse(FuseFamily.REGULAR_BLADE, 10);
    assertThat(fuse.shortestOpeningS(5)).isEqualTo(360_000);
    assertThat(fuse.longestOpeningS(5)).isInfinite();
    assertThat(fuse.shortestOpeningS(61)).isZero();
    // Constant I²t: 60 A · 0.1 s carries over to 120 A and a quarter of the time.
    assertThat(fuse.longestOpeningS(120)).isCloseTo(0.025, within(1e-12));
    assertThat(fuse.currentOpeningWithinA(5)).hasValue(20);
    assertThat(fuse.currentOpeningWithinA(0.1)).hasValue(60);
    assertThat(fuse.currentOpeningWithinA(0.01)).isEmpty();
    assertThat(new Fuse(FuseFamily.LARGE_BLADE, 60).currentOpeningWithinA(5)).hasValue(360);
    assertThat(new Fuse(FuseFamily.LARGE_BLADE, 60).label()).isEqualTo("60 A blade type E");
  }

  @Provide
  Arbitrary<Fuse> fuses() {
    return Arbitraries.of(FuseFamily.values())
        .flatMap(f -> Arbitraries.of(f.ratingsA()).map(r -> new Fuse(f, r)));
  }

  @Provide
  Arbitrary<Double> multiples() {
    return TestConductors.from(0.5, 30);
  }

  @Property
  void moreCurrentNeverOpensLater(
      @ForAll("fuses") Fuse fuse, @ForAll("multiples") double a, @ForAll("multiples") double b) {
    double low = Math.min(a, b) * fuse.ratingA();
    double high = Math.max(a, b) * fuse.ratingA();
    assertThat(fuse.shortestOpeningS(high)).isLessThanOrEqualTo(fuse.shortestOpeningS(low));
    assertThat(fuse.longestOpeningS(high)).isLessThanOrEqualTo(fuse.longestOpeningS(low));
    assertThat(fuse.shortestOpeningS(low)).isLessThanOrEqualTo(fuse.longestOpeningS(low));
  }

  /** Oracle: let-through sampled finely over the range never exceeds the reckoned maximum. */
  @Property(tries = 200)
  void letThroughIsTheMaximumOverTheRange(
      @ForAll("fuses") Fuse fuse, @ForAll("multiples") double a, @ForAll("multiples") double b) {
    double low = Math.max(2, Math.min(a, b)) * fuse.ratingA();
    double high = Math.max(low, Math.max(a, b) * fuse.ratingA());
    double sampled = 0;
    int steps = 4000;
    for (int i = 0; i <= steps; i++) {
      double currentA = low + (high - low) * i / steps;
      sampled = Math.max(sampled, currentA * currentA * fuse.longestOpeningS(currentA));
    }
    double reckoned = fuse.largestLetThroughA2s(low, high);
    assertThat(sampled).isBetween(reckoned * 0.97, reckoned * (1 + 1e-9));
  }

  @Test
  void loadingLimitsAreOrderedAndTheDefaultIsOneOfThem() {
    assertThat(LoadingLimit.KNOWN).contains(LoadingLimit.DEFAULT);
    assertThat(LoadingLimit.KNOWN).extracting(LoadingLimit::share).isSorted();
    assertThat(LoadingLimit.KNOWN).allSatisfy(l -> assertThat(l.source()).isNotEmpty());
  }
}
