package org.loomwright.planner.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Step;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Undo;

/** A good kit is proven; each planted fault fails the right obligation with a counterexample. */
class ProofMakerTest {
  private final Shop shop = new Shop();

  @Test
  void provesAGoodKitOnAllBuilds() {
    Proof proof = shop.prove();
    assertThat(failed(proof)).isEmpty();
    assertThat(proof.proven()).isTrue();
    // 3 bodies x 2 x 2 x 2, less the short ones prepared for towing.
    assertThat(proof.builds()).isEqualTo(BigInteger.valueOf(20));
    assertThat(proof.obligations()).hasSize(9).allMatch(Obligation::shown);
    assertThat(proof.leaves()).hasSize(1);
    assertThat(proof.leaves().get(0).cases()).containsExactly("A1", "A2", "B1", "B2");
    assertThat(detail(proof, "limits")).contains("nearest to its limit");
  }

  @Test
  void namesBuildsLeftUnserved() {
    Guide guide = Script.withEdge(shop.guide(), "land/L1/b", "land/L1/a/F2", "tow = yes");
    Counterexample found = only(shop.prove(guide), "cover", "decided");
    assertThat(found.traits()).containsOnlyKeys("rear-feed", "tow");
    assertThat(found.words()).isEqualTo("rear section B dead and not prepared for towing");
    assertThat(found.builds()).isEqualTo(BigInteger.valueOf(6));
    assertThat(found.step()).contains("land/L1/b");
    assertThat(found.what()).startsWith("6 of 20 possible builds are left unserved");
  }

  @Test
  void failsWhenTheAlternativeSlotIsNotThere() {
    shop.slots.remove(1);
    Proof proof = shop.prove();
    Counterexample found = counterexample(proof, "landed-right");
    assertThat(found.what()).contains("no slot rear F2");
    assertThat(found.step()).contains("land/L1/a/F2");
    // The kit planned for such a van has no way there and no case.
    Guide guide = Script.withEdge(shop.guide(), "land/L1/b", "land/L1/a/F2", "never");
    Proof planned =
        ProofMaker.prove(
            shop.order(),
            List.of(shop.cases().get(0), shop.cases().get(2), shop.cases().get(3)),
            shop.design(),
            guide);
    Counterexample unserved = counterexample(planned, "cover");
    assertThat(unserved.words()).isIn("rear section B dead", "prepared for towing");
    assertThat(unserved.traits()).hasSize(1);
  }

  @Test
  void namesAnIrreversibleStepBeforeItsQuestion() {
    Guide guide = Script.moved(shop.guide(), "ask/tow", "plug-in");
    Proof proof = shop.prove(guide);
    Counterexample landed = counterexample(proof, "decided");
    assertThat(landed.step()).contains("land/L1/b");
    assertThat(landed.what()).contains("'tow of it'");
    Guide moved = Script.moved(shop.guide(), "land/L1/a/F1", "ask/rear-feed");
    Counterexample found = counterexample(shop.prove(moved), "landed-right");
    assertThat(found.step()).contains("land/L1/a/F1");
    assertThat(found.traits()).hasSize(1);
    assertThat(found.what()).contains("was not asked before");
  }

  @Test
  void wantsAReadingBeforeWhatCannotBeUndone() {
    Guide guide =
        Script.replaced(
            shop.guide(), "ask/rear-feed", Script.ask(shop.rearFeed, TellHow.ASK_OWNER));
    Counterexample found = only(shop.prove(guide), "landed-right");
    assertThat(found.step()).contains("land/L1/a/F1");
    assertThat(found.what()).contains("rear-feed").contains("nobody measured");
  }

  @Test
  void doesNotTrustAStepThatSaysItCanBeUndone() {
    Guide guide =
        Script.replaced(
            shop.guide(),
            "land/L1/a/F1",
            Script.act("land/L1/a/F1", new Act.Land("L1", "a", Shop.F1), Undo.EASILY));
    assertThat(only(shop.prove(guide), "landed-right").what()).contains("easier to take back");
  }

  @Test
  void doesNotTrustACutThatSaysItCanBeUndone() {
    Step land = shop.guide().step("land/L1/b").orElseThrow();
    Landing ground = ((Act.Land) land.act().orElseThrow()).landing();
    Guide guide =
        Script.replaced(
            shop.guide(),
            "land/L1/b",
            Script.act("land/L1/b", new Act.Change("L1", "b", ground), Undo.EASILY));
    assertThat(shop.prove(guide).counterexamples())
        .anyMatch(it -> it.what().contains("easier to take back"));
  }

