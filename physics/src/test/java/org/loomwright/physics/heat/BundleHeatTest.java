package org.loomwright.physics.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.SumException;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.packing.EqualWires;
import org.loomwright.physics.wire.Class5;
import org.loomwright.physics.wire.Conductor;

final class BundleHeatTest {
  private static final double SLACK_K = 1e-6;

  private static List<LoadedWire> equal(Conductor c, int loaded, int wires, double currentA) {
    List<LoadedWire> list = new ArrayList<>();
    for (int i = 0; i < wires; i++) {
      list.add(new LoadedWire("w" + (i + 1), c, i < loaded ? currentA : 0));
    }
    return list;
  }

  @Test
  void oneWireIsTheSingleWire() {
    for (double ambient : new double[] {-20, 30, 90}) {
      Conductor c = Conductor.metric(2.5);
      double single = WireHeat.temperature(WireHeat.Lying.single(c, ambient), 25).conductorC();
      BundleHeat.Result r =
          BundleHeat.temperatures(BundleHeat.Bundle.bare(equal(c, 1, 1, 25), ambient));
      assertThat(r.hottestC()).isCloseTo(single, within(SLACK_K));
    }
  }

  /** Given the same diameter, equal loaded wires are exactly the equal-wire bundle. */
  @Test
  void equalWiresAreTheEqualBundle() {
    Conductor c = Conductor.metric(1);
    for (int wires : new int[] {2, 3, 7, 12, 19, 37, 100}) {
      double currentA = 20 / Math.sqrt(wires);
      double equal =
          WireHeat.temperature(new WireHeat.Lying(c, 40, wires, OptionalDouble.empty()), currentA)
              .conductorC();
      double diameter = c.overallDiameterMm() * EqualWires.ratio(wires);
      BundleHeat.Bundle same =
          new BundleHeat.Bundle(
              equal(c, wires, wires, currentA), 40, OptionalDouble.of(diameter), List.of());
      assertThat(BundleHeat.temperatures(same).hottestC())
          .as(wires + " wires")
          .isGreaterThanOrEqualTo(equal - SLACK_K)
          .isCloseTo(equal, within(0.06 * (equal - 40)));
      // The tightest packing is never cooler and, above 19 wires, the same.
      double tight =
          BundleHeat.temperatures(BundleHeat.Bundle.bare(equal(c, wires, wires, currentA), 40))
              .hottestC();
      assertThat(tight).isGreaterThanOrEqualTo(equal - SLACK_K);
      if (wires > 19) {
        assertThat(tight).isCloseTo(equal, within(1e-4));
      }
    }
  }

  /** Part of the wires loaded: at least the equal bundle with those wires in the middle. */
  @Test
  void partlyLoadedBundlesAreNotCoolerThanTheEqualBundle() {
    Conductor c = Conductor.metric(0.75);
    for (int loaded = 1; loaded <= 20; loaded++) {
      double equal =
          WireHeat.temperature(new WireHeat.Lying(c, 40, 20, OptionalDouble.of(loaded / 20.0)), 5)
              .conductorC();
      double ours =
          BundleHeat.temperatures(BundleHeat.Bundle.bare(equal(c, loaded, 20, 5), 40)).hottestC();
      assertThat(ours).as(loaded + " loaded").isGreaterThanOrEqualTo(equal - 1e-4);
      assertThat(ours - 40).isLessThan(2.2 * (equal - 40));
    }
  }

  /**
   * Oracle: the heat equation in the round section, integrated in 200 000 thin shells, with the
   * rings' heat and the surface temperature of the result.
   */
  @Test
  void middleAgreesWithTheHeatEquationInThinShells() {
    List<LoadedWire> wires =
        List.of(
            new LoadedWire("a", Conductor.metric(2.5), 18),
            new LoadedWire("b", Conductor.metric(1), 8),
            new LoadedWire("c", Conductor.metric(4), 9),
            new LoadedWire("d", Conductor.metric(0.5), 0));
    double[] weight = BundleState.ringWeights(wires);
    double[] q = {5.0, 2.0, 0.7, 0.0};
    double ours = 0;
    double total = 0;
    for (int i = 0; i < 4; i++) {
      ours += q[i] * weight[i];
      total += square(wires.get(i).conductor().overallDiameterMm());
    }
    int shells = 200_000;
    double rise = 0;
    double heatInside = 0;
    double edge = 0;
    int ring = -1;
    double perArea = 0;
    for (int s = 0; s < shells; s++) {
      double r = (s + 0.5) / shells;
      while (ring < 3 && r * r >= edge) {
        ring++;
        double share = square(wires.get(ring).conductor().overallDiameterMm()) / total;
        perArea = q[ring] / share;
        edge += share;
      }
      heatInside += perArea * 2 * r / shells;
      rise += heatInside / (2 * Math.PI * HeatBalance.BUNDLE_W_PER_MK * r) / shells;
    }
    assertThat(ours).isCloseTo(rise, Percentage.withPercentage(0.1));
  }

