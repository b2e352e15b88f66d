package org.loomwright.planner.impact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.workspace.Workspace;
import org.loomwright.planner.difference.Change;
import org.loomwright.planner.difference.PlanDifference;
import org.loomwright.planner.difference.Weight;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.watch.PlanningStopped;

/** Plants changes into the demo's van and reads which kits they touch. */
class ImpactTest {
  private static final Workspace BEFORE = Demo.copy().workspace();

  private static Demo withoutSlot() {
    return Demo.copy()
        .item(
            Demo.VAN,
            "fuseBlocks",
            "seat-block",
            it -> Demo.remove(it.path("slots"), "id", List.of("S5")));
  }

  @Test
  void aSlotThatIsNotThereLeavesBuildsUnserved() {
    Workspace after = withoutSlot().workspace();
    Impact impact = Impact.of(BEFORE, after);
    assertThat(impact.kits()).extracting(KitImpact::kit).contains(Demo.COMFORT, Demo.TRAILER);
    KitImpact comfort =
        impact.kits().stream().filter(it -> it.kit().equals(Demo.COMFORT)).findFirst().get();
    assertThat(comfort.before()).isEqualTo(Verdict.HOLDS);
    assertThat(comfort.after()).isEqualTo(Verdict.FAILS);
    assertThat(comfort.words()).isEqualTo("can't be released; before, it could");
    assertThat(comfort.changes())
        .containsExactlyInAnyOrderElementsOf(
            PlanDifference.between(
                Demo.plan(Demo.COMFORT), Planner.plan(withoutSlot().kit(Demo.COMFORT))));
    assertThat(impact.lines())
        .anyMatch(
            it -> it.startsWith("kit crew-comfort: case ") && it.contains(" is no longer served"));
    assertSorted(impact);
    // The other way round, what was worse is better.
    Impact back = Impact.of(after, BEFORE);
    assertThat(back.lines()).anyMatch(it -> it.contains(" is served now"));
    assertSorted(back);
  }

  private static void assertSorted(Impact impact) {
    for (KitImpact kit : impact.kits()) {
      assertThat(kit.changes()).extracting(Change::weight).isSorted();
    }
    List<Weight> weights =
        impact.lines().stream()
            .map(
                line ->
                    impact.kits().stream()
                        .filter(it -> line.startsWith("kit " + it.kit() + ": "))
                        .flatMap(it -> it.changes().stream())
                        .filter(it -> line.endsWith(": " + it.words()))
                        .findFirst()
                        .orElseThrow()
                        .weight())
            .toList();
    assertThat(weights).isSorted();
  }

  @Test
  void aChangeInWordsTouchesNoKit() {
    Workspace after = Demo.copy().edit(Demo.VAN, it -> it.put("revision", "6")).workspace();
    Impact impact = Impact.of(BEFORE, after);
    assertThat(impact.kits()).hasSize(2).noneMatch(KitImpact::isTouched);
    assertThat(impact.kits()).extracting(KitImpact::kit).isSorted();
    assertThat(impact.kits().get(0).words()).isEqualTo("can be released, as before");
    assertThat(impact.lines()).isEmpty();
  }

  @Test
  void kitsOnVehiclesThatStayedAreNotPlanned() {
    Workspace after =
        Demo.copy().edit(Demo.HEATER, it -> it.put("revision", "changed")).workspace();
    assertThat(Impact.kits(BEFORE, after)).isEmpty();
    assertThat(Impact.of(BEFORE, after).kits()).isEmpty();
    assertThat(Impact.kits(BEFORE, BEFORE)).isEmpty();
  }

  @Test
  void aVehicleWithoutBuildsIsTold() {
    Optional<Plan> plan = Optional.of(Demo.plan(Demo.COMFORT));
    KitImpact worse = KitImpact.of(Demo.COMFORT, plan, Optional.empty());
    assertThat(worse.after()).isEqualTo(Verdict.FAILS);
    assertThat(worse.changes()).extracting(Change::weight).containsExactly(Weight.WORSE);
    KitImpact better = KitImpact.of(Demo.COMFORT, Optional.empty(), plan);
    assertThat(better.changes()).extracting(Change::weight).containsExactly(Weight.BETTER);
    assertThat(KitImpact.of("x", Optional.empty(), Optional.empty()).isTouched()).isFalse();
  }

  @Test
  void canBeStopped() {
    Workspace after = Demo.copy().edit(Demo.VAN, it -> it.put("revision", "6")).workspace();
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> Impact.of(BEFORE, after)).isInstanceOf(PlanningStopped.class);
    assertThat(Thread.interrupted()).isTrue();
  }
}
