package org.loomwright.planner.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Wire;
import org.loomwright.physics.Check;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.protection.FusePlace;
import org.loomwright.planner.plan.Demo;

/** Faults planted into a wire behind a fuse are found by the check that is made for them. */
class ProtectionTest {
  private static final FuseSpot HOT = new FuseSpot(FusePlace.ENGINE_BAY, 95);

  private final KitOrder order = Demo.order(Demo.COMFORT);
  private final WireSizer sizer = new WireSizer(order.parts(), order.rules());

  @Test
  void aWireThatSuitsItsFuseHoldsAll() {
    WireNeed need = Behind.need(new Load(12, 19, 3), blade(20, Behind.COOL));
    assertThat(failing("W-P-2_5", need)).isEmpty();
    assertThat(sizer.passes(wire("W-P-2_5"), need)).isTrue();
    assertThat(names("W-P-2_5", need))
        .containsExactly(
            "loading",
            "starting current",
            "wire carries what may never open the fuse",
            "overload",
            "fault at the end of the line",
            "short circuit",
            "breaking capacity",
            "section for the fuse",
            "conductor carries the load",
            "conductor carries the fuse",
            "conductor after the peak");
  }

  @Test
  void aFuseTooLargeForItsWire() {
    WireNeed need = Behind.need(new Load(3, 0, 0), blade(30, Behind.COOL));
    assertThat(failing("W-P-0_5", need))
        .contains(
            "wire carries what may never open the fuse",
            "overload",
            "section for the fuse",
            "conductor carries the fuse")
        .doesNotContain("loading", "conductor carries the load");
    assertThat(sizer.passes(wire("W-P-0_5"), need)).isFalse();
    // The same wire behind the fuse that suits it.
    assertThat(failing("W-P-0_5", Behind.need(new Load(3, 0, 0), blade(5, Behind.COOL)))).isEmpty();
  }

  @Test
  void aLineTooLongForAFaultAtItsEndToOpenTheFuse() {
    // 11.8 V over 2 x 60 m of 2.5 mm² at 105 °C: about 1.2 ohm, 10 A; a 20 A fuse needs 40 A.
    WireNeed need = Behind.need(new Load(3, 0, 0), 60_000, blade(20, Behind.COOL));
    assertThat(failing("W-P-2_5", need)).containsExactly("fault at the end of the line");
    assertThat(sizer.passes(wire("W-P-2_5"), need)).isFalse();
  }

  @Test
  void aHotPlaceLeavesTooLittleOfTheFuse() {
    Load load = new Load(12, 0, 0);
    Check hot = check("W-P-2_5", Behind.need(load, blade(20, HOT)), "loading");
    assertThat(hot.verdict()).isEqualTo(Verdict.FAILS);
    // 0.75 at 85 °C, 0.55 at 125 °C: 0.70 at 95 °C, and of that 75 %.
    assertThat(hot.limit()).isCloseTo(0.75 * 0.70, within(1e-9));
    assertThat(hot.rule()).contains("engine bay at 95 °C").contains("re-rated");
    Check cool = check("W-P-2_5", Behind.need(load, blade(20, Behind.COOL)), "loading");
    assertThat(cool.verdict()).isNotEqualTo(Verdict.FAILS);
    // So a larger one is chosen there.
    assertThat(rating(Behind.COOL, load)).isEqualTo(20);
    assertThat(rating(HOT, load)).isEqualTo(25);
  }

  @Test
  void theShopsOwnRuleCountsWhereItIsStricter() {
    Check cold =
        check(
            "W-P-2_5",
            Behind.need(new Load(3, 0, 0), blade(20, new FuseSpot(FusePlace.CABIN, 20))),
            "loading");
    assertThat(cold.limit()).isEqualTo(order.rules().fuseLoading().value().fraction());
    assertThat(cold.rule()).contains("the shop's rule");
    assertThat(cold.source()).isEqualTo(order.rules().fuseLoading().source());
  }

  @Test
  void aStallThatOpensTheFuse() {
    // Three times the rating: between 2 and 3.5 times, where it may open within 0.15 s.
    WireNeed need = Behind.need(new Load(5, 45, 2), blade(15, Behind.COOL));
    assertThat(failing("W-P-2_5", need)).containsExactly("starting current");
    // The larger fuse that rides it out.
    assertThat(rating(Behind.COOL, new Load(5, 45, 2))).isGreaterThan(30);
  }

  @Test
  void aWarmFuseOpensEarlierAtTheSameStart() {
    // At 40 °C 20 A is 1.08 times what is left of the rating, borne for good; at 95 °C 1.43 times.
    Load load = new Load(5, 20, 3);
    assertThat(failing("W-P-2_5", Behind.need(load, blade(20, Behind.COOL)))).isEmpty();
    assertThat(failing("W-P-2_5", Behind.need(load, blade(20, HOT))))
        .containsExactly("starting current");
  }

