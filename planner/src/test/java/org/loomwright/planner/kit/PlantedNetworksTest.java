package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.equipment.LoadForm;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.planner.electrics.CaseFigures;
import org.loomwright.planner.electrics.CaseSolver;
import org.loomwright.planner.electrics.FittedFuse;
import org.loomwright.planner.electrics.JointCase;
import org.loomwright.planner.electrics.Ohms;
import org.loomwright.planner.electrics.PlacedLead;
import org.loomwright.planner.fixture.Bits;
import org.loomwright.planner.fixture.SmallCar;
import org.loomwright.planner.fixture.VehicleBuilder;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.plan.With;
import org.loomwright.planner.ways.LeadDraft;

/** Faults planted in networks fail checks by name. */
class PlantedNetworksTest {
  @Test
  void aSoundKitHasNoFailingCheck() {
    Plan plan = Planner.plan(order(Bits.supply("30", 10), SmallCar.car(1)));
    assertThat(plan.releasable()).isTrue();
    for (String id : List.of("network/findings", "network/unsolved", "network/check")) {
      Check check = check(plan.checks(), id);
      assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
      assertThat(check.figure()).isZero();
      assertThat(check.source()).startsWith("Kirchhoff's laws in ");
    }
  }

  /** 110 W over half an ohm: 11.8² / (4 · 0.5) = 70 W is the most that gets through. */
  @Test
  void aPowerThatTheLineCannotBringIsUnsolved() {
    Need greedy =
        With.changed(
            With.changed(Bits.supply("30", 10), "draws", Optional.of(LoadForm.POWER)),
            "minimumVoltage",
            Optional.of(Voltage.of("11 V")));
    Plan plan = Planner.plan(order(greedy, car("450 mΩ")));
    Check check = check(plan.checks(), "network/unsolved");
    assertThat(check.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check.figure()).isPositive();
    assertThat(check.source()).contains("load pin 1 (e/p/1)");
    assertThat(check.cases()).isNotEmpty();
    assertThat(plan.releasable()).isFalse();
  }

  @Test
  void aBodyOfHighResistanceFailsTheGroundDrop() {
    Plan plan = Planner.plan(order(Bits.supply("30", 10), car("130 mΩ")));
    Check check = check(plan.checks(), "drop/e/p/2");
    // 10 A over 130 mΩ are more than 10 % of 12 V already.
    assertThat(check.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check.figure()).isBetween(1.3, 1.5);
    assertThat(check.limit()).isCloseTo(1.2, within(1e-9));
    assertThat(check.name()).isEqualTo("voltage drop on the ground");
    assertThat(check.trace().stream().map(it -> it.what()).toList())
        .contains("G4, body from stud g1");
    assertThat(check(plan.checks(), "drop/e/p/1").verdict()).isEqualTo(Verdict.HOLDS);
    assertThat(plan.releasable()).isFalse();
  }

  /** No lead goes on a sensor's stud, but a factory ground wire that is there already may. */
  @Test
  void aSensorGroundThatAnotherLoadLiftsIsFound() {
    VehicleBuilder car =
        car("1 mΩ")
            .add(
                With.changed(
                    Bits.stud("g2", 1, 12, 200, true),
                    "resistance",
                    Optional.of(Resistance.of("8 mΩ"))))
            .add(
                Bits.circuit(
                    "v",
                    CircuitKind.GROUND,
                    Optional.of("31"),
                    "ground g2",
                    "cavity k 2",
                    Condition.always()));
    Plan lifted = Planner.plan(order(Bits.supply("30", 10), car));
    Check check = check(lifted.checks(), "network/findings");
    assertThat(check.verdict()).isEqualTo(Verdict.FAILS);
    // 10 A over 8 mΩ.
    assertThat(check.source())
        .isEqualTo("sensor ground stud g2 lies 0.0800 V from battery negative, more than 0.0500 V");
    assertThat(lifted.releasable()).isFalse();
    Plan little = Planner.plan(order(Bits.supply("30", 5), car));
    assertThat(check(little.checks(), "network/findings").verdict()).isEqualTo(Verdict.HOLDS);
  }

  @Test
  void aPinFedFromTwoSlotsIsFound() {
    SolvedKit kit = twoSlots(10);
    JointCase joined = joined(kit, Map.of());
    assertThat(findings(kit, joined))
        .anySatisfy(
            it ->
                assertThat(it)
                    .startsWith("the net of node ")
                    .contains("pin e/p/1")
                    .contains("fuse in slot f1 of b")
                    .contains(" and by fuse in slot f2 of b"));
    Check check = check(checks(kit, joined), "network/findings");
    assertThat(check.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check.source()).contains("is fed by");
    assertThat(check.cases()).isEqualTo(joined.cases());
  }

