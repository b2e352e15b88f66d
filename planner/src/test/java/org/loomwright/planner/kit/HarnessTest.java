package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.guide.EasyCar;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.plan.With;
import tools.jackson.databind.node.ObjectNode;

/** Bundles, tails and joints of whole kits. */
class HarnessTest {
  private static final List<String> TAPES_AND_SLEEVE = List.of("CV-F12", "CV-F25", "CV-S30");

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void theDemoKeepsAllRules(String kit) {
    assertThat(HarnessRules.faults(Demo.plan(kit), Demo.order(kit))).isEmpty();
  }

  @Test
  void randomKitsKeepAllRules() {
    long seed = new Random().nextLong();
    int harnesses = 0;
    for (int i = 0; harnesses < 40; i++) {
      KitOrder order = EasyCar.of(seed + i);
      if (Builds.of(order.vehicle()).possible().isEmpty()) {
        continue;
      }
      Plan plan = Planner.plan(order);
      assertThat(HarnessRules.faults(plan, order)).as("seed %s", seed + i).isEmpty();
      harnesses++;
    }
  }

  @Test
  void plantedFaultsAreFound() {
    Plan plan = Demo.plan(Demo.COMFORT);
    KitOrder order = Demo.order(Demo.COMFORT);
    Lead longer = With.changed(plan.design().leads().get(0), "lengthMm", 1234.0);
    assertThat(HarnessRules.faults(with(plan, longer), order))
        .anyMatch(it -> it.contains("mm long"));
    Bundle tight = With.changed(thickest(plan), "diameterMm", thickest(plan).diameterMm() * 0.98);
    assertThat(HarnessRules.faults(with(plan, tight), order))
        .anyMatch(it -> it.contains("sticks out"));
    Bundle loose =
        With.changed(
            thickest(plan),
            "clips",
            thickest(plan).clips().map(it -> With.changed(it, "count", it.count() - 1)));
    assertThat(HarnessRules.faults(with(plan, loose), order)).anyMatch(it -> it.contains("loose"));
  }

  private static Plan with(Plan plan, Lead lead) {
    List<Lead> leads =
        plan.design().leads().stream().map(it -> it.id().equals(lead.id()) ? lead : it).toList();
    return With.changed(plan, "design", With.changed(plan.design(), "leads", leads));
  }

  private static Plan with(Plan plan, Bundle bundle) {
    List<Bundle> bundles =
        plan.harness().bundles().stream()
            .map(it -> it.run().equals(bundle.run()) ? bundle : it)
            .toList();
    return With.changed(plan, "harness", With.changed(plan.harness(), "bundles", bundles));
  }

  private static Bundle thickest(Plan plan) {
    return plan.harness().bundles().stream()
        .max((a, b) -> Double.compare(a.diameterMm(), b.diameterMm()))
        .orElseThrow();
  }

  /** Three wires of 3.7, 3.0 and 1.9 mm on the floor loom, fleece tape of 19 mm, half lapped. */
  @Test
  void aBundleReckonedByHand() {
    Bundle bundle = bundle(Demo.plan(Demo.COMFORT), "quarter-to-floor");
    assertThat(bundle.lengthMm()).isEqualTo(1150 + 40);
    // The two thickest side by side; the third lies in the gap beside them.
    assertThat(bundle.diameterMm()).isCloseTo(3.7 + 3.0, within(1e-3));
    Bundle.Covered covered = bundle.covering().orElseThrow();
    assertThat(covered.part()).isEqualTo("CV-F12");
    // A turn covers half of the last one: 9.5 mm of bundle for each 6.7 π mm of tape.
    assertThat(covered.tapeMm().orElseThrow()).isCloseTo(1190 / 9.5 * Math.PI * 6.7, within(1.0));
    assertThat(bundle.overallMm()).isCloseTo(6.7 + 2 * 0.3, within(1e-3));
    assertThat(bundle.bendRadiusMm()).isCloseTo(4 * 7.3, within(1e-2));
    // 100 mm at both ends, 990 mm between them in five gaps of at most 200 mm.
    assertThat(bundle.clips()).contains(new Bundle.Clips("CP-9", 6, 198));
  }

  @Test
  void holesGetTheFactoryGrommetOrOneFromTheShop() {
    Plan plan = Demo.plan(Demo.COMFORT);
    Bundle.Passage sill = bundle(plan, "pillar-to-floor").passages().get(0);
    assertThat(sill.grommet()).isEmpty();
    // 4.3 mm over the tape beside 16 mm of factory loom in a bore of 38 mm.
    assertThat(sill.fill()).isCloseTo((4.3 * 4.3 + 16 * 16) / (38 * 38), within(1e-3));
    Bundle.Passage step = bundle(plan, "cross-to-left-step").passages().get(0);
    assertThat(step.grommet()).contains("GR-25");
    assertThat(step.boreMm()).isEqualTo(17);
  }

