package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Covering;
import org.loomwright.model.parts.CoveringForm;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Run;
import org.loomwright.planner.fixture.Bits;
import org.loomwright.planner.fixture.SmallCar;
import org.loomwright.planner.plan.With;

/** Wires that grow because of the heat of their bundle, and of nothing else. */
class BundleSizingTest {
  private static final Optional<Covering> BARE = Optional.empty();
  private static final Optional<Covering> TAPE = Optional.of(covering(CoveringForm.TAPE));
  private static final Optional<Covering> CONDUIT = Optional.of(covering(CoveringForm.CONDUIT));

  @Test
  void manyLoadedLeadsInOneRunNeedMoreCopperThanOne() {
    SolvedKit one = kit(1, BARE);
    SolvedKit many = kit(6, BARE);
    assertThat(areasMm2(one)).hasSize(1);
    assertThat(areasMm2(many)).hasSize(6);
    // Same fuses, lengths, loads; alone the smaller wire is enough.
    double aloneMm2 = areasMm2(one).get(0);
    assertThat(areasMm2(many)).anyMatch(mm2 -> mm2 > aloneMm2);
    assertThat(areasMm2(many)).allMatch(mm2 -> mm2 >= aloneMm2);
    onlyHeatStandsAgainst(many, wires(one).get(0));
    allHolds(one);
    allHolds(many);
  }

  @Test
  void aWideConduitMakesLeadsHotterAndWiresThicker() {
    SolvedKit bare = kit(6, BARE);
    SolvedKit conduit = kit(6, CONDUIT);
    Map<String, Wire> before = byKey(bare);
    Map<String, Wire> after = byKey(conduit);
    assertThat(after.keySet()).isEqualTo(before.keySet());
    double grownMm2 = 0;
    for (Map.Entry<String, Wire> one : after.entrySet()) {
      Wire was = Optional.ofNullable(before.get(one.getKey())).orElseThrow();
      double moreMm2 = one.getValue().size().areaMm2() - was.size().areaMm2();
      assertThat(moreMm2).isNotNegative();
      grownMm2 += moreMm2;
    }
    assertThat(grownMm2).isPositive();
    // With the wires of the bare bundle every lead is hotter in the conduit; only heat fails.
    Map<Strand, Wire> thin = new LinkedHashMap<>();
    conduit
        .sizer()
        .strands()
        .forEach(it -> thin.put(it, Optional.ofNullable(before.get(it.key())).orElseThrow()));
    Evaluation hot = conduit.sizer().evaluator().of(thin);
    for (Sized sized : bare.chosen().leads()) {
      if (sized.strand().kind() == CircuitKind.SUPPLY) {
        double bareC = bare.chosen().evaluation().conductorC(sized.strand());
        Strand same =
            conduit.sizer().strands().stream()
                .filter(it -> it.key().equals(sized.strand().key()))
                .findFirst()
                .orElseThrow();
        assertThat(hot.conductorC(same)).isGreaterThan(bareC + 1);
      }
    }
    assertThat(drops(conduit, hot)).allMatch(it -> it == Verdict.HOLDS);
    assertThat(
            conduit
                .sizer()
                .leads()
                .sizing(conduit.sizer().leads().needs(), conduit.sizer().evaluator())
                .levels(hot)
                .verdicts())
        .anyMatch(it -> it != Verdict.HOLDS);
    allHolds(conduit);
  }

  /** The conduit's air counts: (60 mm − tight bundle) / 2 on each side; tape lies close. */
  @Test
  void theGapOfAConduitIsWhatTheBundleLeavesOfIt() {
    List<Double> diametersMm = List.of(3.0, 3.0, 2.4);
    double tightMm = Math.sqrt(9 + 9 + 2.4 * 2.4);
    assertThat(Coverings.layer(covering(CoveringForm.CONDUIT), diametersMm).gapMm())
        .isCloseTo((60 - tightMm) / 2, within(1e-9));
    assertThat(Coverings.layer(covering(CoveringForm.TAPE), diametersMm).gapMm()).isZero();
    Covering unknown = With.changed(covering(CoveringForm.CONDUIT), "inner", Optional.empty());
    assertThat(Coverings.layer(unknown, diametersMm).gapMm())
        .isCloseTo((40 - tightMm) / 2, within(1e-9));
    Covering formless = With.changed(covering(CoveringForm.TAPE), "form", Optional.empty());
    assertThat(Coverings.layer(formless, diametersMm))
        .isEqualTo(org.loomwright.physics.heat.Covering.clothTape());
    Covering walled =
        With.changed(covering(CoveringForm.TAPE), "wall", Optional.of(Length.of("0.9 mm")));
    assertThat(Coverings.layer(walled, diametersMm).wallMm()).isCloseTo(0.9, within(1e-12));
  }

