package org.loomwright.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;

/** Every check of the demo says what it found, against what, by whom, and how. */
class ChecksTest {
  /**
   * Checks that only compare a number on file with another one, and the one that ends where its
   * limit does: fuses in a row are looked at up to the largest fault and no farther.
   */
  private static final Set<String> COMPARED =
      Set.of(
          "section for the fuse",
          "least area",
          "fuse limit",
          "slot",
          "terminal",
          "fit",
          "splice",
          "stud",
          "apart",
          "bundle",
          "joint",
          "selectivity",
          "network");

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void figureLimitMarginAndVerdictAgree(String kit) {
    Plan plan = Demo.plan(kit);
    double band = Demo.order(kit).rules().marginalBand().value().fraction();
    Set<String> ids = new HashSet<>();
    for (Check check : plan.checks()) {
      String sort = check.id().substring(0, check.id().indexOf('/'));
      assertThat(ids.add(check.id())).as("%s is there twice", check.id()).isTrue();
      assertThat(check.name()).isNotBlank();
      assertThat(check.subject()).as(check.id()).isNotBlank();
      assertThat(check.source()).as(check.id()).isNotBlank();
      assertThat(check.figure()).as(check.id()).isFinite();
      double room =
          check.atMost() ? check.limit() - check.figure() : check.figure() - check.limit();
      if (check.limit() > 0) {
        assertThat(check.margin()).as(check.id()).isCloseTo(room / check.limit(), within(1e-9));
      }
      assertThat(check.verdict() != Verdict.FAILS).as(check.id()).isEqualTo(room >= 0);
      if (!COMPARED.contains(sort)) {
        assertThat(check.verdict() == Verdict.HOLDS)
            .as(check.id())
            .isEqualTo(room / check.limit() >= band);
        assertThat(check.trace()).as("how %s was found", check.id()).isNotEmpty();
      }
    }
    assertThat(plan.worst()).isEqualTo(Verdict.HOLDS);
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void theTraceOfARoomCheckAddsUpToItsFigure(String kit) {
    assertThat(Demo.plan(kit).checks())
        .filteredOn(it -> it.id().startsWith("capacity/"))
        .isNotEmpty()
        .allSatisfy(
            it ->
                assertThat(
                        it.trace().stream()
                            .filter(line -> line.what().contains(", added in case "))
                            .mapToDouble(line -> line.value())
                            .sum())
                    .isCloseTo(it.figure(), within(1e-9)));
  }
}