  @Test
  void findsAMissingQuestion() {
    Counterexample found =
        only(
            shop.prove(Script.without(shop.guide(), "ask/floor-ground")),
            "decided",
            "landed-right");
    assertThat(found.what()).contains("'floor-ground of it' was not asked before");
    assertThat(found.step()).contains("open/trim");
  }

  @Test
  void findsAWrongBranch() {
    Guide guide = Script.withEdge(shop.guide(), "land/L1/b", "land/L1/a/F1", "rear-feed = yes");
    guide = Script.withEdge(guide, "land/L1/b", "land/L1/a/F2", "rear-feed = no");
    Counterexample found = counterexample(shop.prove(guide), "landed-right");
    assertThat(found.words()).isEqualTo("rear section B fed and prepared for towing");
    assertThat(found.what()).contains("taken by the tow wire");
    assertThat(found.builds()).isEqualTo(BigInteger.valueOf(4));
  }

  @Test
  void findsTwoLeadsInOneCavity() {
    shop.groundPin = shop.supplyPin;
    Counterexample found = counterexample(shop.prove(), "nothing-twice");
    assertThat(found.step()).contains("land/L1/b");
    assertThat(found.what()).contains("cavity 1").contains("lead L2");
    assertThat(found.words()).isEqualTo("no ground wire at the floor connector");
  }

  @Test
  void findsAnEndThatNobodyParks() {
    Counterexample found = only(shop.prove(Script.without(shop.guide(), "park/L2/b")), "complete");
    assertThat(found.what()).contains("end b of lead L2");
    assertThat(found.words()).isEqualTo("a ground wire at the floor connector");
  }

  @Test
  void findsAParkedEndThatIsLive() {
    Guide guide =
        Script.replaced(
            shop.guide(),
            "land/L1/b",
            Script.act("land/L1/b", new Act.Park("L1", "b", Shop.PARKED)));
    Proof proof = shop.prove(guide);
    Counterexample found = counterexample(proof, "no-back-feed");
    assertThat(found.words()).isEqualTo("every possible build");
    assertThat(found.what()).contains("parked end b of lead L1 is live from slot F");
    assertThat(failed(proof)).contains("needs-met");
  }

  @Test
  void findsTwoFeedsOnOneNet() {
    shop.circuits.add(
        Docs.circuit(
            "old", CircuitKind.SUPPLY, "30", "unit body", "cavity floor 1", "body = long"));
    Proof proof = shop.prove();
    Counterexample found = counterexample(proof, "no-back-feed");
    assertThat(found.words()).isEqualTo("long");
    assertThat(found.what()).contains("ties 2 feeds together");
    assertThat(counterexample(proof, "landed-right").what()).contains("wired already");
  }

  @Test
  void findsAnOverloadedFuse() {
    shop.supply = Docs.need(NeedKind.SUPPLY, "30", "16 A");
    shop.lengthMm = 1000;
    Counterexample found = only(shop.prove(), "limits");
    // 75 % at 23 °C, times 1 - 0.25 * 20 / 65 at 40 °C.
    assertThat(found.what()).contains("16 A of 13.846 A").contains("20 A fuse");
    assertThat(found.words()).isEqualTo("every possible build");
  }

  @Test
  void findsAWireTooThinForItsFuse() {
    shop.supplyWire = "W1";
    shop.lengthMm = 500;
    assertThat(only(shop.prove(), "limits").what()).contains("lead L1");
  }

  @Test
  void findsAVoltageDropAboveItsLimit() {
    shop.lengthMm = 2200;
    Counterexample found = only(shop.prove(), "limits");
    assertThat(found.what()).contains(" V of 0.24 V on the ground").contains("over lead L2");
    assertThat(found.words()).isEqualTo("no ground wire at the floor connector");
  }

  @Test
  void findsAnOverloadedSection() {
    shop.sectionLimit = "21 A";
    Counterexample found = only(shop.prove(), "nothing-twice");
    assertThat(found.what()).contains("carries 22 A").contains("21 A");
  }

  @Test
  void findsAFuseLargerThanItsSlot() {
    shop.fuseA = 35;
    assertThat(counterexample(shop.prove(), "landed-right").what()).contains("30 A");
  }

  @Test
  void findsAFeedOfAnotherKind() {
    shop.supply = Docs.need(NeedKind.SUPPLY, "15", "12 A");
    assertThat(only(shop.prove(), "needs-met").what()).contains("needs feed 15 and gets 30");
  }