  @Test
  void aStallThatHeatsTheConductorTooFar() {
    // The strip fuse rides out 200 A for 4 s; 2.5 mm² gains some 130 K from it without any loss:
    // I² r t / C = 200² · 8.4 mohm/m · 4 s / 8.6 J/(m K), and more as it warms.
    FuseBefore strip =
        new FuseBefore(
            new org.loomwright.physics.protection.Fuse(
                org.loomwright.physics.protection.FuseFamily.STRIP_30, 100),
            false,
            true,
            Behind.COOL,
            Behind.USUAL,
            List.of());
    Check peak =
        check("W-P-2_5", Behind.need(new Load(5, 200, 4), strip), "conductor after the peak");
    assertThat(peak.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(peak.value()).isGreaterThan(130);
    assertThat(peak.limit()).isEqualTo(55);
    assertThat(
            check("W-P-10", Behind.need(new Load(5, 200, 4), strip), "conductor after the peak")
                .verdict())
        .isEqualTo(Verdict.HOLDS);
  }

  @Test
  void aPeakThatMeltsTheConductorFailsByNameToo() {
    Check peak =
        check(
            "W-P-0_5",
            Behind.need(new Load(1, 400, 10), blade(5, Behind.COOL)),
            "conductor after the peak");
    assertThat(peak.verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void aSourceTooStrongForTheFuseIsShownButPicksNoWire() {
    FaultLoop strong = new FaultLoop(11.8, 16, 0.005, 0.02, 0.02);
    WireNeed need = Behind.need(new Load(3, 0, 0), Behind.blade(5, Behind.COOL, strong));
    assertThat(failing("W-P-0_5", need)).containsExactly("breaking capacity");
    assertThat(check("W-P-0_5", need, "breaking capacity").value()).isCloseTo(3200, within(1e-9));
    assertThat(sizer.passes(wire("W-P-0_5"), need)).isTrue();
  }

  @Test
  void ofAFactoryFuseWithoutAFormABladeIsTakenAndSaid() {
    FuseBefore kit = blade(10, Behind.COOL);
    FuseBefore factory = new FuseBefore(kit.fuse(), true, false, kit.spot(), kit.loop(), List.of());
    WireNeed need = Behind.need(new Load(3, 0, 0), factory);
    assertThat(check("W-P-1", need, "overload").source())
        .contains("form of the fuse is not on file, a regular blade is taken");
    assertThat(names("W-P-1", need)).doesNotContain("breaking capacity");
  }

  @Test
  void ofSeveralFusesTheWorseCounts() {
    FuseBefore small = blade(10, HOT);
    FuseBefore large = blade(15, Behind.COOL);
    Load load = new Load(5.5, 0, 0);
    WireNeed both = Behind.need(load, small, large);
    for (String name : names("W-P-1_5", both)) {
      double least =
          Math.min(
              check("W-P-1_5", Behind.need(load, small), name).margin(),
              check("W-P-1_5", Behind.need(load, large), name).margin());
      assertThat(check("W-P-1_5", both, name).margin()).as(name).isCloseTo(least, within(1e-12));
    }
    assertThat(failing("W-P-1_5", both)).containsExactly("loading");
  }

  @Test
  void aGroundLeavesOutWhatConcernsTheFuse() {
    WireNeed feed = Behind.need(new Load(12, 19, 3), blade(20, Behind.COOL));
    WireNeed ground =
        new WireNeed(
            true,
            feed.load(),
            feed.fuses(),
            feed.lengthMm(),
            feed.restMm(),
            feed.ambientC(),
            feed.wires(),
            feed.leastAreaMm2(),
            feed.dropV(),
            feed.supplyV());
    assertThat(names("W-P-2_5", ground))
        .isNotEmpty()
        .doesNotContain("loading", "starting current", "breaking capacity")
        .contains("overload", "short circuit", "conductor after the peak");
  }

  private double rating(FuseSpot spot, Load load) {
    return FuseForms.smallest(order, "blade", spot, load, Double.POSITIVE_INFINITY)
        .map(it -> it.rating().amperes())
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static FuseBefore blade(double ratingA, FuseSpot spot) {
    return Behind.blade(ratingA, spot, Behind.USUAL);
  }

  private Wire wire(String id) {
    return order.parts().wire(id).orElseThrow();
  }

  private List<String> names(String wire, WireNeed need) {
    return sizer.protection(wire(wire), need).checks().stream().map(Check::name).toList();
  }

  private List<String> failing(String wire, WireNeed need) {
    return sizer.protection(wire(wire), need).checks().stream()
        .filter(it -> it.verdict() == Verdict.FAILS)
        .map(Check::name)
        .toList();
  }

  private Check check(String wire, WireNeed need, String name) {
    return sizer.protection(wire(wire), need).checks().stream()
        .filter(it -> it.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
