package org.loomwright.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.design.Verdict;
import tools.jackson.databind.node.ObjectNode;

/** Faults of protection planted in the demo's documents are found in its plan. */
class PlantedProtectionTest {
  @Test
  void theFuseOfTheSectionHoldsWhileThatOfTheKitOpens() {
    assertThat(Demo.plan(Demo.COMFORT).checks())
        .filteredOn(it -> it.name().equals("selectivity"))
        .extracting(Check::id)
        .contains("selectivity/rear-block/F7", "selectivity/seat-block/S5");
  }

  @Test
  void aSectionFuseSmallerThanThatOfTheKitOpensFirst() {
    Plan plan =
        Planner.plan(
            section(
                    it -> {
                      it.put("fuse", "15 A");
                      it.put("fuseForm", "blade");
                    })
                .kit(Demo.COMFORT));
    List<Check> failing =
        plan.checks().stream().filter(it -> it.verdict() == Verdict.FAILS).toList();
    assertThat(failing)
        .isNotEmpty()
        .allSatisfy(
            it -> {
              assertThat(it.name()).isEqualTo("selectivity");
              assertThat(it.id()).startsWith("selectivity/rear-block/");
              assertThat(it.figure()).isZero();
              assertThat(it.source()).contains("15 A blade type C of section B");
            });
    assertThat(plan.releasable()).isFalse();
  }

  @Test
  void ofASectionFuseThatIsNotOnFileNothingIsClaimed() {
    Plan plan =
        Planner.plan(
            section(
                    it -> {
                      it.remove("fuse");
                      it.remove("fuseForm");
                    })
                .kit(Demo.COMFORT));
    assertThat(plan.checks())
        .extracting(Check::id)
        .doesNotContain("selectivity/rear-block/F7")
        .contains("selectivity/seat-block/S5");
    assertThat(plan.checks())
        .filteredOn(it -> it.id().equals("overload/L1"))
        .singleElement()
        .satisfies(
            it ->
                assertThat(it.trace())
                    .extracting(TraceLine::what)
                    .anySatisfy(
                        what -> assertThat(what).contains("fuse before section B is not on file")));
    assertThat(plan.releasable()).isTrue();
  }

  @Test
  void aStallNoAllowedFuseRidesOut() {
    Plan plan =
        Planner.plan(
            Demo.copy()
                .edit(
                    Demo.HEATER,
                    heater -> {
                      ObjectNode plug = Demo.find(heater.path("plugs"), "id", "main");
                      for (String pin : List.of("1", "2")) {
                        ((ObjectNode) Demo.find(plug.path("pins"), "cavity", pin).path("need"))
                            .put("peak", "60 A")
                            .put("peakTime", "5 s");
                      }
                    })
                .kit(Demo.COMFORT));
    assertThat(plan.checks())
        .filteredOn(it -> it.verdict() == Verdict.FAILS)
        .extracting(Check::name)
        .contains("starting current");
    assertThat(plan.releasable()).isFalse();
  }

  @Test
  void aFeedWithHardlyAnyResistanceIsTooMuchForABlade() {
    Plan plan = Planner.plan(section(it -> it.put("feedResistance", "1 mΩ")).kit(Demo.COMFORT));
    assertThat(plan.checks())
        .filteredOn(it -> it.verdict() == Verdict.FAILS)
        .isNotEmpty()
        .allSatisfy(
            it -> {
              assertThat(it.name()).isEqualTo("breaking capacity");
              assertThat(it.figure()).isGreaterThan(2000);
            });
    assertThat(plan.releasable()).isFalse();
  }

  private static Demo section(java.util.function.Consumer<ObjectNode> change) {
    return Demo.copy()
        .item(
            Demo.VAN,
            "fuseBlocks",
            "rear-block",
            block -> change.accept(Demo.find(block.path("sections"), "id", "B")));
  }
}
