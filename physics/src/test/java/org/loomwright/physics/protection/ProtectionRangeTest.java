package org.loomwright.physics.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.loomwright.physics.Check;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.TraceLine;
import org.loomwright.physics.wire.Conductor;

/**
 * Protection over the whole stated range: every figure is a number, a longer line never opens the
 * fuse sooner, a thicker wire is never protected worse, a bigger fuse never protects better.
 */
final class ProtectionRangeTest {
  /** Margins reckoned by different roads differ by rounding. */
  private static final double ROUNDING = 1e-6;

  private static final List<String> WIRE_CHECKS =
      List.of(
          "wire carries what may never open the fuse",
          "overload",
          "fault at the end of the line",
          "short circuit");

  @Provide
  Arbitrary<Fuse> fuses() {
    return Arbitraries.of(FuseFamily.values())
        .flatMap(f -> Arbitraries.of(f.ratingsA()).map(r -> new Fuse(f, r)));
  }

  @Provide
  Arbitrary<Double> parts() {
    return TestConductors.from(0, 1);
  }

  @Provide
  Arbitrary<FaultCurrents.Loop> loops() {
    Arbitrary<Conductor> conductors = Arbitraries.of(Conductor.metricCatalogue());
    return Combinators.combine(
            TestConductors.from(6, 500),
            TestConductors.from(0, 500),
            TestConductors.from(0.011, 5),
            TestConductors.from(0, 5),
            conductors,
            TestConductors.from(0, 1000),
            TestConductors.from(0, 10),
            TestConductors.from(-60, 400))
        .as(
            (lowV, more, strong, weaker, c, lengthM, contacts, hotC) ->
                new FaultCurrents.Loop(
                    lowV, lowV + more, strong, strong + weaker, c, lengthM, 0, contacts, hotC));
  }

  /** The smallest fault lies below the largest and falls with everything in its way. */
  @Property
  void faultsFallWithLengthHeatAndContacts(
      @ForAll("loops") FaultCurrents.Loop l, @ForAll("parts") double part) {
    FaultCurrents.Result base = FaultCurrents.of(l);
    assertThat(base.endOfLineA())
        .isPositive()
        .isLessThanOrEqualTo(base.nearSourceA() * (1 + 1e-12));
    double longer = l.feedM() + part * (1000 - l.feedM());
    double hotter = l.hotC() + part * (400 - l.hotC());
    double contacts = l.contactsOhm() + part * (10 - l.contactsOhm());
    for (FaultCurrents.Loop worse :
        List.of(
            with(l, l.conductor(), longer, l.returnM(), l.contactsOhm(), l.hotC()),
            with(l, l.conductor(), l.feedM(), 1000 * part, l.contactsOhm(), l.hotC()),
            with(l, l.conductor(), l.feedM(), l.returnM(), contacts, l.hotC()),
            with(l, l.conductor(), l.feedM(), l.returnM(), l.contactsOhm(), hotter))) {
      FaultCurrents.Result result = FaultCurrents.of(worse);
      assertThat(result.endOfLineA()).isPositive().isLessThanOrEqualTo(base.endOfLineA());
      assertThat(result.nearSourceA()).isEqualTo(base.nearSourceA());
    }
  }

  private static FaultCurrents.Loop with(
      FaultCurrents.Loop l, Conductor c, double feedM, double backM, double ohm, double hotC) {
    return new FaultCurrents.Loop(
        l.lowestV(),
        l.highestV(),
        l.strongSourceOhm(),
        l.weakSourceOhm(),
        c,
        feedM,
        backM,
        ohm,
        hotC);
  }

  /** A warmer fuse never carries more, whatever its family and place. */
  @Property
  void loadingFallsWithTheAmbient(
      @ForAll("fuses") Fuse fuse, @ForAll("parts") double a, @ForAll("parts") double b) {
    double coolC = -40 + 165 * Math.min(a, b);
    double warmC = -40 + 165 * Math.max(a, b);
    FuseFamily family = fuse.family();
    assertThat(FuseRerating.factor(family, warmC))
        .isBetween(0.55 - 1e-12, 1.0)
        .isLessThanOrEqualTo(FuseRerating.factor(family, coolC));
    for (FusePlace place : FusePlace.values()) {
      LoadingByPlace.Result cool = LoadingByPlace.of(family, place, coolC);
      LoadingByPlace.Result warm = LoadingByPlace.of(family, place, warmC);
      assertThat(warm.strictest().share())
          .isBetween(0.40, 0.80)
          .isLessThanOrEqualTo(cool.strictest().share());
      assertThat(warm.considered())
          .allSatisfy(
              limit -> assertThat(limit.share()).isGreaterThanOrEqualTo(warm.strictest().share()));
    }
  }

