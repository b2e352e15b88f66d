package org.loomwright.planner.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.plan.Planner;

/** The fit check of random small orders against all their builds, one by one. */
class FitCheckOracleTest {
  @Property(tries = 100, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void saysWhatAllBuildsWithTheseAnswersSay(@ForAll long seed) {
    KitOrder order = RandomFit.order(seed);
    if (AllBuilds.of(order.vehicle()).isEmpty()) {
      return;
    }
    Plan plan = Planner.plan(order);
    FitCheck check = FitCheck.of(order, plan);
    FitOracle oracle = new FitOracle(order, plan, check);
    oracle.checkQuestions();
    oracle.checkNothingLost();
    oracle.check(Map.of());
    Random random = new Random(seed);
    for (int i = 0; i < 30; i++) {
      oracle.check(RandomFit.answers(check, random, 30 + 10 * (i % 8)));
    }
    // As an owner answers who stands beside a vehicle that exists.
    Set<Outcome> seen = new java.util.TreeSet<>();
    for (Map<String, String> build : oracle.all()) {
      Map<String, String> answers = new LinkedHashMap<>();
      check.questions().forEach(it -> answers.put(it.id(), build.get(it.id())));
      oracle.check(answers);
      Outcome outcome = check.answer(answers).wiring().outcome();
      seen.add(outcome);
      assertThat(outcome == Outcome.FITS && oracle.wiring(build) != 0).isFalse();
      assertThat(outcome == Outcome.DOES_NOT && oracle.wiring(build) == 0).isFalse();
    }
    Statistics.label("wiring").collect(seen);
    Statistics.label("asks").collect(check.questions().size());
    Statistics.label("several outcomes")
        .collect(seen.size() > 1)
        .coverage(it -> it.check(true).percentage(p -> p > 15));
  }
}
