package org.loomwright.physics.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.Check;
import org.loomwright.physics.SumException;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class ProtectionCheckTest {
  /** 10 A load on 2.5 mm², 15 A fuse, 4 m there and back to the body: all holds. */
  private static ProtectionRequest sound(Conductor c, Fuse fuse, double feedM) {
    return new ProtectionRequest(
        fuse,
        FusePlace.CABIN,
        25,
        10,
        Optional.of(new LoadPoint("starting current", 30, 0.1)),
        Optional.of(new LoadPoint("stalled current", 45, 10)),
        DamageLine.Wire.hot(c, Insulation.PVC, 105, 40),
        new FaultCurrents.Loop(11, 15, 0.02, 0.06, c, feedM, feedM, 0.01, 105),
        5);
  }

  private static ProtectionRequest sound() {
    return sound(Conductor.metric(2.5), new Fuse(FuseFamily.REGULAR_BLADE, 15), 4);
  }

  private static Check named(ProtectionCheck.Result result, String name) {
    return result.checks().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  private static ProtectionCheck.Result check(ProtectionRequest request) {
    ProtectionCheck.Result result = ProtectionCheck.of(request);
    for (Check c : result.checks()) {
      assertThat(c.value()).as(c.name()).isFinite();
      assertThat(c.limit()).as(c.name()).isFinite();
      assertThat(c.margin()).as(c.name()).isFinite();
    }
    return result;
  }

  @Test
  void aSoundCircuitHolds() {
    ProtectionCheck.Result result = check(sound());
    assertThat(result.checks())
        .extracting(Check::name)
        .containsExactly(
            "loading",
            "starting current",
            "wire carries what may never open the fuse",
            "overload",
            "fault at the end of the line",
            "short circuit",
            "breaking capacity",
            "stalled load opens the fuse",
            "stalled load opens the fuse before damage");
    assertThat(result.checks())
        .allSatisfy(c -> assertThat(c.verdict()).as(c.name()).isNotEqualTo(Verdict.FAILS));
    assertThat(result.trace().lines()).isNotEmpty();
  }

  // Planted faults: each must be found by the check it belongs to.

  @Test
  void aFuseTooLargeForTheWireIsFound() {
    ProtectionRequest request =
        sound(Conductor.metric(0.5), new Fuse(FuseFamily.REGULAR_BLADE, 30), 2);
    ProtectionCheck.Result result = check(request);
    assertThat(named(result, "wire carries what may never open the fuse").verdict())
        .isEqualTo(Verdict.FAILS);
    assertThat(named(result, "overload").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void aSlowLargeFuseOnThinWireFailsTheShortCircuit() {
    ProtectionRequest request =
        sound(Conductor.metric(1), new Fuse(FuseFamily.LARGE_BLADE, 60), 0.5);
    assertThat(named(check(request), "short circuit").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void aLineTooLongToOpenTheFuseIsFound() {
    ProtectionRequest request =
        sound(Conductor.metric(2.5), new Fuse(FuseFamily.REGULAR_BLADE, 15), 40);
    assertThat(named(check(request), "fault at the end of the line").verdict())
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  void anOverloadedFuseAndAHotPlaceAreFound() {
    ProtectionRequest cool = sound().withFuse(new Fuse(FuseFamily.REGULAR_BLADE, 10));
    assertThat(named(check(cool), "loading").verdict()).isEqualTo(Verdict.FAILS);
    ProtectionRequest r = sound();
    ProtectionRequest engineBay =
        new ProtectionRequest(
            r.fuse(),
            FusePlace.ENGINE_BAY,
            100,
            r.continuousA(),
            r.starting(),
            r.stalled(),
            r.wire(),
            r.faults(),
            5);
    ProtectionCheck.Result result = check(engineBay);
    assertThat(named(result, "loading").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(result.loading().strictest().source()).contains("fuse makers' guides");
  }

  @Test
  void aLongStartThatOpensTheFuseIsFound() {
    ProtectionRequest r = sound();
    ProtectionRequest slow =
        new ProtectionRequest(
            r.fuse(),
            r.place(),
            r.fuseAmbientC(),
            r.continuousA(),
            Optional.of(new LoadPoint("starting current", 60, 2)),
            Optional.empty(),
            r.wire(),
            r.faults(),
            5);
    ProtectionCheck.Result result = check(slow);
    assertThat(named(result, "starting current").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(result.checks())
        .extracting(Check::name)
        .doesNotContain("stalled load opens the fuse");
  }

  @Test
  void aStallTheFuseMayBearForEverIsFound() {
    ProtectionRequest r = sound();
    ProtectionRequest weak =
        new ProtectionRequest(
            r.fuse(),
            r.place(),
            r.fuseAmbientC(),
            r.continuousA(),
            Optional.empty(),
            Optional.of(new LoadPoint("stalled current", 18, 10)),
            r.wire(),
            r.faults(),
            5);
    assertThat(named(check(weak), "stalled load opens the fuse").verdict())
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  void aStallThatDamagesThinWireFirstIsFound() {
    ProtectionRequest thin = sound(Conductor.metric(0.35), new Fuse(FuseFamily.LARGE_BLADE, 20), 1);
    assertThat(named(check(thin), "stalled load opens the fuse before damage").verdict())
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  void aSourceTooStrongToBreakIsFound() {
    ProtectionRequest r = sound();
    FaultCurrents.Loop l = r.faults();
    ProtectionRequest strong =
        new ProtectionRequest(
            r.fuse(),
            r.place(),
            r.fuseAmbientC(),
            r.continuousA(),
            r.starting(),
            r.stalled(),
            r.wire(),
            new FaultCurrents.Loop(
                11, 15, 0.005, 0.06, l.conductor(), l.feedM(), l.returnM(), 0.01, 105),
            5);
    assertThat(named(check(strong), "breaking capacity").verdict()).isEqualTo(Verdict.FAILS);
  }

  /** Oracle: the band against the damage line at 1000 currents of the fault range. */
  @Property(tries = 12)
  void worstCurrentIsTheWorst(@ForAll("fuses") Fuse fuse, @ForAll("conductors") Conductor c) {
    ProtectionRequest request = sound(c, fuse, 1);
    ProtectionCheck.Result result = check(request);
    DamageLine line = DamageLine.of(request.wire());
    FaultCurrents.Result faults = FaultCurrents.of(request.faults());
    double from = Math.max(1.35 * fuse.ratingA(), faults.endOfLineA());
    double worst = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 1000 && from < faults.nearSourceA(); i++) {
      double currentA = from * Math.pow(faults.nearSourceA() / from, i / 1000.0);
      double stands = Math.min(DamageLine.FOR_GOOD_S, line.timeS(currentA));
      worst = Math.min(worst, stands / fuse.longestOpeningS(currentA));
    }
    Check ours = named(result, "short circuit");
    if (Double.isFinite(worst)) {
      assertThat(ours.limit() / ours.value()).isBetween(worst * 0.98, worst * 1.01);
    }
  }

  @Provide
  Arbitrary<Fuse> fuses() {
    return Arbitraries.of(FuseFamily.values())
        .flatMap(f -> Arbitraries.of(f.ratingsA()).map(r -> new Fuse(f, r)));
  }

  @Provide
  Arbitrary<Conductor> conductors() {
    return TestConductors.any();
  }

  /** A bigger fuse of the same form never protects better, in any check of the wire. */
  @Property(tries = 40)
  void aBiggerFuseNeverProtectsBetter(
      @ForAll("conductors") Conductor c, @ForAll @IntRange(min = 0, max = 5) int pick) {
    FuseFamily family = FuseFamily.values()[pick];
    double[] before = {1e300, 1e300, 1e300, 1e300};
    List<String> names =
        List.of(
            "wire carries what may never open the fuse",
            "overload",
            "fault at the end of the line",
            "short circuit");
    for (double ratingA : family.ratingsA()) {
      ProtectionCheck.Result result = check(sound(c, new Fuse(family, ratingA), 3));
      for (int i = 0; i < names.size(); i++) {
        double margin = named(result, names.get(i)).margin();
        assertThat(margin).as(names.get(i) + " " + ratingA).isLessThanOrEqualTo(before[i] + 1e-9);
        before[i] = margin;
      }
    }
  }

  /** By hand: 11 / (0.06 + 0.01 + 8 · 7.60e-3 · 339.5/254.5) = 72.8 A; 15 / 0.02 = 750 A. */
  @Test
  void faultCurrentsByHand() {
    FaultCurrents.Result r = FaultCurrents.of(sound().faults());
    assertThat(r.endOfLineA()).isCloseTo(72.82, within(0.05));
    assertThat(r.nearSourceA()).isCloseTo(750, within(1e-9));
    FaultCurrents.Loop longer =
        new FaultCurrents.Loop(11, 15, 0.02, 0.06, Conductor.metric(2.5), 5, 4, 0.01, 105);
    assertThat(FaultCurrents.of(longer).endOfLineA()).isLessThan(r.endOfLineA());
  }

  /** Points of a maker's data sheet, 40 A large blade. */
  @Test
  void reratingGoesThroughThePublishedPoints() {
    for (Row row : ReferenceTables.fuseRerating().rows()) {
      assertThat(40 * FuseRerating.factor(FuseFamily.LARGE_BLADE, row.number("ambient_C")))
          .as(row.where())
          .isCloseTo(row.number("max_A"), within(1e-9));
    }
    // Half way between 20 and 85 °C: half way between 1 and 0.75.
    assertThat(FuseRerating.factor(FuseFamily.SMALL_BLADE, 52.5)).isCloseTo(0.875, within(1e-9));
    double before = 2;
    for (double t = -40; t <= 125; t += 0.5) {
      double now = FuseRerating.factor(FuseFamily.STRIP_30, t);
      assertThat(now).isLessThanOrEqualTo(before).isBetween(0.55, 1.0);
      before = now;
    }
    assertThat(FuseRerating.source(FuseFamily.CARTRIDGE)).contains("taken over");
    assertThatThrownBy(() -> FuseRerating.factor(FuseFamily.LARGE_BLADE, 126))
        .isInstanceOf(SumException.class)
        .hasMessage("ambient of the blade type E must be from -40 to 125 °C, but is 126 °C");
  }

  @Test
  void strictestLoadingLimitSaysWhoseItIs() {
    LoadingByPlace.Result cabin = LoadingByPlace.of(FuseFamily.REGULAR_BLADE, FusePlace.CABIN, 25);
    assertThat(cabin.strictest().share()).isCloseTo(0.70, within(1e-9));
    assertThat(cabin.strictest().source()).contains("body-builder");
    LoadingByPlace.Result bay =
        LoadingByPlace.of(FuseFamily.REGULAR_BLADE, FusePlace.ENGINE_BAY, 60);
    assertThat(bay.strictest().share()).isCloseTo(0.60, within(1e-9));
    assertThat(bay.strictest().use()).contains("engine bay");
    // At 105 °C what the heat leaves is stricter than the rule for the place.
    LoadingByPlace.Result hot =
        LoadingByPlace.of(FuseFamily.LARGE_BLADE, FusePlace.ENGINE_BAY, 105);
    assertThat(hot.strictest().share()).isCloseTo(0.75 * 0.65, within(1e-9));
    assertThat(hot.considered()).hasSize(4).extracting(LoadingLimit::share).isSorted();
  }

  @Test
  void chartHoldsBandLineAndLoads() {
    ProtectionChart chart = check(sound()).chart();
    assertThat(chart.fuse()).isEqualTo("15 A blade type C");
    assertThat(chart.wire()).isEqualTo("2.5 mm²");
    assertThat(chart.loads())
        .extracting(LoadPoint::name)
        .containsExactly("steady load", "starting current", "stalled current");
    for (List<ChartPoint> points : List.of(chart.earliest(), chart.latest(), chart.damage())) {
      assertThat(points).hasSizeGreaterThan(5);
      for (int i = 1; i < points.size(); i++) {
        assertThat(points.get(i).currentA()).isGreaterThanOrEqualTo(points.get(i - 1).currentA());
        assertThat(points.get(i).timeS())
            .isPositive()
            .isLessThanOrEqualTo(points.get(i - 1).timeS());
      }
    }
    assertThat(chart.latest().get(chart.latest().size() - 1).currentA())
        .isCloseTo(chart.nearSourceA(), within(1e-6));
    // The 40 A blade has no earliest opening at 600 %: the line ends before.
    ProtectionChart forty =
        check(sound(Conductor.metric(10), new Fuse(FuseFamily.REGULAR_BLADE, 40), 4)).chart();
    assertThat(forty.earliest().get(forty.earliest().size() - 1).currentA()).isEqualTo(140);
  }

  @Test
  void outOfRangeIsRefused() {
    assertThatThrownBy(() -> new LoadPoint("p", -1, 0)).hasMessageContaining("p must be from 0");
    assertThatThrownBy(
            () -> new FaultCurrents.Loop(12, 11, 0.02, 0.06, Conductor.metric(1), 1, 1, 0, 105))
        .hasMessageContaining("highest supply must be from 12 to 1000 V");
    assertThatThrownBy(
            () -> new FaultCurrents.Loop(11, 15, 0.02, 0.01, Conductor.metric(1), 1, 1, 0, 105))
        .hasMessageContaining("resistance of a weak source must be from 0.02 to 10 ohm");
    assertThatThrownBy(
            () -> new FaultCurrents.Loop(11, 15, 1e-4, 0.01, Conductor.metric(1), 1, 1, 0, 105))
        .hasMessageContaining("fault near the source")
        .hasMessageContaining("from 0 to 100000 A, but is 150000 A");
  }
}
