package org.loomwright.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.Tail;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.OwnEnd;
import org.loomwright.model.kit.OwnLead;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.proof.ProofMaker;

/** Leads of the user's own in the demo kit: made, laid, landed, parked, paid for and proven. */
class OwnLeadsTest {
  private static final OwnLead SPARE =
      lead("spare", "loose left-seat-box", "loose rear-quarter", "1 A").colour("violet").get();
  private static final OwnLead SIGNAL =
      lead("signal", "pin heater main 5", "loose rear-bumper", "0.5 A")
          .when("tow-prep = yes")
          .get();
  private static final OwnLead SHIELD =
      lead("shield", "ground quarter-ground", "cavity floor 6", "2 A").size("0.75 mm²").get();
  private static final OwnLead TOW =
      lead("tow", "cavity tow-socket 12", "loose left-seat-box", "2 A")
          .when("tow-prep = yes")
          .get();

  private static final KitOrder ORDER = with(Demo.COMFORT, SPARE, SIGNAL, SHIELD, TOW);
  private static final Plan PLAN = Planner.plan(ORDER);

  private record Draft(OwnLead get) {
    Draft colour(String text) {
      return new Draft(With.changed(get, "colour", Optional.of(Colour.of(text))));
    }

    Draft size(String text) {
      return new Draft(With.changed(get, "size", Optional.of(WireSize.of(text))));
    }

    Draft when(String text) {
      return new Draft(With.changed(get, "when", Optional.of(Condition.of(text))));
    }
  }

  private static Draft lead(String id, String from, String to, String current) {
    return new Draft(
        new OwnLead(
            id,
            "the " + id,
            OwnEnd.of(from),
            OwnEnd.of(to),
            Optional.empty(),
            Optional.empty(),
            Current.of(current),
            Optional.empty(),
            "for the test"));
  }

  private static KitOrder with(String kit, OwnLead... leads) {
    KitOrder order = Demo.order(kit);
    return With.changed(order, "kit", With.changed(order.kit(), "ownLeads", List.of(leads)));
  }

