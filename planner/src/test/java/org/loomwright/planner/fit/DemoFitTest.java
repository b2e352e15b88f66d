package org.loomwright.planner.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.plan.Demo;

/** The fit checks of both demo kits, over every combination of answers, "don't know" included. */
class DemoFitTest {
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void everyCombinationOfAnswers(String kit) {
    KitOrder order = Demo.order(kit);
    Plan plan = Demo.plan(kit);
    FitCheck check = FitCheck.of(order, plan);
    FitOracle oracle = new FitOracle(order, plan, check);
    oracle.checkQuestions();
    oracle.checkNothingLost();
    List<Map<String, String>> all = combinations(check);
    assertThat(all).hasSizeGreaterThan(40);
    all.forEach(oracle::check);
    assertThat(check.answer(Map.of()).work().minutes().orElseThrow())
        .isEqualTo(plan.guide().expectedMinutes(), within(1e-6));
  }

  static List<Map<String, String>> combinations(FitCheck check) {
    List<Map<String, String>> all = new ArrayList<>(List.of(Map.of()));
    for (FitQuestion question : check.questions()) {
      List<Map<String, String>> longer = new ArrayList<>(all);
      for (Map<String, String> answers : all) {
        for (FitQuestion.Option option : question.options()) {
          Map<String, String> more = new LinkedHashMap<>(answers);
          more.put(question.id(), option.value());
          longer.add(more);
        }
      }
      all = longer;
    }
    return all;
  }
}
