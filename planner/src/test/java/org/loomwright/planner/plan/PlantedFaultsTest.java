package org.loomwright.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.design.WayLine;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.proof.ProofMaker;
import tools.jackson.databind.node.ObjectNode;

/** Faults planted in the demo are found and told in words, with the builds they concern. */
class PlantedFaultsTest {
  private static final String F7 = "land/L1a/rear-block/F7";
  private static final String CONFIRM_F7 = "confirm/L1a/rear-block/F7";

  private final KitOrder order = Demo.order(Demo.COMFORT);
  private final Plan plan = Demo.plan(Demo.COMFORT);
  private final Set<Map<String, String>> all = AllBuilds.of(order.vehicle());

  @Test
  void withoutTheOtherSlotSomeBuildsAreLeftUnserved() {
    KitOrder without =
        Demo.copy()
            .item(
                Demo.VAN,
                "fuseBlocks",
                "seat-block",
                block -> Demo.remove(block.path("slots"), "id", List.of("S5")))
            .kit(Demo.COMFORT);
    Plan found = Planner.plan(without);
    Predicate<Map<String, String>> noSlot =
        build ->
            "no".equals(build.get("rear-feed"))
                || "yes".equals(build.get("tow-prep"))
                    && "no".equals(build.get("rear-block/F8/metal"));
    assertThat(found.unserved()).isNotEmpty();
    for (Map<String, String> build : all) {
      assertThat(found.unserved().stream().anyMatch(it -> it.when().holds(build)))
          .as("unserved: %s", build)
          .isEqualTo(noSlot.test(build));
    }
    assertThat(found.unserved().stream().map(Unserved::words).toList().toString())
        .contains("with section B of the rear fuse block dead")
        .contains("prepared for towing and slot F8 of the rear fuse block has no metal");
    assertThat(found.unserved())
        .allSatisfy(
            it -> {
              assertThat(it.needs()).contains("heater/main/1");
              assertThat(it.builds()).isEqualTo(count(it.when()::holds));
              assertThat(it.reason()).contains("heater and blower supply").contains("slot");
            });
    assertThat(found.proof().proven()).isFalse();
    assertThat(found.releasable()).isFalse();
    // One value tells of builds that nothing serves; no smaller set of values does.
    Counterexample cover = counterexample(found.proof(), "cover");
    assertThat(cover.traits()).isEqualTo(Map.of("rear-feed", "no"));
    assertThat(cover.words()).isEqualTo("with section B of the rear fuse block dead");
    assertThat(cover.builds()).isEqualTo(count(build -> "no".equals(build.get("rear-feed"))));
    assertThat(cover.what()).contains(count(noSlot) + " of 200 possible builds are left unserved");
    assertThat(found.proof().builds()).isEqualTo(count(noSlot.negate()));
  }

  @Test
  void aTerminalThatStaysInIsNamedWhenItComesBeforeItsQuestion() {
    Guide moved = GuideEdits.moved(plan.guide(), List.of(F7, CONFIRM_F7), "ask/rear-feed");
    Proof proof = prove(moved);
    assertThat(proof.proven()).isFalse();
    Counterexample found = counterexample(proof, "landed-right");
    assertThat(found.step()).contains(F7);
    assertThat(found.traits()).isNotEmpty();
    assertThat(found.words()).isNotBlank();
  }

  @Test
  void anEdgeThatRestsOnAQuestionNotYetAskedIsNamed() {
    Guide moved = GuideEdits.moved(plan.guide(), List.of(F7, CONFIRM_F7), "ask/rear-feed");
    // Only builds with a fed section go there, as if somebody knew before measuring.
    Edge to = moved.edges().stream().filter(it -> it.to().equals(F7)).findFirst().orElseThrow();
    Guide branch = GuideEdits.withEdge(moved, to, Condition.is("rear-feed", "yes"));
    Counterexample found = counterexample(prove(branch), "decided");
    assertThat(found.step()).contains(to.from());
    assertThat(found.what()).contains("feed of section B").contains("was not asked");
  }

