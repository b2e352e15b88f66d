package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.Sourced;
import org.loomwright.planner.guide.EasyCar;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.With;
import org.loomwright.planner.sizing.WireNeed;
import org.loomwright.planner.sizing.WireSizer;

/**
 * Wires of the demo kits, and of random ones, as the least ones that pass, in any order of leads.
 */
class SizingTest {
  /**
   * Every lead, every thinner wire: fuse, ends or minimum rule it out, or some figure of the whole
   * kit gets a worse verdict.
   */
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void noLeadCouldBeThinner(String kit) {
    SolvedKit solved = SolvedKit.of(Demo.order(kit));
    Tried tried = Tried.of(solved);
    assertThat(tried.reached().verdicts()).doesNotContain(Verdict.FAILS);
    assertThat(tried.unsound()).isEmpty();
    assertThat(tried.thinner()).isEmpty();
    assertThat(tried.byItself()).isGreaterThan(10);
    // Some wire must be ruled out by the whole kit alone, or this would test the fuses only.
    assertThat(tried.together()).isGreaterThan(0);
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void theOrderOfLeadsDoesNotMatter(String kit) {
    SolvedKit solved = SolvedKit.of(Demo.order(kit));
    long seed = new Random().nextLong();
    for (int i = 0; i < 4; i++) {
      orderDoesNotMatter(solved, seed + i);
    }
  }

  /** Kits drawn at random, with drops so narrow that the networks decide on wires. */
  @Test
  void theSameHoldsForRandomKits() {
    long seed = new Random().nextLong();
    int kits = 0;
    int together = 0;
    for (int i = 0; kits < 8 || together < 5; i++) {
      assertThat(i).as("kits drawn from seed %s", seed).isLessThan(1000);
      SolvedKit solved = SolvedKit.of(narrow(EasyCar.of(seed + i)));
      if (solved.chosen().leads().size() < 2) {
        continue;
      }
      kits++;
      Tried tried = Tried.of(solved);
      assertThat(tried.thinner()).as("seed %s", seed + i).isEmpty();
      together += tried.together();
      orderDoesNotMatter(solved, seed + i);
    }
  }

  private static KitOrder narrow(KitOrder order) {
    Sourced<Percent> drop = new Sourced<>(Percent.of("2.5 %"), "invented");
    Rules rules = order.rules();
    for (String limit : List.of("feedDrop", "splicedFeedDrop", "groundDrop")) {
      rules = With.changed(rules, limit, drop);
    }
    return With.changed(order, "rules", rules);
  }

  /**
   * All thinner wires tried.
   *
   * @param reached how the kit stands with its own wires
   * @param unsound leads whose wire does not bear what it has to by itself
   * @param thinner wires that would do as well
   * @param byItself wires that fuse, ends or minimum rule out
   * @param together wires that were tried in the whole kit
   */
  private record Tried(
      Levels reached, List<String> unsound, List<String> thinner, int byItself, int together) {
    static Tried of(SolvedKit kit) {
      WireSizer sizer = new WireSizer(kit.order().parts(), kit.order().rules());
      Map<Strand, WireNeed> needs = kit.sizer().leads().needs();
      Evaluator evaluator = kit.sizer().evaluator();
      Sizing sizing = kit.sizer().leads().sizing(needs, evaluator);
      Map<Strand, Wire> chosen = new LinkedHashMap<>();
      kit.chosen().leads().forEach(one -> chosen.put(one.strand(), one.wire()));
      Levels reached = sizing.levels(evaluator.of(chosen));
      List<String> unsound = new ArrayList<>();
      List<String> thinner = new ArrayList<>();
      int byItself = 0;
      int together = 0;
      for (Sized one : kit.chosen().leads()) {
        if (!sizer.passes(one.wire(), one.need())) {
          unsound.add(one.lead().label());
        }
        for (Wire wire : kit.order().parts().wires()) {
          if (wire.size().areaMm2() >= one.lead().areaMm2() - 1e-9) {
            continue;
          }
          boolean alone =
              wire.size().areaMm2() >= one.need().leastAreaMm2() - 1e-9
                  && kit.ends().fit(one.strand(), wire, one.need().load())
                  && sizer.passes(wire, one.need());
          if (!alone) {
            byItself++;
            continue;
          }
          together++;
          Map<Strand, Wire> trial = new LinkedHashMap<>(chosen);
          trial.put(one.strand(), wire);
          if (sizing.levels(evaluator.of(trial)).noWorseThan(reached)) {
            thinner.add(one.lead().label() + " with " + wire.id());
          }
        }
      }
      return new Tried(reached, unsound, thinner, byItself, together);
    }
  }

  private static void orderDoesNotMatter(SolvedKit kit, long seed) {
    List<Strand> shuffled = new ArrayList<>(kit.sizer().strands());
    Collections.shuffle(shuffled, new Random(seed));
    assertThat(wires(kit, shuffled)).as("seed %s", seed).isEqualTo(wires(kit));
  }

  private static Map<String, String> wires(SolvedKit kit) {
    Map<String, String> wires = new TreeMap<>();
    kit.chosen().leads().forEach(it -> wires.put(it.strand().key(), it.wire().id()));
    return wires;
  }

  private static Map<String, String> wires(SolvedKit kit, List<Strand> strands) {
    Kitchen.Sizer sizer = kit.sizer();
    Map<Strand, WireNeed> all = sizer.leads().needs();
    Map<Strand, WireNeed> needs = new LinkedHashMap<>();
    strands.forEach(strand -> needs.put(strand, all.get(strand)));
    Evaluator evaluator =
        new Evaluator(kit.order(), strands, sizer.joint().all(), sizer.feeds().fitted());
    Map<String, String> wires = new TreeMap<>();
    sizer
        .leads()
        .sizing(needs, evaluator)
        .size()
        .wires()
        .forEach((strand, wire) -> wires.put(strand.key(), wire.id()));
    assertThat(wires).hasSize(strands.size());
    return wires;
  }
}
