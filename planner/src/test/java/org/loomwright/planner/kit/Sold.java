package org.loomwright.planner.kit;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.planner.plan.Walker;

/** What one vehicle is sold, and what its fitter uses up. */
final class Sold {
  private Sold() {}

  /** Part numbers that serve a build. */
  static List<PartNumber> numbers(Plan plan, Map<String, String> build) {
    List<String> own = cases(plan, build);
    return plan.design().partNumbers().stream()
        .filter(number -> number.cases().containsAll(own))
        .toList();
  }

  static List<String> cases(Plan plan, Map<String, String> build) {
    return plan.cases().stream().filter(it -> it.when().holds(build)).map(Case::id).toList();
  }

  /** Pieces that the bench and the walk through the guide use, by part. */
  static Map<String, Integer> used(Plan plan, PartNumber number, Map<String, String> build) {
    Map<String, Integer> used = new TreeMap<>();
    Set<String> own = Set.copyOf(number.leads());
    for (Lead lead : plan.design().leads()) {
      if (own.contains(lead.id())) {
        for (LeadEnd end : List.of(lead.a(), lead.b())) {
          if (!(end.asMade() instanceof Landing.IntoCircuit)) {
            end(end.asMade(), used);
          }
        }
      }
    }
    for (Joint joint : plan.design().joints()) {
      if (joint.leads().stream().anyMatch(own::contains)) {
        used.merge(joint.splice(), 1, Integer::sum);
      }
    }
    Set<String> cases = Set.copyOf(cases(plan, build));
    for (SuppliedHousing housing : plan.design().housings()) {
      boolean filled =
          plan.design().leads().stream()
              .flatMap(lead -> List.of(lead.a(), lead.b()).stream())
              .flatMap(end -> end.uses().stream())
              .filter(use -> use.cases().stream().anyMatch(cases::contains))
              .anyMatch(
                  use ->
                      use.landing() instanceof Landing.InHousing in
                          && in.housing().equals(housing.id()));
      if (filled) {
        used.merge(housing.part(), 1, Integer::sum);
      }
    }
    for (Step step : Walker.walk(plan.guide(), build)) {
      step.act().ifPresent(act -> act(plan, act, used));
    }
    return used;
  }

  private static void act(Plan plan, Act act, Map<String, Integer> used) {
    if (act instanceof Act.Change change) {
      end(change.landing(), used);
    } else if (act instanceof Act.Land land && land.landing() instanceof Landing.IntoCircuit) {
      end(land.landing(), used);
    } else if (act instanceof Act.Park park) {
      end(park.landing(), used);
    } else if (act instanceof Act.FitFuse fit) {
      plan.design().fuses().stream()
          .filter(it -> it.block().equals(fit.block()) && it.slot().equals(fit.slot()))
          .forEach(it -> used.merge(it.part(), 1, Integer::sum));
    }
  }

  private static void end(Landing landing, Map<String, Integer> used) {
    List<String> parts =
        landing instanceof Landing.InCavity in
            ? both(in.terminal(), in.seal().stream().toList())
            : landing instanceof Landing.InHousing in
                ? both(in.terminal(), in.seal().stream().toList())
                : landing instanceof Landing.InSlot in
                    ? List.of(in.terminal())
                    : landing instanceof Landing.OnGround on
                        ? List.of(on.ring())
                        : landing instanceof Landing.IntoCircuit into
                            ? List.of(into.splice())
                            : landing instanceof Landing.Parked parked
                                ? List.of(parked.cap())
                                : List.of();
    parts.forEach(part -> used.merge(part, 1, Integer::sum));
  }

  private static List<String> both(String one, List<String> more) {
    return java.util.stream.Stream.concat(java.util.stream.Stream.of(one), more.stream())
        .collect(Collectors.toList());
  }
}
