package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.parts.Wire;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.sizing.WireNeed;
import org.loomwright.planner.sizing.WireSizer;

/** Wires of the demo kits as the least ones that pass, in any order of leads. */
class SizingTest {
  /**
   * Every lead, every thinner wire: fuse, ends or minimum rule it out, or some figure of the whole
   * kit gets a worse verdict.
   */
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void noLeadCouldBeThinner(String kit) {
    Kitchen kitchen = Kitchen.of(Demo.order(kit));
    WireSizer sizer = new WireSizer(kitchen.order().parts(), kitchen.order().rules());
    Map<Strand, WireNeed> needs = kitchen.sizer().leads().needs();
    Evaluator evaluator = kitchen.sizer().evaluator();
    Sizing sizing = kitchen.sizer().leads().sizing(needs, evaluator);
    Map<Strand, Wire> chosen = new LinkedHashMap<>();
    kitchen.sized().forEach(one -> chosen.put(one.strand(), one.wire()));
    Levels reached = sizing.levels(evaluator.of(chosen));
    assertThat(reached.verdicts()).doesNotContain(Verdict.FAILS);
    List<String> thinner = new ArrayList<>();
    int byItself = 0;
    int together = 0;
    for (Sized one : kitchen.sized()) {
      assertThat(sizer.passes(one.wire(), one.need())).as(one.lead().label()).isTrue();
      for (Wire wire : kitchen.order().parts().wires()) {
        if (wire.size().areaMm2() >= one.lead().areaMm2() - 1e-9) {
          continue;
        }
        boolean alone =
            wire.size().areaMm2() >= one.need().leastAreaMm2() - 1e-9
                && kitchen.ends().fit(one.strand(), wire, one.need().load())
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
    assertThat(thinner).isEmpty();
    assertThat(byItself).isGreaterThan(10);
    // Some wire must be ruled out by the whole kit alone, or this would test the fuses only.
    assertThat(together).isGreaterThan(0);
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void theOrderOfLeadsDoesNotMatter(String kit) {
    Kitchen kitchen = Kitchen.of(Demo.order(kit));
    Map<String, String> before = wires(kitchen.sizer(), kitchen.sizer().strands(), kitchen);
    long seed = new Random().nextLong();
    for (int i = 0; i < 4; i++) {
      List<Strand> shuffled = new ArrayList<>(kitchen.sizer().strands());
      Collections.shuffle(shuffled, new Random(seed + i));
      assertThat(wires(kitchen.sizer(), shuffled, kitchen))
          .as("seed %s", seed + i)
          .isEqualTo(before);
    }
  }

  private static Map<String, String> wires(
      Kitchen.Sizer sizer, List<Strand> strands, Kitchen kitchen) {
    Map<Strand, WireNeed> all = sizer.leads().needs();
    Map<Strand, WireNeed> needs = new LinkedHashMap<>();
    strands.forEach(strand -> needs.put(strand, all.get(strand)));
    Evaluator evaluator =
        new Evaluator(kitchen.order(), strands, sizer.joint().all(), sizer.feeds().fitted());
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