  @Test
  void aHoleWithoutAGrommetFails() {
    KitOrder order =
        Demo.copy().edit(Demo.PARTS, parts -> parts.remove("grommets")).kit(Demo.COMFORT);
    assertThat(failing(Planner.plan(order)))
        .containsExactlyInAnyOrder(
            "bundle/cross-to-left-step/hole/hole behind the left step well/edge",
            "bundle/cross-to-right-step/hole/hole behind the right step well/edge");
  }

  @Test
  void aHoleThatIsFullFails() {
    KitOrder order =
        Demo.copy()
            .item(
                Demo.VAN,
                "runs",
                "pillar-to-floor",
                run -> ((ObjectNode) run.path("holes").path(0)).put("taken", "34 mm"))
            .kit(Demo.COMFORT);
    assertThat(failing(Planner.plan(order)))
        .containsExactly("bundle/pillar-to-floor/hole/oval opening in the sill inner panel/fill");
  }

  /** Three leads, 6.7 mm, in 17 mm of conduit; a conduit that is fuller than 80 % is not taken. */
  @Test
  void aConduitIsTakenOnlyUpToItsFill() {
    Demo only =
        Demo.copy()
            .edit(
                Demo.PARTS, parts -> Demo.remove(parts.path("coverings"), "id", TAPES_AND_SLEEVE));
    Plan wide = Planner.plan(only.kit(Demo.COMFORT));
    Bundle bundle = bundle(wide, "quarter-to-floor");
    assertThat(bundle.covering().orElseThrow().part()).isEqualTo("CV-C17");
    assertThat(bundle.covering().orElseThrow().tapeMm()).isEmpty();
    assertThat(bundle.covering().orElseThrow().fill().orElseThrow())
        .isCloseTo(6.7 * 6.7 / (17 * 17), within(1e-3));
    assertThat(bundle.overallMm()).isCloseTo(17 + 2 * 0.5, within(1e-9));
    assertThat(wide.checks())
        .anyMatch(it -> it.id().equals("bundle/quarter-to-floor/conduit") && it.figure() < 0.2);
    // 6.7 mm take 91 % of 7.02 mm.
    KitOrder tight =
        only.item(
                Demo.PARTS,
                "coverings",
                "CV-C17",
                conduit -> conduit.put("bundleMost", "7 mm").put("inner", "7.02 mm"))
            .kit(Demo.COMFORT);
    assertThat(failing(Planner.plan(tight)))
        .contains("bundle/quarter-to-floor/covering", "bundle/floor-to-cross/covering")
        .doesNotContain("bundle/cross-to-left-step/covering");
  }

  @Test
  void aBundleThatNoClipHoldsFails() {
    KitOrder order =
        Demo.copy()
            .item(Demo.PARTS, "clips", "CP-9", clip -> clip.put("bundleMost", "7 mm"))
            .kit(Demo.COMFORT);
    // 7.3 mm is between the small clip and the next, which starts at 8 mm.
    assertThat(failing(Planner.plan(order)))
        .containsExactlyInAnyOrder("bundle/quarter-to-floor/clip", "bundle/floor-to-cross/clip");
  }

  @Test
  void aRunTooNearToTheExhaustIsLeftOut() {
    KitOrder order =
        Demo.copy()
            .item(
                Demo.VAN,
                "runs",
                "cross-to-right-step",
                run -> ((ObjectNode) run.path("near").path(0)).put("distance", "150 mm"))
            .kit(Demo.COMFORT);
    Plan plan = Planner.plan(order);
    assertThat(plan.harness().runsLeft())
        .anyMatch(
            it ->
                it.startsWith("run cross-to-right-step")
                    && it.contains("150 mm of exhaust parts, less than the 200 mm to keep"));
    // No other run leads to the right step.
    assertThat(plan.unserved()).isNotEmpty();
  }

  /** The waist rail is 750 mm longer than trough and floor seam, but only it is dry and cool. */
  @Test
  void heatIsAvoided() {
    KitOrder order =
        Demo.copy()
            .item(Demo.VAN, "runs", "pillar-to-floor", run -> run.put("ambient", "85 °C"))
            .item(Demo.VAN, "runs", "quarter-to-floor", run -> run.put("ambient", "60 °C"))
            .kit(Demo.COMFORT);
    Plan plan = Planner.plan(order);
    Lead feed =
        plan.design().leads().stream()
            .filter(it -> it.a().place().equals("left-seat-box"))
            .findFirst()
            .orElseThrow();
    assertThat(feed.runs())
        .containsExactly("seat-to-pillar", "pillar-to-quarter", "quarter-to-floor");
    assertThat(HarnessRules.faults(plan, order)).isEmpty();
  }

  private static Bundle bundle(Plan plan, String run) {
    Optional<Bundle> found =
        plan.harness().bundles().stream().filter(it -> it.run().equals(run)).findFirst();
    return found.orElseThrow();
  }

  private static List<String> failing(Plan plan) {
    return plan.checks().stream()
        .filter(it -> it.verdict() == Verdict.FAILS)
        .map(Check::id)
        .toList();
  }
}