  private static double square(double x) {
    return x * x;
  }

  /** Heat made by every wire at its own temperature is what the outside gives off. */
  @Property(tries = 200)
  void energyBalances(@ForAll("bundles") BundleHeat.Bundle bundle) {
    BundleHeat.Result r = BundleHeat.temperatures(bundle);
    double joule = 0;
    for (int i = 0; i < bundle.wires().size(); i++) {
      LoadedWire w = bundle.wires().get(i);
      double t = r.conductorC().get(i);
      assertThat(t).isBetween(bundle.ambientC() - SLACK_K, 1083.0);
      joule += w.currentA() * w.currentA() * w.conductor().ohmPerM20C() * (234.5 + t) / 254.5;
    }
    // Wires left out of the worst section make heat as well.
    assertThat(r.heatWPerM()).isLessThanOrEqualTo(joule * (1 + 1e-6));
    assertThat(r.hottestC())
        .isEqualTo(Collections.max(r.conductorC()))
        .isGreaterThanOrEqualTo(r.surfaceC() - SLACK_K);
  }

  @Test
  void outsideGivesOffTheHeatMade() {
    List<LoadedWire> wires =
        List.of(
            new LoadedWire("a", Conductor.metric(2.5), 18),
            new LoadedWire("b", Conductor.awg(18), 9));
    BundleHeat.Result r = BundleHeat.temperatures(BundleHeat.Bundle.bare(wires, 25));
    double d = 3.0 + 2.2;
    SurfaceHeat heat = SurfaceHeat.of(d, r.outsideC(), 25, 0.75);
    assertThat(heat.totalWPerM()).isCloseTo(r.heatWPerM(), Percentage.withPercentage(1e-5));
    assertThat(r.trace().lines().get(r.trace().lines().size() - 1).value()).isEqualTo(r.hottestC());
  }

  @Provide
  Arbitrary<LoadedWire> wires() {
    Arbitrary<Conductor> upTo10 =
        Arbitraries.of(
            Conductor.metricCatalogue().stream().filter(c -> c.areaMm2() <= 10).toList());
    // Up to 6 A per square millimetre; every third wire or so idle.
    return Combinators.combine(upTo10, TestConductors.from(-3, 6))
        .as((c, j) -> new LoadedWire("w", c, Math.max(0, j) * c.areaMm2()));
  }

  @Provide
  Arbitrary<BundleHeat.Bundle> bundles() {
    return Combinators.combine(
            wires().list().ofMinSize(1).ofMaxSize(12), TestConductors.from(-40, 100))
        .as(BundleHeat.Bundle::bare);
  }

  @Provide
  Arbitrary<Double> more() {
    return TestConductors.from(0, 5);
  }

  @Property(tries = 200)
  void moreCurrentIsNeverCooler(
      @ForAll("bundles") BundleHeat.Bundle bundle, @ForAll("more") double more, @ForAll int pick) {
    int index = Math.floorMod(pick, bundle.wires().size());
    BundleHeat.Result before = BundleHeat.temperatures(bundle);
    double currentA = bundle.wires().get(index).currentA() + more;
    Optional<BundleHeat.Result> found =
        BundleHeat.tryTemperatures(bundle.withCurrentA(index, currentA));
    if (found.isEmpty()) {
      // The added current melts the thinnest wires.
      return;
    }
    BundleHeat.Result after = found.get();
    assertThat(after.hottestC()).isGreaterThanOrEqualTo(before.hottestC() - SLACK_K);
    assertThat(after.conductorC().get(index))
        .isGreaterThanOrEqualTo(before.conductorC().get(index) - SLACK_K);
  }

  /** The hottest wire made thicker: neither it nor the bundle gets hotter. */
  @Property(tries = 200)
  void thickerWireIsNeverHotter(@ForAll("bundles") BundleHeat.Bundle bundle) {
    int densest = 0;
    for (int i = 1; i < bundle.wires().size(); i++) {
      if (bundle.wires().get(i).heatDensity(20) > bundle.wires().get(densest).heatDensity(20)) {
        densest = i;
      }
    }
    BundleHeat.Result before = BundleHeat.temperatures(bundle);
    BundleHeat.Result after = BundleHeat.temperatures(thicker(bundle, densest));
    assertThat(after.hottestC()).isLessThanOrEqualTo(before.hottestC() + SLACK_K);
    assertThat(after.conductorC().get(densest))
        .isLessThanOrEqualTo(before.conductorC().get(densest) + SLACK_K);
  }

