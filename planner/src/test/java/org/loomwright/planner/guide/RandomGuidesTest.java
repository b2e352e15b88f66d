package org.loomwright.planner.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.plan.Walker;

/** Guides of random small orders are proven on every build that has its ways. */
class RandomGuidesTest {
  @Property(tries = 100, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void whatIsServedIsProven(@ForAll long seed) {
    KitOrder order = EasyCar.of(seed);
    Set<Map<String, String>> all = AllBuilds.of(order.vehicle());
    if (all.isEmpty()) {
      Statistics.label("told").collect("no build");
      return;
    }
    Plan plan = Planner.plan(order);
    boolean sound = plan.worst() != Verdict.FAILS;
    long unserved =
        all.stream()
            .filter(build -> plan.unserved().stream().anyMatch(it -> it.when().holds(build)))
            .count();
    assertThat(plan.proof().proven())
        .as("%s %s", plan.unserved(), plan.proof())
        .isEqualTo(unserved == 0 && sound);
    if (unserved < all.size() && sound) {
      // Builds with ways are proven whatever is missing on the others.
      assertThat(plan.proof().obligations())
          .filteredOn(it -> !it.shown())
          .as("%s", plan.proof().counterexamples())
          .extracting(Obligation::id)
          .isSubsetOf("cover");
      assertThat(plan.proof().builds()).isEqualTo(BigInteger.valueOf(all.size() - unserved));
      for (Counterexample one : plan.proof().counterexamples()) {
        assertThat(one.what())
            .contains(unserved + " of " + all.size() + " possible builds are left unserved");
      }
    }
    assertThat(plan.guide().expectedQuestions())
        .isCloseTo(Counted.questions(order.vehicle(), plan.guide(), all), within(1e-9));
    boolean branches = plan.guide().edges().stream().anyMatch(it -> !it.words().isEmpty());
    Statistics.label("told")
        .collect(unserved == 0 ? "all served" : unserved == all.size() ? "none" : "some served");
    assertThat(plan.guide().steps())
        .filteredOn(it -> it.act().orElse(null) instanceof Act.Change)
        .allMatch(it -> it.undo() == Undo.NOT_AT_ALL);
    Statistics.label("checks hold").collect(sound);
    Statistics.label("not trivial")
        .collect(branches && !plan.design().leads().isEmpty() && unserved < all.size() && sound)
        .coverage(c -> c.check(true).percentage(p -> p > 50));
    for (Map<String, String> build : all) {
      if (plan.unserved().stream().noneMatch(it -> it.when().holds(build))) {
        assertThat(Walker.walk(plan.guide(), build)).isNotEmpty();
      }
    }
  }
}
