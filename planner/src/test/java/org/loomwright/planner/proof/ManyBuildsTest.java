package org.loomwright.planner.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Undo;

/**
 * Sets of builds stay small where lists would not: 20 branches over 40 traits, about 2^40 builds.
 */
class ManyBuildsTest {
  private static final int LEADS = 20;

  private final Shop shop = new Shop();

  ManyBuildsTest() {
    shop.traits = new ArrayList<>();
    for (int i = 0; i < 2 * LEADS; i++) {
      TellHow how = i % 2 == 0 ? TellHow.LOOK : TellHow.MEASURE_ISOLATED;
      shop.traits.add(
          Docs.trait("t" + i, how, List.of(), "a", "t" + i + " is a", "b", "t" + i + " is b"));
    }
    shop.rules =
        new ArrayList<>(
            List.of(new Exclusion(Condition.of("t0 = b and t39 = b"), "never", Optional.empty())));
    shop.circuits = new ArrayList<>();
    shop.slots = new ArrayList<>();
    for (int i = 0; i < LEADS; i++) {
      shop.slots.add(Docs.slot("F" + i, "A", "t" + i + " = a and t" + (i + LEADS) + " = a"));
    }
  }

  private Guide guide() {
    Script script = new Script().then(Script.caution("caution/general", "Read."));
    for (int i = 0; i < LEADS; i++) {
      String first = "t" + i + " = a";
      String both = first + " and t" + (i + LEADS) + " = a";
      int lead = i;
      script
          .then(Script.ask(shop.traits.get(i)))
          .branch(
              List.of(first, "not " + first),
              List.of(
                  s -> s.then(Script.ask(shop.traits.get(lead + LEADS))),
                  s -> s.then(Script.caution("no-ask" + lead, "Not so."))))
          .then(Script.caution("meet" + i, "Go on."))
          .branch(
              List.of(both, "not (" + both + ")"),
              List.of(s -> s.then(land(lead)), s -> s.then(Script.caution("skip" + lead, "No."))));
    }
    return script.then(Script.caution("end", "Done.")).guide();
  }

  private static Step land(int lead) {
    return Script.act(
        "land/L" + lead,
        new Act.Land("L" + lead, "a", new Landing.InSlot("rear", "F" + lead, "T-blade")),
        Undo.NOT_AT_ALL);
  }

  private Proof prove(Guide guide) {
    Design design =
        new Design(
            RandomKit.leads(LEADS, i -> new Landing.InSlot("rear", "F" + i, "T-blade")),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return ProofMaker.prove(
        shop.order(), List.of(Shop.oneCase("A1", "A", "all", "always")), design, guide);
  }

  @Test
  void provesBranchesOverMoreBuildsThanCanBeListed() {
    Proof proof = prove(guide());
    assertThat(ProofMakerTest.failed(proof))
        .doesNotContain("cover", "decided", "landed-right", "nothing-twice");
    // 2^40 less the quarter that the rule takes out.
    assertThat(proof.builds()).isEqualTo(BigInteger.TWO.pow(40).subtract(BigInteger.TWO.pow(38)));
  }

  @Test
  void findsTheOneBranchThatForgetsAnAnswer() {
    Guide guide = Script.withEdge(guide(), "meet7", "land/L7", "t7 = a");
    guide = Script.withEdge(guide, "meet7", "skip7", "t7 = b");
    Counterexample found = ProofMakerTest.counterexample(prove(guide), "landed-right");
    assertThat(found.traits()).containsOnlyKeys("t7", "t27");
    assertThat(found.words()).isEqualTo("t7 is a and t27 is b");
    assertThat(found.step()).contains("land/L7");
    assertThat(found.builds()).isEqualTo(BigInteger.TWO.pow(38).subtract(BigInteger.TWO.pow(36)));
  }

  @Test
  void findsThatAFarAnswerIsMissing() {
    Guide guide = Script.withEdge(guide(), "meet9", "land/L9", "t9 = a and t29 = a and t31 = a");
    guide = Script.withEdge(guide, "meet9", "skip9", "not (t9 = a and t29 = a and t31 = a)");
    Counterexample found = ProofMakerTest.counterexample(prove(guide), "decided");
    assertThat(found.traits()).containsOnlyKeys("t9", "t29");
    assertThat(found.what()).contains("'t31 of it'");
  }
}
