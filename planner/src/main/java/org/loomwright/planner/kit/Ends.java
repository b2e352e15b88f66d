package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Sundry;
import org.loomwright.model.parts.Wire;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.landing.EndParts;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.sizing.Load;

/**
 * Makes the ends of a lead: what the bench makes, what is changed in the vehicle, what is parked.
 */
final class Ends {
  private final KitOrder order;
  private final Facts facts;
  private final EndParts parts;
  private final Map<String, CaseSet> sets;
  private final List<Strand> strands;

  Ends(KitOrder order, Facts facts, List<CaseSet> sets, List<Strand> strands) {
    this.order = order;
    this.facts = facts;
    this.parts = new EndParts(order);
    this.strands = List.copyOf(strands);
    this.sets = new LinkedHashMap<>();
    for (CaseSet set : sets) {
      this.sets.put(set.letter(), set);
    }
  }

  /** Whether parts on file take the wire at every end of the strand. */
  boolean fit(Strand strand, Wire wire, Load load) {
    if (strand.own().filter(own -> !OwnLeads.allows(own, wire)).isPresent()) {
      return false;
    }
    for (boolean a : new boolean[] {true, false}) {
      for (Touch touch : strand.touches(a).keySet()) {
        if (parts.make(touch, wire, load.continuousA(), false, wire.size().areaMm2()).isEmpty()) {
          return false;
        }
      }
    }
    return true;
  }

  /** One end over all cases of its component. */
  LeadEnd end(Strand strand, boolean a, Wire wire, Load load, Map<Strand, Wire> wires) {
    Map<Touch, List<String>> touches = strand.touches(a);
    Map<Landing, List<String>> landings = new LinkedHashMap<>();
    touches.forEach(
        (touch, cases) -> {
          for (String caseId : cases) {
            Landing landing =
                parts
                    .make(
                        touch,
                        wire,
                        load.continuousA(),
                        pullPlug(touch, strand, caseId),
                        beside(touch, strand, wires))
                    .orElseThrow(
                        () ->
                            new IllegalStateException(
                                "no part on file makes the end at " + touch.key()));
            landings.computeIfAbsent(landing, l -> new ArrayList<>()).add(caseId);
          }
        });
    Landing bench = bench(landings.keySet());
    List<EndUse> uses = new ArrayList<>();
    // The way the bench makes it comes first.
    uses.add(new EndUse(bench, landings.getOrDefault(bench, List.of()), true));
    landings.forEach(
        (landing, cases) -> {
          if (!landing.equals(bench)) {
            uses.add(new EndUse(landing, cases, sameEnd(landing, bench)));
          }
        });
    List<String> idle = new ArrayList<>();
    CaseSet set = sets.get(strand.component());
    if (set != null) {
      set.ids().stream().filter(id -> !strand.cases().contains(id)).forEach(idle::add);
    }
    String place = touches.keySet().iterator().next().place();
    if (!idle.isEmpty()) {
      Sundry cap =
          parts
              .cap()
              .orElseThrow(
                  () ->
                      new IllegalStateException(
                          "the parts list has no end cap for ends that are taped back"));
      uses.add(new EndUse(new Landing.Parked(place, cap.id()), idle, false));
    }
    return new LeadEnd(place, uses);
  }

  /** Strip length of an end, mm. */
  double stripMm(Landing landing) {
    ToDoubleFunction<String> terminal =
        id -> order.parts().terminal(id).map(it -> it.strip().mm()).orElse(0.0);
    if (landing instanceof Landing.InCavity in) {
      return terminal.applyAsDouble(in.terminal());
    } else if (landing instanceof Landing.InHousing in) {
      return terminal.applyAsDouble(in.terminal());
    } else if (landing instanceof Landing.InSlot in) {
      return terminal.applyAsDouble(in.terminal());
    } else if (landing instanceof Landing.OnGround on) {
      return order.parts().rings().stream()
          .filter(it -> it.id().equals(on.ring()))
          .mapToDouble(it -> it.strip().mm())
          .sum();
    }
    String splice =
        landing instanceof Landing.IntoCircuit into
            ? into.splice()
            : landing instanceof Landing.InJoint in ? in.splice() : "";
    return order.parts().splices().stream()
        .filter(it -> it.id().equals(splice))
        .mapToDouble(it -> it.strip().mm())
        .sum();
  }

  // A plug that may be there on some builds of the case is looked for on all of them.
  private boolean pullPlug(Touch touch, Strand strand, String caseId) {
    if (!(touch instanceof Touch.AtCavity at)) {
      return false;
    }
    Region region =
        Optional.ofNullable(sets.get(strand.component()))
            .flatMap(set -> set.member(caseId))
            .map(CaseSet.Member::region)
            .orElseGet(facts.builds()::none);
    return order
        .vehicle()
        .connector(at.connector())
        .map(it -> facts.plugged(it, at.cavity()).meets(region))
        .orElse(false);
  }

  private EndParts.Beside beside(Touch touch, Strand strand, Map<Strand, Wire> wires) {
    double area = 0;
    double diameterMm = 0;
    for (Strand other : strands) {
      Wire wire = wires.get(other);
      if (other != strand && wire != null && touch instanceof Touch.AtJoint) {
        boolean meets =
            other.cases().stream()
                .flatMap(id -> other.in(id).stream())
                .anyMatch(
                    it -> it.a().key().equals(touch.key()) || it.b().key().equals(touch.key()));
        area += meets ? wire.size().areaMm2() : 0;
        diameterMm = meets ? Math.max(diameterMm, wire.diameter().mm()) : diameterMm;
      }
    }
    return new EndParts.Beside(area, diameterMm);
  }

  // A terminal or joint made on the bench can be cut off and spliced in the vehicle, not the other
  // way round.
  private static Landing bench(java.util.Set<Landing> landings) {
    return landings.stream()
        .filter(it -> !(it instanceof Landing.IntoCircuit))
        .findFirst()
        .orElseGet(() -> landings.iterator().next());
  }

  private static boolean sameEnd(Landing landing, Landing bench) {
    return made(landing).equals(made(bench)) && !made(bench).isEmpty();
  }

  private static String made(Landing landing) {
    if (landing instanceof Landing.InCavity in) {
      return in.terminal() + in.seal().orElse("");
    } else if (landing instanceof Landing.InHousing in) {
      return in.terminal() + in.seal().orElse("");
    } else if (landing instanceof Landing.InSlot in) {
      return in.terminal();
    } else if (landing instanceof Landing.OnGround on) {
      return on.ring();
    }
    return landing instanceof Landing.IntoCircuit ? "bare" : "";
  }
}