  /** What others draw pulls one bus bar below the other; 1 A at the pin is less than flows over. */
  @Test
  void aFuseThatCurrentFlowsBackThroughIsFound() {
    SolvedKit kit = twoSlots(1);
    String own = slot(kit);
    JointCase joined = joined(kit, Map.of("section b " + (own.equals("f1") ? "t" : "s"), 50.0));
    String other = own.equals("f1") ? "f2" : "f1";
    assertThat(findings(kit, joined))
        .anySatisfy(
            it ->
                assertThat(it)
                    .matches("\\d+\\.\\d{3} A flow backwards through fuse .*")
                    .endsWith("fuse in slot " + other + " of b"));
    assertThat(check(checks(kit, joined), "network/findings").source())
        .contains("flow backwards through fuse");
  }

  /** One slot in each of two sections of the same supply. */
  private static SolvedKit twoSlots(double currentA) {
    VehicleBuilder car =
        new VehicleBuilder()
            .add(Bits.connector("k", "rear", Optional.empty()))
            .add(
                Bits.block(
                    "b",
                    List.of(
                        Bits.section("s", "30", Condition.always(), 100, 10),
                        Bits.section("t", "30", Condition.always(), 100, 10)),
                    List.of(
                        Bits.slot("f1", "s", Condition.always()),
                        Bits.slot("f2", "t", Condition.always()))))
            .add(Bits.stud("g1", 1, 12, 200, false));
    return SolvedKit.of(order(Bits.supply("30", currentA), car));
  }

  private static String slot(SolvedKit kit) {
    return kit.chosen().leads().stream()
        .map(it -> it.strand().key())
        .filter(it -> it.startsWith("slot b "))
        .map(it -> it.split(" ", -1)[2])
        .findFirst()
        .orElseThrow();
  }

  /** A second lead from the other slot to the same pin. */
  private static JointCase joined(SolvedKit kit, Map<String, Double> others) {
    JointCase sound = kit.cases().get(0).joint();
    String other = slot(kit).equals("f1") ? "f2" : "f1";
    Touch.AtSlot at = new Touch.AtSlot("b", other, "front");
    PlacedLead first =
        sound.leads().stream()
            .filter(it -> it.draft().kind() == CircuitKind.SUPPLY)
            .findFirst()
            .orElseThrow();
    PlacedLead second =
        With.changed(
            With.changed(first, "name", "second"),
            "draft",
            new LeadDraft(CircuitKind.SUPPLY, at, first.draft().b()));
    List<PlacedLead> leads = new ArrayList<>(sound.leads());
    leads.add(second);
    Map<String, FittedFuse> fuses = new LinkedHashMap<>(sound.fuses());
    fuses.put(at.key(), new FittedFuse(15, new Ohms(0.01, "invented")));
    return new JointCase(sound.cases(), sound.ways(), leads, fuses, others);
  }

  private static List<String> findings(SolvedKit kit, JointCase joint) {
    CaseFigures figures = new CaseSolver(kit.order()).solve(joint);
    assertThat(figures.unsolved()).isEmpty();
    assertThat(figures.faults()).isEmpty();
    return figures.findings();
  }

  /** Checks of the kit with one joint case exchanged for another. */
  private static List<Check> checks(SolvedKit kit, JointCase joint) {
    Evaluation sound = kit.chosen().evaluation();
    List<Evaluation.Solved> cases = new ArrayList<>(sound.cases());
    cases.set(
        0,
        new Evaluation.Solved(
            cases.get(0).tuple(), joint, new CaseSolver(kit.order()).solve(joint)));
    Checklist list = new Checklist(kit.order().rules().marginalBand().value().fraction());
    new NetworkChecks(
            kit.order(), new Evaluation(sound.wires(), cases, sound.currents(), sound.heat()), list)
        .check(true);
    return list.checks();
  }

  private static KitOrder order(Need supply, VehicleBuilder car) {
    return SmallCar.order(car, SmallCar.plug(supply, supply.continuous().amperes()));
  }

  private static VehicleBuilder car(String bodyOhm) {
    return SmallCar.car(
        1,
        With.changed(
            Bits.stud("g1", 1, 12, 200, false), "resistance", Optional.of(Resistance.of(bodyOhm))));
  }

  private static Check check(List<Check> checks, String id) {
    return checks.stream()
        .filter(it -> it.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    "no check " + id + " in " + checks.stream().map(Check::id).toList()));
  }
}