  /**
   * Any wire up to 10 mm² and 6 A/mm² made one size thicker. One that makes little heat lengthens
   * the way from the middle to the surface, as a thick covering would: the rise may grow, but by
   * less than a hundredth.
   */
  @Property(tries = 200)
  void thickerWireAmongHotterOnesChangesLittle(
      @ForAll("bundles") BundleHeat.Bundle bundle, @ForAll int pick) {
    int index = Math.floorMod(pick, bundle.wires().size());
    double ambient = bundle.ambientC();
    double before = BundleHeat.temperatures(bundle).hottestC() - ambient;
    double after = BundleHeat.temperatures(thicker(bundle, index)).hottestC() - ambient;
    assertThat(after).isLessThanOrEqualTo(1.01 * before + SLACK_K);
  }

  @Provide
  Arbitrary<BundleHeat.Bundle> anyBundles() {
    Arbitrary<Conductor> all =
        Arbitraries.of(
            Stream.of(Conductor.metricCatalogue(), Conductor.awgCatalogue(), Class5.tinned())
                .flatMap(List::stream)
                .toList());
    Arbitrary<LoadedWire> wire =
        Combinators.combine(all, TestConductors.from(-10, 30))
            .as((c, j) -> new LoadedWire("w", c, Math.max(0, j) * c.areaMm2()));
    Arbitrary<OptionalDouble> diameters =
        Arbitraries.oneOf(
            Arbitraries.just(OptionalDouble.empty()),
            TestConductors.from(60, 200).map(OptionalDouble::of));
    Arbitrary<List<Covering>> coverings =
        Arbitraries.of(
            List.of(),
            List.of(Covering.pvcTape()),
            List.of(Covering.clothTape(), Covering.conduit(1)));
    return Combinators.combine(
            wire.list().ofMinSize(1).ofMaxSize(14),
            TestConductors.from(-60, 250),
            diameters,
            coverings)
        .as(BundleHeat.Bundle::new);
  }