  /** The cheapest that takes the bundle and the heat; its bundle: 1.2 times the root of squares. */
  @Test
  void theCoveringIsTheCheapestThatFitsAndBearsTheHeat() {
    Covering wide = covering(CoveringForm.CONDUIT);
    Covering cheap =
        With.changed(
            With.changed(covering(CoveringForm.TAPE), "id", "cheap"),
            "price",
            Money.of("0.10 EUR"));
    Covering narrow =
        With.changed(
            With.changed(With.changed(cheap, "id", "narrow"), "bundleMost", Length.of("5 mm")),
            "price",
            Money.of("0.01 EUR"));
    Covering cool =
        With.changed(
            With.changed(With.changed(cheap, "id", "cool"), "rating", Temperature.of("90 °C")),
            "price",
            Money.of("0.02 EUR"));
    KitOrder order = order(1, BARE);
    Run run = order.vehicle().runs().get(0);
    List<Double> three = List.of(3.0, 3.0, 2.4);
    KitOrder all = with(order, List.of(wide, cheap, narrow, cool));
    // 1.2 · 4.877 mm are 5.85 mm; the run is at 100 °C.
    assertThat(new Coverings(all).of(run, three)).contains(cheap);
    assertThat(new Coverings(all).of(run, List.of(3.0))).contains(narrow);
    assertThat(new Coverings(with(order, List.of(narrow, cool))).of(run, three)).isEmpty();
    assertThat(new Coverings(all).ambientC(run)).isEqualTo(100);
    assertThat(new Coverings(all).ambientC(With.changed(run, "ambient", Optional.empty())))
        .isEqualTo(40);
  }

  @Test
  void tapeIsInBetween() {
    List<Double> warmestC = new ArrayList<>();
    for (Optional<Covering> covering : List.of(BARE, TAPE, CONDUIT)) {
      SolvedKit kit = kit(6, covering);
      Map<Strand, Wire> same = new LinkedHashMap<>();
      Wire thick = kit.order().parts().wires().get(4);
      kit.sizer().strands().forEach(it -> same.put(it, thick));
      Evaluation evaluation = kit.sizer().evaluator().of(same);
      warmestC.add(
          kit.sizer().strands().stream()
              .filter(it -> it.kind() == CircuitKind.SUPPLY)
              .mapToDouble(evaluation::conductorC)
              .max()
              .orElseThrow());
    }
    assertThat(warmestC.get(1)).isGreaterThanOrEqualTo(warmestC.get(0));
    assertThat(warmestC.get(2)).isGreaterThan(warmestC.get(1));
  }

  private static void onlyHeatStandsAgainst(SolvedKit kit, Wire thin) {
    Map<Strand, Wire> trial = new LinkedHashMap<>();
    kit.chosen()
        .leads()
        .forEach(
            it ->
                trial.put(
                    it.strand(), it.strand().kind() == CircuitKind.SUPPLY ? thin : it.wire()));
    Evaluation evaluation = kit.sizer().evaluator().of(trial);
    assertThat(drops(kit, evaluation)).allMatch(it -> it == Verdict.HOLDS);
    assertThat(
            kit.sizer()
                .leads()
                .sizing(kit.sizer().leads().needs(), kit.sizer().evaluator())
                .levels(evaluation)
                .verdicts())
        .anyMatch(it -> it != Verdict.HOLDS);
  }

  private static List<Verdict> drops(SolvedKit kit, Evaluation evaluation) {
    return new DropLimits(kit.order())
        .drops(evaluation).stream().map(DropLimits.Judged::verdict).toList();
  }

  private static void allHolds(SolvedKit kit) {
    assertThat(
            kit.sizer()
                .leads()
                .sizing(kit.sizer().leads().needs(), kit.sizer().evaluator())
                .levels(kit.chosen().evaluation())
                .verdicts())
        .allMatch(it -> it == Verdict.HOLDS);
  }

  private static List<Wire> wires(SolvedKit kit) {
    return kit.chosen().leads().stream()
        .filter(it -> it.strand().kind() == CircuitKind.SUPPLY)
        .map(Sized::wire)
        .toList();
  }

  private static List<Double> areasMm2(SolvedKit kit) {
    return wires(kit).stream().map(it -> it.size().areaMm2()).toList();
  }

  private static Map<String, Wire> byKey(SolvedKit kit) {
    Map<String, Wire> wires = new LinkedHashMap<>();
    kit.chosen().leads().forEach(it -> wires.put(it.strand().key(), it.wire()));
    return wires;
  }

  private static SolvedKit kit(int supplies, Optional<Covering> covering) {
    return SolvedKit.of(order(supplies, covering));
  }

  /** Supplies of 9 A each over two runs at 100 °C, drops next to unlimited. */
  private static KitOrder order(int supplies, Optional<Covering> covering) {
    List<Pin> pins = new ArrayList<>();
    for (int i = 1; i <= supplies; i++) {
      pins.add(Bits.pin("" + i, Bits.supply("30", 9)));
    }
    pins.add(Bits.pin("8", Bits.ground(9 * supplies)));
    KitOrder order = SmallCar.order(SmallCar.car(6), Bits.plug("p", pins.toArray(Pin[]::new)));
    List<Run> hot =
        order.vehicle().runs().stream()
            .map(it -> With.changed(it, "ambient", Optional.of(Temperature.of("100 °C"))))
            .toList();
    Rules rules =
        With.changed(order.rules(), "feedDrop", new Sourced<>(Percent.of("50 %"), "invented"));
    KitOrder changed = With.changed(order, "vehicle", With.changed(order.vehicle(), "runs", hot));
    return with(With.changed(changed, "rules", rules), covering.stream().toList());
  }

  private static KitOrder with(KitOrder order, List<Covering> coverings) {
    return With.changed(order, "parts", With.changed(order.parts(), "coverings", coverings));
  }

  private static Covering covering(CoveringForm form) {
    return new Covering(
        form.name(),
        "covering",
        Length.of("40 mm"),
        Optional.of(form),
        Optional.empty(),
        Optional.of(Length.of("60 mm")),
        Optional.empty(),
        Temperature.of("150 °C"),
        Money.of("1.00 EUR"),
        "invented");
  }
}