  private static ProtectionCheck.Result check(
      Fuse fuse, FaultCurrents.Loop loop, double fuseAmbientC, double loadA) {
    Conductor c = loop.conductor();
    return ProtectionCheck.of(
        new ProtectionRequest(
            fuse,
            FusePlace.ENGINE_BAY,
            fuseAmbientC,
            loadA,
            Optional.of(new LoadPoint("starting current", 3 * loadA, 0.5)),
            Optional.of(new LoadPoint("stalled current", 4 * loadA, 10)),
            DamageLine.Wire.hot(c, Insulation.XLPE, 125, 40),
            loop,
            5));
  }

  private static double margin(ProtectionCheck.Result result, String name) {
    return result.checks().stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow()
        .margin();
  }

  @Property(tries = 60)
  void everyFigureIsANumber(
      @ForAll("fuses") Fuse fuse,
      @ForAll("loops") FaultCurrents.Loop loop,
      @ForAll("parts") double air,
      @ForAll("parts") double load) {
    ProtectionCheck.Result result = check(fuse, loop, -40 + 165 * air, 1000 * load);
    for (Check c : result.checks()) {
      assertThat(List.of(c.value(), c.limit(), c.margin())).as(c.name()).allMatch(Double::isFinite);
    }
    assertThat(result.trace().lines()).extracting(TraceLine::value).doesNotContain(Double.NaN);
  }

  @Property(tries = 60)
  void aLongerLineNeverOpensSoonerAndAThickerWireIsNeverProtectedWorse(
      @ForAll("fuses") Fuse fuse,
      @ForAll("loops") FaultCurrents.Loop l,
      @ForAll("parts") double part) {
    double longer = l.feedM() + part * (1000 - l.feedM());
    ProtectionCheck.Result base = check(fuse, l, 25, 5);
    ProtectionCheck.Result far =
        check(fuse, with(l, l.conductor(), longer, 0, l.contactsOhm(), l.hotC()), 25, 5);
    String end = "fault at the end of the line";
    assertThat(margin(far, end)).isLessThanOrEqualTo(margin(base, end) + ROUNDING);
    List<Conductor> sizes = Conductor.metricCatalogue();
    int size = sizes.indexOf(l.conductor());
    if (size + 1 < sizes.size()) {
      ProtectionCheck.Result thick =
          check(fuse, with(l, sizes.get(size + 1), l.feedM(), 0, l.contactsOhm(), l.hotC()), 25, 5);
      assertThat(margin(thick, WIRE_CHECKS.get(0)))
          .isGreaterThanOrEqualTo(margin(base, WIRE_CHECKS.get(0)) - ROUNDING);
      assertThat(margin(thick, end)).isGreaterThanOrEqualTo(margin(base, end) - ROUNDING);
    }
  }

  @Property(tries = 40)
  void aBiggerFuseNeverProtectsBetter(
      @ForAll("loops") FaultCurrents.Loop loop,
      @ForAll @IntRange(min = 0, max = 5) int family,
      @ForAll("parts") double part) {
    List<Double> ratings = FuseFamily.values()[family].ratingsA();
    int small = (int) (part * (ratings.size() - 1.001));
    ProtectionCheck.Result before =
        check(new Fuse(FuseFamily.values()[family], ratings.get(small)), loop, 25, 5);
    ProtectionCheck.Result after =
        check(new Fuse(FuseFamily.values()[family], ratings.get(small + 1)), loop, 25, 5);
    for (String name : WIRE_CHECKS) {
      assertThat(margin(after, name)).as(name).isLessThanOrEqualTo(margin(before, name) + ROUNDING);
    }
  }

  /** More of other load and warmer air upstream never make a pair more selective. */
  @Property(tries = 200)
  void otherLoadAndHeatNeverMakeAPairMoreSelective(
      @ForAll("fuses") Fuse up,
      @ForAll("fuses") Fuse down,
      @ForAll("parts") double from,
      @ForAll("parts") double span,
      @ForAll("parts") double more) {
    double fromA = 5 + 500 * from;
    double toA = fromA + 2000 * span;
    Selectivity.Pair pair = new Selectivity.Pair(up, down, 25, 3, fromA, toA);
    double base = Selectivity.of(pair).selectiveUpToA();
    assertThat(base).isBetween(0.0, toA);
    for (Selectivity.Pair worse :
        List.of(
            new Selectivity.Pair(up, down, 25, 3 + 200 * more, fromA, toA),
            new Selectivity.Pair(up, down, 25 + 100 * more, 3, fromA, toA))) {
      assertThat(Selectivity.of(worse).selectiveUpToA()).isLessThanOrEqualTo(base * (1 + ROUNDING));
    }
  }
}