  @Test
  void aHeavierHeaterFailsACheckThatIsNamedWithItsFigure() {
    KitOrder heavier =
        Demo.copy()
            .edit(
                Demo.HEATER,
                heater -> {
                  ObjectNode plug = Demo.find(heater.path("plugs"), "id", "main");
                  for (String pin : List.of("1", "2")) {
                    ((ObjectNode) Demo.find(plug.path("pins"), "cavity", pin).path("need"))
                        .put("continuous", "19 A");
                  }
                })
            .kit(Demo.COMFORT);
    Plan found = Planner.plan(heavier);
    assertThat(found.worst()).isEqualTo(Verdict.FAILS);
    List<Check> failing =
        found.checks().stream().filter(it -> it.verdict() == Verdict.FAILS).toList();
    // 19 A through the 25 A fuse that the heater allows at most is 76 %. Warm as the rear block is,
    // less is allowed than the shop's 70 %: 75 % of what is left of the rating at 50 °C.
    assertThat(failing)
        .anySatisfy(
            it -> {
              assertThat(it.name()).isEqualTo("loading");
              assertThat(it.figure()).isCloseTo(0.76, within(1e-9));
              assertThat(it.limit()).isCloseTo(0.75 * (1 - 0.25 * 30 / 65), within(1e-9));
              assertThat(it.source()).contains("any fuse, re-rated to the ambient");
              assertThat(it.margin()).isNegative();
              assertThat(it.subject()).startsWith("lead L");
            });
    assertThat(found.releasable()).isFalse();
    assertThat(found.proof().proven()).isFalse();
    assertThat(counterexample(found.proof(), "limits").what()).containsAnyOf("0.76", "76", "19 A");
  }

  @Test
  void twoPlugsOnOneConnectorWantTheSameCavities() {
    Equipment heater =
        order.equipment().stream().filter(it -> it.id().equals("heater")).findFirst().orElseThrow();
    KitOrder twice =
        new KitOrder(
            With.changed(
                order.kit(),
                "mounts",
                List.of(
                    new Mount("heater", "main", Optional.of("floor"), Optional.empty()),
                    new Mount("second", "main", Optional.of("floor"), Optional.empty()))),
            order.vehicle(),
            List.of(heater, With.changed(heater, "id", "second")),
            order.parts(),
            order.rules());
    Plan found = Planner.plan(twice);
    assertThat(found.unserved()).isNotEmpty();
    assertThat(found.unserved())
        .anySatisfy(
            it -> {
              assertThat(it.reason()).contains("two leads want").contains("cavity floor 1");
              assertThat(it.needs()).containsExactlyInAnyOrder("heater/main/1", "second/main/1");
              assertThat(it.builds()).isEqualTo(BigInteger.valueOf(200));
            });
    assertThat(found.releasable()).isFalse();
  }

  @Test
  void aFullGroundStudIsNotUsed() {
    Plan found = Planner.plan(fullStuds(List.of("cross-ground")));
    assertThat(found.design().leads())
        .allSatisfy(
            lead -> assertThat(lead.b().uses().toString()).doesNotContain("ground=cross-ground"));
    assertThat(found.unserved()).isEmpty();
    // The next stud is a metre farther: even the thickest wire drops 1 mV more than allowed, and
    // both the checks and the proof say so.
    assertThat(found.checks())
        .filteredOn(it -> it.verdict() == Verdict.FAILS)
        .extracting(Check::id)
        .containsExactly("drop/heater/main/2");
    assertThat(found.proof().obligations())
        .filteredOn(it -> !it.shown())
        .extracting(Obligation::id)
        .containsExactly("limits");
    assertThat(found.ways())
        .filteredOn(it -> it.uses().toString().contains("cross-ground") && !it.cases().isEmpty())
        .isEmpty();
  }

  @Test
  void withoutAnyFreeLugTheReasonNamesTheStuds() {
    Plan found = Planner.plan(fullStuds(List.of("cross-ground", "quarter-ground", "rear-ground")));
    assertThat(found.unserved())
        .anySatisfy(
            it -> {
              assertThat(it.needs()).containsExactly("heater/main/2");
              assertThat(it.builds())
                  .isEqualTo(count(build -> "no".equals(build.get("floor-ground"))));
              assertThat(it.words()).isEqualTo("without a ground wire at the floor connector");
              assertThat(it.reason()).contains("cross member").contains("lug");
            });
    assertThat(found.releasable()).isFalse();
  }

  @Test
  void everyForkOfTheGuideMatters() {
    int forks = 0;
    for (Edge edge : plan.guide().edges()) {
      if (edge.when().equals(Condition.always())) {
        continue;
      }
      forks++;
      assertThat(prove(GuideEdits.withEdge(plan.guide(), edge, Condition.never())).proven())
          .as("without the way from %s to %s", edge.from(), edge.to())
          .isFalse();
      assertThat(prove(GuideEdits.withEdge(plan.guide(), edge, edge.when().negate())).proven())
          .as("with the way from %s to %s turned round", edge.from(), edge.to())
          .isFalse();
    }
    assertThat(forks).isGreaterThan(20);
  }

