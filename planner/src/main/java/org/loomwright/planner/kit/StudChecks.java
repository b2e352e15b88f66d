package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.joining.FitRange;
import org.loomwright.physics.joining.StudStack;

/** Checks of rings and of the studs they go on. */
final class StudChecks {
  private final KitOrder order;
  private final FitList list;

  StudChecks(KitOrder order, FitList list) {
    this.order = order;
    this.list = list;
  }

  void ring(EndChecks.At at, Landing.OnGround on) {
    Optional<Ring> part =
        order.parts().rings().stream().filter(it -> it.id().equals(on.ring())).findFirst();
    Optional<GroundStud> stud = order.vehicle().ground(on.ground());
    if (part.isEmpty() || stud.isEmpty()) {
      return;
    }
    Ring ring = part.get();
    list.size(
        at.id("fit", on.ground() + "/conductor"),
        at.subject(),
        at.cases(),
        FitRange.check(
            "conductor in ring " + ring.id(),
            at.wire().size().areaMm2(),
            ring.wireLeast().areaMm2(),
            ring.wireMost().areaMm2(),
            "mm²",
            ring.source()
                + (ring.currentLimit().isEmpty() ? "; its most current is not on file" : "")),
        Trace.builder()
            .given("conductor of " + at.wire().id(), at.wire().size().areaMm2(), "mm²")
            .build());
    insulation(at, on, ring);
    ring.currentLimit()
        .ifPresent(
            most ->
                list.load(
                    at.id("terminal", on.ground()),
                    at.subject(),
                    at.cases(),
                    Check.atMost(
                        "current through ring " + ring.id(),
                        at.lead().currentA(),
                        most.amperes(),
                        "A",
                        "at most " + Require.text(most.amperes()) + " A",
                        ring.source()),
                    Trace.builder()
                        .given("most continuous current of the lead", at.lead().currentA(), "A")
                        .build()));
    thread(at, on, ring, stud.get());
  }

  private void insulation(EndChecks.At at, Landing.OnGround on, Ring ring) {
    if (ring.insulationLeast().isEmpty() && ring.insulationMost().isEmpty()) {
      return;
    }
    double diameterMm = at.wire().diameter().mm();
    String name = "insulation in ring " + ring.id();
    Check check =
        ring.insulationLeast().isEmpty()
            ? Check.atMost(
                name,
                diameterMm,
                ring.insulationMost().get().mm(),
                "mm",
                "at most " + ring.insulationMost().get(),
                ring.source())
            : ring.insulationMost().isEmpty()
                ? Check.atLeast(
                    name,
                    diameterMm,
                    ring.insulationLeast().get().mm(),
                    "mm",
                    "at least " + ring.insulationLeast().get(),
                    ring.source())
                : FitRange.check(
                    name,
                    diameterMm,
                    ring.insulationLeast().get().mm(),
                    ring.insulationMost().get().mm(),
                    "mm",
                    ring.source());
    list.size(
        at.id("fit", on.ground() + "/insulation"),
        at.subject(),
        at.cases(),
        check,
        Trace.builder()
            .given("largest outside diameter of " + at.wire().id(), diameterMm, "mm")
            .build());
  }

  private void thread(EndChecks.At at, Landing.OnGround on, Ring ring, GroundStud stud) {
    boolean alike = ring.thread().strip().equalsIgnoreCase(stud.thread().strip());
    list.alike(
        at.id("fit", on.ground() + "/thread"),
        "thread of ring " + ring.id() + " and of the stud",
        at.subject(),
        at.cases(),
        alike ? 0 : 1,
        "vehicle document; " + ring.source(),
        List.of(
            new TraceLine(
                "ring for " + ring.thread() + " on a stud " + stud.thread(),
                "compared",
                alike ? 0 : 1,
                "unlike",
                "vehicle and parts documents")));
  }

  /**
   * Lugs on each stud. A vehicle has one case of each component, so the worst cases of all
   * components may meet on one stud.
   */
  void lugs(List<Lead> leads) {
    for (GroundStud stud : order.vehicle().grounds()) {
      Map<String, Map<String, List<Lead>>> byCase = new LinkedHashMap<>();
      for (Lead lead : leads) {
        for (String caseId : cases(lead, stud.id())) {
          byCase
              .computeIfAbsent(lead.component(), it -> new LinkedHashMap<>())
              .computeIfAbsent(caseId, it -> new ArrayList<>())
              .add(lead);
        }
      }
      if (!byCase.isEmpty()) {
        stack(stud, byCase);
      }
    }
  }

  private void stack(GroundStud stud, Map<String, Map<String, List<Lead>>> byCase) {
    List<StudStack.Lug> lugs = new ArrayList<>();
    List<String> cases = new ArrayList<>();
    for (Map<String, List<Lead>> component : byCase.values()) {
      int most = component.values().stream().mapToInt(List::size).max().orElse(0);
      boolean first = true;
      for (Map.Entry<String, List<Lead>> it : component.entrySet()) {
        if (it.getValue().size() < most) {
          continue;
        }
        cases.add(it.getKey());
        if (first) {
          it.getValue()
              .forEach(
                  lead ->
                      lugs.add(
                          new StudStack.Lug("lead " + lead.id(), lead.areaMm2(), lead.currentA())));
          first = false;
        }
      }
    }
    StudStack.Result stack = StudStack.of(stud.lugs(), lugs);
    list.size(
        "stud/" + stud.id(),
        stud.name(),
        cases,
        StudStack.check(stack, stud.lugsMost(), "vehicle document"),
        stack.trace());
  }

  private static Set<String> cases(Lead lead, String stud) {
    Set<String> cases = new LinkedHashSet<>();
    for (List<EndUse> uses : List.of(lead.a().uses(), lead.b().uses())) {
      for (EndUse use : uses) {
        if (use.landing() instanceof Landing.OnGround on && on.ground().equals(stud)) {
          cases.addAll(use.cases());
        }
      }
    }
    return cases;
  }
}
