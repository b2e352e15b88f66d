package org.loomwright.physics.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.Verdict;

final class SelectivityTest {
  private static Selectivity.Pair pair(
      Fuse upstream, Fuse downstream, double otherA, double fromA, double toA) {
    return new Selectivity.Pair(upstream, downstream, 25, otherA, fromA, toA);
  }

  /**
   * By hand: 10 A blade C under 60 A blade E. From 60 to 210 A the small one is open in 0.1 s while
   * the large one bears at least 0.2 s.
   */
  @Test
  void aSmallBladeUnderALargeOneIsSelective() {
    Fuse large = new Fuse(FuseFamily.LARGE_BLADE, 60);
    Fuse small = new Fuse(FuseFamily.REGULAR_BLADE, 10);
    Selectivity.Result r = Selectivity.of(pair(large, small, 0, 60, 200));
    assertThat(r.selectiveUpToA()).isEqualTo(200);
    assertThat(r.check().verdict()).isNotEqualTo(Verdict.FAILS);
    // Beyond 360 A no earliest opening of the large one is known.
    Selectivity.Result far = Selectivity.of(pair(large, small, 0, 60, 1000));
    assertThat(far.check().verdict()).isEqualTo(Verdict.FAILS);
    // The re-rating at 25 °C of the upstream fuse is 1 - 0.25 · 5/65 = 0.98077.
    assertThat(far.selectiveUpToA()).isCloseTo(360 * 0.980769, within(0.01));
    assertThat(far.trace().lines()).isNotEmpty();
  }

  /** Planted fault: the same fuse twice, and the small one upstream. */
  @Test
  void equalOrSwappedFusesAreNotSelective() {
    Fuse ten = new Fuse(FuseFamily.REGULAR_BLADE, 10);
    Fuse thirty = new Fuse(FuseFamily.REGULAR_BLADE, 30);
    assertThat(Selectivity.of(pair(ten, ten, 0, 40, 60)).selectiveUpToA()).isZero();
    assertThat(Selectivity.of(pair(ten, thirty, 0, 50, 100)).selectiveUpToA()).isZero();
  }

  @Test
  void otherLoadAndHeatMakeItWorse() {
    Fuse large = new Fuse(FuseFamily.LARGE_BLADE, 40);
    Fuse small = new Fuse(FuseFamily.REGULAR_BLADE, 10);
    double alone = Selectivity.of(pair(large, small, 0, 60, 1000)).selectiveUpToA();
    double loaded = Selectivity.of(pair(large, small, 30, 60, 1000)).selectiveUpToA();
    double hot =
        Selectivity.of(new Selectivity.Pair(large, small, 85, 0, 60, 1000)).selectiveUpToA();
    assertThat(alone).isPositive();
    assertThat(loaded).isLessThan(alone);
    assertThat(hot).isLessThan(alone);
  }

  @Provide
  Arbitrary<Fuse> fuses() {
    return Arbitraries.of(FuseFamily.values())
        .flatMap(f -> Arbitraries.of(f.ratingsA()).map(r -> new Fuse(f, r)));
  }

  @Provide
  Arbitrary<Double> currents() {
    return TestConductors.from(5, 900);
  }

  /** Oracle: selective at every one of 4000 currents up to the answer, and not just beyond it. */
  @Property(tries = 200)
  void answerIsTheFirstCurrentThatIsNotSelective(
      @ForAll("fuses") Fuse up,
      @ForAll("fuses") Fuse down,
      @ForAll("currents") double a,
      @ForAll("currents") double b) {
    Selectivity.Pair pair = pair(up, down, 5, Math.min(a, b), Math.max(a, b));
    double answer = Selectivity.of(pair).selectiveUpToA();
    if (answer == 0) {
      assertThat(Selectivity.selective(pair, pair.fromA())).isFalse();
      return;
    }
    // The last step stops a hair short, so that rounding does not carry it over the edge.
    for (int i = 0; i <= 4000; i++) {
      double currentA = pair.fromA() + (answer * (1 - 1e-9) - pair.fromA()) * i / 4000;
      assertThat(Selectivity.selective(pair, currentA)).as(currentA + " A").isTrue();
    }
    if (answer < pair.toA()) {
      assertThat(Selectivity.selective(pair, Math.min(pair.toA(), answer * 1.00001))).isFalse();
    }
  }

  @Test
  void outOfRangeIsRefused() {
    Fuse ten = new Fuse(FuseFamily.REGULAR_BLADE, 10);
    assertThatThrownBy(() -> pair(ten, ten, 0, 100, 50))
        .hasMessageContaining("largest fault must be from 100 to 100000 A");
    assertThatThrownBy(() -> pair(ten, ten, -1, 50, 100)).hasMessageContaining("other load");
  }
}
