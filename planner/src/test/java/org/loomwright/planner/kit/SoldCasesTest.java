package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.planner.fixture.CarDraw;
import org.loomwright.planner.guide.EasyCar;
import org.loomwright.planner.plan.Planner;

/** Where some builds can't be served, nothing is made for the cases that only they have. */
class SoldCasesTest {
  /** Most builds of this order lack a way for something. */
  private static final long PARTLY = -225126;

  @Test
  void theBenchMakesEndsForCasesThatAreSold() {
    Plan plan = Planner.plan(CarDraw.of(PARTLY).order());
    assertThat(plan.unserved()).isNotEmpty();
    assertThat(plan.design().leads()).isNotEmpty();
    check(plan);
    int partly = 0;
    for (long seed = 1; seed <= 12; seed++) {
      Plan drawn = Planner.plan(EasyCar.of(seed));
      if (!drawn.design().partNumbers().get(0).leads().isEmpty()) {
        partly += drawn.unserved().isEmpty() ? 0 : 1;
        check(drawn);
      }
    }
    assertThat(partly).isGreaterThan(1);
  }

  private static void check(Plan plan) {
    Set<String> sold =
        plan.design().partNumbers().stream()
            .flatMap(number -> number.cases().stream())
            .collect(Collectors.toSet());
    assertThat(sold)
        .isEqualTo(plan.cases().stream().map(it -> it.id()).collect(Collectors.toSet()));
    for (Lead lead : plan.design().leads()) {
      for (LeadEnd end : List.of(lead.a(), lead.b())) {
        assertThat(end.uses()).allSatisfy(use -> assertThat(use.cases()).isNotEmpty());
        assertThat(end.uses().get(0).asMade()).isTrue();
      }
    }
    assertThat(plan.proof().obligations())
        .filteredOn(it -> it.id().equals("complete"))
        .allMatch(it -> it.shown());
  }
}