  @Test
  void aLargerFuseFailsTheProof() {
    List<FuseFit> fuses =
        plan.design().fuses().stream()
            .map(it -> it.slot().equals("F7") ? With.changed(it, "ratingA", 30.0) : it)
            .toList();
    List<Lead> leads =
        plan.design().leads().stream()
            .map(it -> it.id().equals("L1") ? With.changed(it, "fuseA", 30.0) : it)
            .toList();
    Design larger = With.changed(With.changed(plan.design(), "fuses", fuses), "leads", leads);
    Step fit = plan.guide().step("fuse/rear-block/F7").orElseThrow();
    Guide guide =
        GuideEdits.withStep(
            plan.guide(),
            With.changed(fit, "act", Optional.of(new Act.FitFuse("rear-block", "F7", 30))));
    Proof proof = ProofMaker.prove(order, plan.cases(), larger, guide);
    assertThat(proof.proven()).isFalse();
    assertThat(counterexample(proof, "limits").what()).contains("30 A").contains("25 A");
    // The guide alone, with the design as it was.
    assertThat(prove(guide).proven()).isFalse();
  }

  @Test
  void anEndThatNobodyParksIsFound() {
    int parked = 0;
    for (Step step : plan.guide().steps()) {
      if (step.act().orElse(null) instanceof Act.Park park) {
        parked++;
        Counterexample found =
            counterexample(prove(GuideEdits.without(plan.guide(), step.id())), "complete");
        assertThat(found.what()).contains("end " + park.end() + " of lead " + park.lead());
        assertThat(found.builds()).isPositive();
      }
    }
    assertThat(parked).isGreaterThanOrEqualTo(3);
    Counterexample ground =
        counterexample(prove(GuideEdits.without(plan.guide(), "park/L3a/B2")), "complete");
    assertThat(ground.words()).isEqualTo("with a ground wire at the floor connector");
  }

  @Test
  void aRunAlongRestraintWiringIsNotUsed() {
    Plan found = Planner.plan(restraint(List.of("quarter-to-floor")));
    Lead feed =
        found.design().leads().stream()
            .filter(
                it -> it.needs().contains("heater/main/1") && it.a().place().equals("rear-quarter"))
            .findFirst()
            .orElseThrow();
    assertThat(feed.runs()).containsExactly("pillar-to-quarter", "pillar-to-floor");
    assertThat(feed.pathMm()).isEqualTo(1900 + 1250);
    assertThat(found.proof().proven()).isTrue();
    assertThat(found.design().leads())
        .allSatisfy(it -> assertThat(it.runs()).doesNotContain("quarter-to-floor"));
  }

  @Test
  void withoutAnAllowedRunTheWayIsForbiddenForThatReason() {
    Plan found = Planner.plan(restraint(List.of("quarter-to-floor", "pillar-to-floor")));
    assertThat(found.ways())
        .filteredOn(it -> it.need().equals("heater/main/1") && it.id().contains("slot"))
        .isNotEmpty()
        .allSatisfy(
            it ->
                assertThat(it.forbidden())
                    .hasValueSatisfying(
                        why -> assertThat(why).contains("no allowed run leads from")));
    assertThat(found.unserved())
        .anySatisfy(
            it -> {
              assertThat(it.needs()).contains("heater/main/1");
              assertThat(it.builds()).isEqualTo(BigInteger.valueOf(200));
            });
    assertThat(found.ways().stream().filter(it -> it.id().contains("S5")).map(WayLine::cases))
        .allMatch(List::isEmpty);
  }

  private KitOrder fullStuds(List<String> studs) {
    Demo demo = Demo.copy();
    for (String stud : studs) {
      demo.item(Demo.VAN, "grounds", stud, it -> it.put("lugs", it.path("lugsMost").intValue()));
    }
    return demo.kit(Demo.COMFORT);
  }

  private KitOrder restraint(List<String> runs) {
    Demo demo = Demo.copy();
    for (String run : runs) {
      demo.item(Demo.VAN, "runs", run, it -> it.put("restraint", true));
    }
    return demo.kit(Demo.COMFORT);
  }

  private Proof prove(Guide guide) {
    return ProofMaker.prove(order, plan.cases(), plan.design(), guide);
  }

  private BigInteger count(Predicate<Map<String, String>> which) {
    return BigInteger.valueOf(all.stream().filter(which).count());
  }

  private static Counterexample counterexample(Proof proof, String obligation) {
    assertThat(proof.obligations()).anyMatch(it -> it.id().equals(obligation) && !it.shown());
    return proof.counterexamples().stream()
        .filter(it -> it.obligation().equals(obligation))
        .findFirst()
        .orElseThrow();
  }
}
