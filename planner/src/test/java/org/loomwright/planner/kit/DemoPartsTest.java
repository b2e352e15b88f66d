package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Run;
import org.loomwright.physics.packing.BundleSize;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.Walker;

/** The parts lists of the demo against what bench and fitter use on each build. */
class DemoPartsTest {
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void theBoxHoldsWhatEveryBuildUsesAndNoPieceMore(String kit) {
    Plan plan = Demo.plan(kit);
    Map<String, Map<String, Integer>> most = new HashMap<>();
    for (Map<String, String> build : AllBuilds.of(Demo.order(kit).vehicle())) {
      PartNumber number = Sold.numbers(plan, build).get(0);
      Map<String, Double> held = pieces(number);
      Sold.used(plan, number, build)
          .forEach(
              (part, amount) -> {
                assertThat(held.getOrDefault(part, 0.0))
                    .as("%s in %s for %s", part, number.id(), build)
                    .isGreaterThanOrEqualTo(amount);
                most.computeIfAbsent(number.id(), id -> new HashMap<>())
                    .merge(part, amount, Math::max);
              });
    }
    for (PartNumber number : plan.design().partNumbers()) {
      Map<String, Double> held = new TreeMap<>(pieces(number));
      // Labels: one at each end.
      assertThat(held.remove("LB-W")).isEqualTo(2.0 * number.leads().size());
      bundleParts(plan, number, Demo.order(kit))
          .forEach(
              (part, amount) ->
                  assertThat(held.remove(part))
                      .as("%s in %s", part, number.id())
                      .isEqualTo((double) amount));
      // In the demo the worst of all letters comes together on some build.
      assertThat(held.keySet()).isEqualTo(most.getOrDefault(number.id(), Map.of()).keySet());
      held.forEach(
          (part, amount) ->
              assertThat(amount)
                  .as("%s in %s", part, number.id())
                  .isEqualTo(
                      (double) most.getOrDefault(number.id(), Map.of()).getOrDefault(part, 0)));
    }
  }

  /** Clips and grommets of the demo: a clip 100 mm from both ends, others 200 mm apart or less. */
  private static Map<String, Integer> bundleParts(Plan plan, PartNumber number, KitOrder order) {
    Map<String, Integer> parts = new TreeMap<>();
    for (Run run : order.vehicle().runs()) {
      List<Lead> leads =
          plan.design().leads().stream()
              .filter(it -> number.leads().contains(it.id()) && it.runs().contains(run.id()))
              .toList();
      if (leads.isEmpty()) {
        continue;
      }
      List<Double> diametersMm =
          leads.stream()
              .map(it -> order.parts().wire(it.wire()).orElseThrow().diameter().mm())
              .toList();
      double bundleMm = BundleSize.of(new BundleSize.Input(diametersMm)).diameterMm();
      // Fleece tape 0.3 mm thick up to 12 mm, then two layers.
      double overMm = bundleMm + (bundleMm <= 12 ? 0.6 : 1.2);
      double lengthMm = run.length().mm() + run.tolerance().mm();
      parts.merge(
          overMm <= 9 ? "CP-9" : "CP-16",
          (int) Math.ceil((lengthMm - 200) / 200) + 1,
          Integer::sum);
      run.holes().stream()
          .filter(hole -> hole.bore().isEmpty())
          .forEach(hole -> parts.merge("GR-25", 1, Integer::sum));
    }
    return parts;
  }

  @Test
  void aNumberForVansWithTheSocketBringsNoSecondOne() {
    Plan plan = Demo.plan(Demo.TRAILER);
    for (PartNumber number : plan.design().partNumbers()) {
      boolean without =
          AllBuilds.of(Demo.order(Demo.TRAILER).vehicle()).stream()
              .filter(build -> Sold.numbers(plan, build).contains(number))
              .anyMatch(build -> "no".equals(build.get("tow-prep")));
      assertThat(pieces(number).containsKey("OV-13R")).as(number.id()).isEqualTo(without);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void theBenchPutsAtMostOneTerminalIntoACavity(String kit) {
    Plan plan = Demo.plan(kit);
    for (Map<String, String> build : AllBuilds.of(Demo.order(kit).vehicle())) {
      PartNumber number = Sold.numbers(plan, build).get(0);
      Set<String> landed = new HashSet<>();
      for (Step step : Walker.walk(plan.guide(), build)) {
        if (step.act().orElse(null) instanceof Act.Land land
            && land.landing() instanceof Landing.InHousing) {
          landed.add(land.lead() + land.end());
        }
      }
      // What no step lands anywhere must have been put into the cavity on the bench.
      Map<String, List<String>> filled = new HashMap<>();
      for (Lead lead : plan.design().leads()) {
        for (String end :
            number.leads().contains(lead.id()) ? List.of("a", "b") : List.<String>of()) {
          LeadEnd it = end.equals("a") ? lead.a() : lead.b();
          boolean everLanded =
              plan.guide().steps().stream()
                  .anyMatch(
                      step ->
                          step.act().orElse(null) instanceof Act.Land land
                              && land.landing() instanceof Landing.InHousing
                              && (land.lead() + land.end()).equals(lead.id() + end));
          it.uses().stream()
              .filter(use -> !everLanded && use.asMade())
              .filter(use -> use.cases().stream().anyMatch(number.cases()::contains))
              .forEach(
                  use -> {
                    if (use.landing() instanceof Landing.InHousing in) {
                      filled
                          .computeIfAbsent(in.housing() + " " + in.cavity(), c -> new ArrayList<>())
                          .add(lead.id());
                    }
                  });
        }
      }
      filled.forEach((cavity, leads) -> assertThat(leads).as(cavity).hasSize(1));
      // Where the connector of the kit is used, the lead that wants a shared cavity is put in.
      for (Lead lead : plan.design().leads()) {
        for (String end : List.of("a", "b")) {
          LeadEnd it = end.equals("a") ? lead.a() : lead.b();
          Sold.cases(plan, build).stream()
              .flatMap(id -> it.landing(id).stream())
              .forEach(
                  landing -> {
                    if (landing instanceof Landing.InHousing in) {
                      List<String> bench =
                          filled.getOrDefault(in.housing() + " " + in.cavity(), List.of());
                      assertThat(bench.contains(lead.id()) || landed.contains(lead.id() + end))
                          .as("%s%s in %s", lead.id(), end, in)
                          .isTrue();
                    }
                  });
        }
      }
    }
  }

  private static Map<String, Double> pieces(PartNumber number) {
    return number.parts().stream()
        .filter(line -> line.unit().equals("pc"))
        .collect(Collectors.toMap(PartLine::part, PartLine::quantity));
  }
}