  private static Lead made(Plan plan, OwnLead own) {
    return plan.design().leads().stream()
        .filter(it -> it.own().equals(Optional.of(own.id())))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyFormIsMadeAndProven() {
    assertThat(PLAN.proof().counterexamples()).isEmpty();
    assertThat(PLAN.proof().proven()).isTrue();
    assertThat(PLAN.worst()).isNotEqualTo(Verdict.FAILS);
    assertThat(PLAN.releasable()).isTrue();
    Lead spare = made(PLAN, SPARE);
    assertThat(spare.label()).isEqualTo(spare.id() + " the spare");
    assertThat(spare.colour()).isEqualTo(Colour.of("violet"));
    assertThat(spare.areaMm2()).isEqualTo(0.5);
    assertThat(spare.fuseA()).isZero();
    assertThat(spare.currentA()).isEqualTo(1);
    assertThat(spare.a().asMade()).isEqualTo(new Landing.Parked("left-seat-box", "EC-6"));
    Lead shield = made(PLAN, SHIELD);
    assertThat(shield.areaMm2()).isEqualTo(0.75);
    assertThat(shield.a().asMade()).isEqualTo(new Landing.OnGround("quarter-ground", "RG-M8-1_5"));
    assertThat(shield.b().asMade())
        .isEqualTo(new Landing.InCavity("floor", "6", "OV-28-A", Optional.of("OV-S28"), true));
    assertThat(shield.colour().text()).isIn("brown", "black");
    // Nothing else takes the colour that was asked for while others are left.
    assertThat(PLAN.design().leads())
        .filteredOn(it -> it.colour().equals(Colour.of("violet")))
        .containsExactly(spare);
  }

  @Test
  void theyLieInTheHarness() {
    Lead spare = made(PLAN, SPARE);
    assertThat(spare.runs()).isNotEmpty();
    assertThat(PLAN.harness().bundles())
        .filteredOn(it -> it.leads().contains(spare.id()))
        .extracting(Bundle::run)
        .containsExactlyInAnyOrderElementsOf(spare.runs());
    assertThat(PLAN.harness().tails())
        .filteredOn(it -> it.kind() == Tail.Kind.LOOSE)
        .extracting(Tail::place)
        .containsExactlyInAnyOrder("left-seat-box", "rear-quarter", "rear-bumper");
    double tailsMm =
        PLAN.harness().tails().stream()
            .filter(it -> it.ends().stream().anyMatch(end -> end.lead().equals(spare.id())))
            .mapToDouble(Tail::lengthMm)
            .sum();
    assertThat(spare.lengthMm())
        .isCloseTo(spare.pathMm() + spare.toleranceWorstMm() + tailsMm, within(1e-6));
  }

  @Test
  void theyArePaidFor() {
    Plan without = Demo.plan(Demo.COMFORT);
    Plan one = Planner.plan(with(Demo.COMFORT, SPARE));
    assertThat(one.design().partNumbers()).hasSameSizeAs(without.design().partNumbers());
    Lead spare = made(one, SPARE);
    for (int i = 0; i < one.design().partNumbers().size(); i++) {
      List<PartLine> now = one.design().partNumbers().get(i).parts();
      List<PartLine> before = without.design().partNumbers().get(i).parts();
      assertThat(quantity(now, "EC-6") - quantity(before, "EC-6")).isEqualTo(2);
      assertThat(quantity(now, "LB-W") - quantity(before, "LB-W")).isEqualTo(2);
      assertThat(quantity(now, "W-P-0_5") - quantity(before, "W-P-0_5"))
          .isCloseTo(spare.cutMm() / 1000, within(1e-9));
      assertThat(one.design().partNumbers().get(i).material())
          .isGreaterThan(without.design().partNumbers().get(i).material());
      assertThat(one.design().partNumbers().get(i).benchMinutes())
          .isGreaterThan(without.design().partNumbers().get(i).benchMinutes());
    }
  }

  private static double quantity(List<PartLine> lines, String part) {
    return lines.stream()
        .filter(it -> it.part().equals(part))
        .mapToDouble(PartLine::quantity)
        .sum();
  }

  @Test
  void eachBuildLandsOrParksThemAsTheConditionSays() {
    Set<Map<String, String>> builds = AllBuilds.of(ORDER.vehicle());
    Lead signal = made(PLAN, SIGNAL);
    for (Map<String, String> build : builds) {
      boolean used = "yes".equals(build.get("tow-prep"));
      List<Act> acts =
          Walker.walk(PLAN.guide(), build).stream().flatMap(it -> it.act().stream()).toList();
      assertThat(acts.stream().filter(it -> it instanceof Act.Lay).map(it -> ((Act.Lay) it).lead()))
          .contains(made(PLAN, SPARE).id(), made(PLAN, SHIELD).id());
      assertThat(acts.contains(new Act.Lay(signal.id()))).isEqualTo(used);
      assertThat(acts.contains(new Act.Land(signal.id(), "a", signal.a().asMade())))
          .isEqualTo(used);
    }
  }

  @Test
  void theirConductorsAreChecked() {
    Lead tow = made(PLAN, TOW);
    assertThat(PLAN.checks())
        .extracting(Check::id)
        .contains(
            "conductor carries the load/" + tow.id(),
            "bundle heat/" + tow.id(),
            "terminal/" + tow.id() + "a/tow-socket/12",
            "own/tow/use")
        .doesNotContain("overload heat/" + tow.id(), "drop/" + tow.id());
  }

  @Test
  void aLeadForBuildsThatHaveNoRoomForItIsTold() {
    Plan plan =
        Planner.plan(
            with(
                Demo.COMFORT,
                lead("tow", "cavity tow-socket 12", "loose rear-bumper", "2 A").get()));
    Check check = check(plan, "own/tow/use");
    assertThat(check.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check.figure()).isEqualTo(152);
    assertThat(check.source())
        .contains("not prepared for towing", "the tow socket insert is not there", "'when'");
    assertThat(plan.releasable()).isFalse();
    assertThat(counterexample(plan.proof(), "complete").what()).contains("'tow'");
    // Where it can be landed it is.
    assertThat(made(plan, TOW).a().asMade()).isInstanceOf(Landing.InCavity.class);
  }

  @Test
  void aWireOfTheFactoryInTheCavityIsTold() {
    Plan plan =
        Planner.plan(
            with(
                Demo.COMFORT,
                lead("x", "cavity tow-socket 9", "loose rear-bumper", "2 A")
                    .when("tow-prep = yes")
                    .get()));
    Check check = check(plan, "own/x/use");
    assertThat(check.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check.figure()).isEqualTo(48);
    assertThat(check.source()).contains("cavity 9 of the tow socket insert already holds a wire");
    assertThat(plan.design().leads()).noneMatch(it -> it.own().isPresent());
    assertThat(plan.proof().proven()).isFalse();
  }

  @Test
  void whatNoWireCanCarryIsNotMadeAndTold() {
    Plan plan =
        Planner.plan(
            with(
                Demo.COMFORT,
                lead("hot", "loose left-seat-box", "loose rear-quarter", "300 A").get(),
                lead("thin", "loose left-seat-box", "loose rear-quarter", "15 A")
                    .size("0.5 mm²")
                    .get(),
                lead("ends", "cavity floor 5", "ground cross-ground", "30 A").get()));
    assertThat(check(plan, "own/hot/made").figure()).isEqualTo(300);
    assertThat(check(plan, "own/thin/made").figure()).isEqualTo(15);
    assertThat(check(plan, "own/thin/made").limit()).isBetween(4.0, 15.0);
    assertThat(check(plan, "own/ends/made").source())
        .contains("cavity floor 5 takes none", "ground cross-ground takes");
    assertThat(plan.worst()).isEqualTo(Verdict.FAILS);
    assertThat(plan.proof().proven()).isFalse();
  }

  @Test
  void studsCountThem() {
    OwnLead one = lead("one", "ground cross-ground", "loose left-seat-box", "30 A").get();
    Plan plan = Planner.plan(with(Demo.COMFORT, one));
    // 34 A of room less 30 A leave too little for the heater: it goes elsewhere or fails by name.
    Check room = check(plan, "capacity/stud cross-ground current");
    assertThat(room.figure()).isGreaterThanOrEqualTo(30);
    assertThat(room.limit()).isEqualTo(34);
    assertThat(room.verdict() == Verdict.FAILS).isEqualTo(room.figure() > 34);
  }

  @Test
  void faultsPlantedIntoThePlanAreFound() {
    Lead shield = made(PLAN, SHIELD);
    Lead signal = made(PLAN, SIGNAL);
    Design lost =
        With.changed(
            PLAN.design(),
            "leads",
            PLAN.design().leads().stream()
                .map(it -> it.equals(shield) ? With.changed(it, "own", Optional.empty()) : it)
                .toList());
    assertThat(what(prove(lost, PLAN.guide()), "complete")).contains("'shield'", "is not made");
    assertThat(what(prove(swapped(shield, "colour", Colour.of("white")), PLAN.guide()), "complete"))
        .isEmpty();
    assertThat(
            what(
                prove(swapped(made(PLAN, SPARE), "colour", Colour.of("white")), PLAN.guide()),
                "complete"))
        .contains("size or colour");
    Guide unlaid = GuideEdits.without(PLAN.guide(), "land/" + shield.id() + "b/floor/6");
    assertThat(what(prove(PLAN.design(), unlaid), "complete")).isNotEmpty();
    // Landed in another cavity than the kit says.
    Step land = PLAN.guide().step("land/" + signal.id() + "a/floor/5").orElseThrow();
    Landing other = new Landing.InCavity("floor", "4", "OV-63-A", Optional.empty(), false);
    Guide elsewhere =
        GuideEdits.withStep(
            PLAN.guide(),
            With.changed(land, "act", Optional.of(new Act.Land(signal.id(), "a", other))));
    assertThat(what(prove(PLAN.design(), elsewhere), "complete"))
        .contains("end a of lead " + signal.id());
  }

  @Test
  void aLeadTiedToAFeedIsFound() {
    Lead shield = made(PLAN, SHIELD);
    Landing feed = new Landing.IntoCircuit("door-control", "rear-quarter", "any");
    LeadEnd tied =
        new LeadEnd(
            "rear-quarter", List.of(new EndUse(feed, shield.a().uses().get(0).cases(), true)));
    Step land =
        PLAN.guide().steps().stream()
            .filter(it -> it.id().startsWith("land/" + shield.id() + "a"))
            .findFirst()
            .orElseThrow();
    Guide guide =
        GuideEdits.withStep(
            PLAN.guide(),
            With.changed(land, "act", Optional.of(new Act.Land(shield.id(), "a", feed))));
    assertThat(what(prove(swapped(shield, "a", tied), guide), "no-back-feed"))
        .contains("is the user's own and is tied to a feed");
  }

  private static Design swapped(Lead lead, String component, Object value) {
    return With.changed(
        PLAN.design(),
        "leads",
        PLAN.design().leads().stream()
            .map(it -> it.equals(lead) ? With.changed(it, component, value) : it)
            .toList());
  }

  private static Proof prove(Design design, Guide guide) {
    return ProofMaker.prove(ORDER, PLAN.cases(), design, guide);
  }

  private static Check check(Plan plan, String id) {
    return plan.checks().stream().filter(it -> it.id().equals(id)).findFirst().orElseThrow();
  }

  private static Counterexample counterexample(Proof proof, String obligation) {
    return proof.counterexamples().stream()
        .filter(it -> it.obligation().equals(obligation))
        .findFirst()
        .orElseThrow();
  }

  private static String what(Proof proof, String obligation) {
    return proof.counterexamples().stream()
        .filter(it -> it.obligation().equals(obligation))
        .map(Counterexample::what)
        .findFirst()
        .orElse("");
  }
}
