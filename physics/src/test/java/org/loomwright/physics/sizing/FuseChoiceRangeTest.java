package org.loomwright.physics.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.loomwright.physics.Check;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.FuseFamily;
import org.loomwright.physics.wire.Conductor;

/** The choice of a fuse over a wide range: no NaN, and nothing gets better by being worse. */
final class FuseChoiceRangeTest {
  private static final double ROUNDING = 1e-6;

  @Provide
  Arbitrary<FuseRequest> requests() {
    List<Conductor> sizes = Conductor.metricCatalogue();
    return Combinators.combine(
            TestConductors.from(0, 90),
            TestConductors.from(0, 300),
            TestConductors.from(0, 100),
            Arbitraries.of(sizes.subList(0, sizes.size() - 1)),
            TestConductors.from(0, 200),
            TestConductors.from(-60, 250),
            TestConductors.from(1, 60),
            Arbitraries.integers().between(1, 60))
        .as(
            (loadA, peakA, peakS, c, lengthM, airC, supplyV, wires) ->
                FuseRequest.of(loadA, peakA, peakS, c, lengthM, airC, supplyV)
                    .withBundle(wires, OptionalDouble.empty()));
  }

  private static Check named(FuseChoice.Result result, String name) {
    return result.checks().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  @Property(tries = 150)
  void noFigureIsNaN(@ForAll("requests") FuseRequest request) {
    for (Check c : FuseChoice.of(request).checks()) {
      assertThat(c.value()).as(c.name()).isNotNaN();
      assertThat(c.limit()).as(c.name()).isNotNaN();
      assertThat(c.margin()).as(c.name()).isFinite();
    }
  }

  /** Checks of the wire fall with the fuse and rise with the wire. */
  @Property(tries = 150)
  void aBiggerFuseNeverProtectsBetterAndAThickerWireIsNeverWorse(
      @ForAll("requests") FuseRequest request) {
    List<Double> ratings = FuseFamily.SMALL_BLADE.ratingsA();
    List<Conductor> sizes = Conductor.metricCatalogue();
    FuseRequest thicker = request.withConductor(sizes.get(sizes.indexOf(request.conductor()) + 1));
    for (int i = 1; i < ratings.size(); i++) {
      FuseChoice.Result small =
          FuseChoice.check(request, new Fuse(FuseFamily.SMALL_BLADE, ratings.get(i - 1)));
      FuseChoice.Result large =
          FuseChoice.check(request, new Fuse(FuseFamily.SMALL_BLADE, ratings.get(i)));
      FuseChoice.Result thick =
          FuseChoice.check(thicker, new Fuse(FuseFamily.SMALL_BLADE, ratings.get(i)));
      for (String name : List.of("conductor carries the fuse", "end-of-line fault")) {
        assertThat(named(large, name).margin())
            .as(name)
            .isLessThanOrEqualTo(named(small, name).margin() + ROUNDING);
      }
      for (String name :
          List.of(
              "conductor carries the load",
              "conductor carries the fuse",
              "voltage drop",
              "end-of-line fault")) {
        assertThat(named(thick, name).margin())
            .as(name)
            .isGreaterThanOrEqualTo(
                named(large, name).margin()
                    - ROUNDING * (1 + Math.abs(named(large, name).margin())));
      }
    }
  }
}