  private static double hottestC(BundleHeat.Bundle bundle) {
    return BundleHeat.tryTemperatures(bundle)
        .map(BundleHeat.Result::hottestC)
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Over the whole range, also with a given diameter and covered. */
  @Property(tries = 300)
  void moreCurrentAndMoreWiresAreNeverCooler(
      @ForAll("anyBundles") BundleHeat.Bundle bundle,
      @ForAll("more") double more,
      @ForAll int pick) {
    int index = Math.floorMod(pick, bundle.wires().size());
    double base = hottestC(bundle);
    double currentA = bundle.wires().get(index).currentA() + more;
    assertThat(hottestC(bundle.withCurrentA(index, currentA)))
        .isGreaterThanOrEqualTo(base - SLACK_K);
    if (bundle.diameterMm().isEmpty()) {
      List<LoadedWire> wires = new ArrayList<>(bundle.wires());
      wires.add(wires.get(index).withCurrentA(more));
      assertThat(
              hottestC(
                  new BundleHeat.Bundle(
                      wires, bundle.ambientC(), OptionalDouble.empty(), bundle.coverings())))
          .isGreaterThanOrEqualTo(base - SLACK_K);
    }
  }

  /** The stated bound over all sizes: a tenth of a rise of up to 250 K. */
  @Property(tries = 300)
  void oneSizeThickerHeatsByLessThanATenth(
      @ForAll("anyBundles") BundleHeat.Bundle any, @ForAll int pick) {
    int index = Math.floorMod(pick, any.wires().size());
    List<Conductor> all = Conductor.metricCatalogue();
    List<LoadedWire> wires = new ArrayList<>(any.wires());
    int size = Math.floorMod(pick, all.size() - 1);
    wires.set(index, new LoadedWire("w", all.get(size), wires.get(index).currentA() / 20));
    BundleHeat.Bundle bundle =
        new BundleHeat.Bundle(wires, any.ambientC(), OptionalDouble.empty(), List.of());
    double before = hottestC(bundle) - bundle.ambientC();
    if (before <= 250) {
      double after = hottestC(thicker(bundle, index)) - bundle.ambientC();
      assertThat(after).isLessThanOrEqualTo(1.10 * before + SLACK_K);
    }
  }

  private static BundleHeat.Bundle thicker(BundleHeat.Bundle bundle, int index) {
    List<Conductor> all = Conductor.metricCatalogue();
    LoadedWire wire = bundle.wires().get(index);
    List<LoadedWire> changed = new ArrayList<>(bundle.wires());
    changed.set(
        index, new LoadedWire("w", all.get(all.indexOf(wire.conductor()) + 1), wire.currentA()));
    return BundleHeat.Bundle.bare(changed, bundle.ambientC());
  }

  /** Also an idle one: wires that could cool the others are not relied on. */
  @Property(tries = 100)
  void oneMoreWireNeverAllowsMoreCurrent(
      @ForAll("bundles") BundleHeat.Bundle bundle, @ForAll("wires") LoadedWire added) {
    List<LoadedWire> more = new ArrayList<>(bundle.wires());
    more.add(added);
    BundleHeat.Bundle larger = BundleHeat.Bundle.bare(more, bundle.ambientC());
    double before = BundleHeat.allowedCurrentA(bundle, 0, 105);
    double after = BundleHeat.allowedCurrentA(larger, 0, 105);
    assertThat(after).isLessThanOrEqualTo(before + 1e-3 * (1 + before));
  }

  @Property(tries = 60)
  void coveringNeverCools(@ForAll("bundles") BundleHeat.Bundle bundle) {
    double bare = BundleHeat.temperatures(bundle).hottestC();
    for (List<Covering> coverings :
        List.of(
            List.of(Covering.pvcTape()),
            List.of(Covering.clothTape(), Covering.conduit(2)),
            List.of(Covering.conduit(0.5)),
            List.of(Covering.braidedSleeve(), Covering.shrinkTube(1)))) {
      BundleHeat.Result r = BundleHeat.temperatures(bundle.withCoverings(coverings));
      assertThat(r.hottestC()).isGreaterThanOrEqualTo(bare - SLACK_K);
      assertThat(r.outsideC()).isLessThanOrEqualTo(r.surfaceC() + SLACK_K);
    }
  }

  /** An allowed current heats the wire to its limit, and to nothing else. */
  @Property(tries = 60)
  void allowedCurrentReachesTheLimit(@ForAll("bundles") BundleHeat.Bundle bundle) {
    double allowed = BundleHeat.allowedCurrentA(bundle, 0, 105);
    double at = BundleHeat.temperatures(bundle.withCurrentA(0, allowed)).conductorC().get(0);
    if (allowed > 0) {
      assertThat(at).isCloseTo(105, within(1e-4));
    } else {
      assertThat(at).isGreaterThanOrEqualTo(105 - 1e-4);
    }
  }

  /** By hand: PVC tape 0.26 mm on 10 mm, 10 W/m: 10·ln(10.52/10)·6/(2π) = 0.484 K. */
  @Test
  void tapeByHand() {
    assertThat(Covering.pvcTape().insideC(10, 50, 10)).isCloseTo(50.484, within(0.001));
  }

  /**
   * By hand: gap from 10 to 14 mm, 60 against 40 °C: still air at 50 °C 0.0279 W/(m K) gives
   * 2π·0.0279·20/ln 1.4 = 10.4 W/m; radiation with 1/(1/0.75 + 0.714/3) = 0.636 gives
   * 0.636·5.67e-8· π·0.01·(333.15⁴ - 313.15⁴) = 3.06 W/m.
   */
  @Test
  void airGapByHand() {
    double q = AirGap.heatWPerM(10, 14, 60, 40);
    assertThat(q).isCloseTo(10.4 + 3.06, Percentage.withPercentage(1.5));
    assertThat(AirGap.innerC(10, 14, 40, q)).isCloseTo(60, within(1e-6));
  }

  @Test
  void badInputIsRefused() {
    List<LoadedWire> one = equal(Conductor.metric(1), 1, 1, 5);
    assertThatThrownBy(() -> BundleHeat.Bundle.bare(List.of(), 20))
        .isInstanceOf(SumException.class)
        .hasMessageContaining("number of wires must be from 1 to 400");
    assertThatThrownBy(() -> BundleHeat.Bundle.bare(one, 300))
        .hasMessageContaining("ambient temperature must be from -60 to 250 °C");
    assertThatThrownBy(() -> new BundleHeat.Bundle(one, 20, OptionalDouble.of(1), List.of()))
        .hasMessageContaining("bundle diameter must be from 2.1 to 1000 mm");
    assertThatThrownBy(() -> new LoadedWire("x", Conductor.metric(1), Double.NaN))
        .hasMessageContaining("current in x must be from 0 to 100000 A");
    assertThatThrownBy(() -> new Covering("c", -1, 1, 0.2, "s"))
        .hasMessageContaining("air gap of c must be from 0 to 50 mm");
    assertThatThrownBy(
            () ->
                BundleHeat.temperatures(
                    BundleHeat.Bundle.bare(equal(Conductor.metric(1), 5, 5, 90), 20)))
        .hasMessageContaining("no steady temperature below the melting point");
    assertThatThrownBy(() -> BundleHeat.allowedCurrentA(BundleHeat.Bundle.bare(one, 20), 1, 105))
        .hasMessageContaining("wire index");
  }
}