  @Test
  void findsAForgottenFuse() {
    Proof proof = shop.prove(Script.without(shop.guide(), "fuse/F1"));
    assertThat(counterexample(proof, "complete").what()).contains("slot F1");
    assertThat(counterexample(proof, "no-back-feed").what()).contains("without a known fuse");
  }

  @Test
  void findsAPlugLeftOut() {
    assertThat(only(shop.prove(Script.without(shop.guide(), "plug-in")), "complete").what())
        .isEqualTo("no step plugs in 'heater/main'");
  }

  @Test
  void findsASensorGround() {
    shop.sensorStud = true;
    assertThat(counterexample(shop.prove(), "landed-right").what()).contains("sensors");
  }

  @Test
  void findsASealPlugThatIsStillIn() {
    shop.cavities.add(
        new CavityFact(
            "1",
            Optional.of(Condition.of("body = mid")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
    Counterexample found = only(shop.prove(), "landed-right");
    assertThat(found.words()).isEqualTo("mid");
    assertThat(found.what()).contains("seal plug");
  }

  @Test
  void findsAnOpeningLeftOpen() {
    Counterexample found = only(shop.prove(Script.without(shop.guide(), "close/trim")), "order");
    assertThat(found.what()).isEqualTo("the floor trim is left open");
  }

  @Test
  void findsWiringTouchedLive() {
    Proof proof = shop.prove(Script.moved(shop.guide(), "isolate", "plug-in"));
    assertThat(only(proof, "order").what()).contains("touched while it is live");
  }

  @Test
  void findsALiveReadingOnADeadVehicle() {
    Proof proof = shop.prove(Script.moved(shop.guide(), "ask/rear-feed", "land/L1/b"));
    Counterexample found = only(proof, "order");
    assertThat(found.step()).contains("ask/rear-feed");
    assertThat(found.what()).contains("needs power");
  }

  @Test
  void findsACautionThatComesTooLate() {
    Proof proof = shop.prove(Script.moved(shop.guide(), "caution/restraint", "close/trim"));
    Counterexample found = only(proof, "complete");
    assertThat(found.step()).contains("open/trim");
  }

  @Test
  void saysWhyAGuideThatGoesInCirclesShowsNothing() {
    Guide guide = shop.guide();
    List<Edge> edges = new ArrayList<>(guide.edges());
    edges.add(new Edge("plug-in", "isolate", Condition.of("never"), ""));
    Proof proof =
        shop.prove(
            new Guide(guide.start(), guide.steps(), edges, guide.ends(), guide.tools(), 1, 0));
    assertThat(proof.proven()).isFalse();
    assertThat(proof.obligations()).hasSize(9).noneMatch(Obligation::shown);
    assertThat(detail(proof, "cover")).contains("goes in a circle");
  }

  @Test
  void provesAnEndInAnUnknownTraitIsNotReadable() {
    Guide guide = Script.withEdge(shop.guide(), "land/L1/b", "land/L1/a/F2", "colour = red");
    Proof proof = shop.prove(guide);
    assertThat(failed(proof)).contains("decided", "cover");
    assertThat(counterexample(proof, "decided").what()).contains("no trait 'colour'");
  }

  @Test
  void landingOutsideTheDesignIsNotComplete() {
    Landing other = new Landing.InCavity("floor", "3", "T-floor", Optional.empty(), false);
    Guide guide =
        Script.replaced(
            shop.guide(), "land/L1/b", Script.act("land/L1/b", new Act.Land("L1", "b", other)));
    assertThat(failed(shop.prove(guide))).containsExactly("needs-met", "complete");
  }

  static List<String> failed(Proof proof) {
    return proof.obligations().stream().filter(it -> !it.shown()).map(Obligation::id).toList();
  }

  static Counterexample counterexample(Proof proof, String obligation) {
    return proof.counterexamples().stream()
        .filter(it -> it.obligation().equals(obligation))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(obligation + " was shown; failed: " + proof.counterexamples()));
  }

  static Counterexample only(Proof proof, String obligation, String... allowed) {
    List<String> all = new ArrayList<>(List.of(allowed));
    all.add(obligation);
    assertThat(all)
        .as(
            proof.counterexamples().stream()
                .map(Counterexample::toString)
                .collect(Collectors.joining("\n")))
        .containsAll(failed(proof));
    return counterexample(proof, obligation);
  }

  private static String detail(Proof proof, String obligation) {
    return proof.obligations().stream()
        .filter(it -> it.id().equals(obligation))
        .findFirst()
        .orElseThrow()
        .detail();
  }
}
