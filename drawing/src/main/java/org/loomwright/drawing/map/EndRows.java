package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.vehicle.Vehicle;

/** What ends at a place, over all cases: as the bench makes it first, then what is reworked. */
final class EndRows {
  private final Plan plan;
  private final Vehicle vehicle;
  private final Map<String, Integer> leads;

  EndRows(Plan plan, Vehicle vehicle, Map<String, Integer> leads) {
    this.plan = plan;
    this.vehicle = vehicle;
    this.leads = leads;
  }

  private record Key(EndKind kind, String words, boolean rework) {}

  /** Rows of a place, in the order of the leads; parked ends last. */
  List<EndRow> at(String place) {
    Map<Key, List<EndRow.End>> rows = new LinkedHashMap<>();
    Map<Key, List<EndRow.End>> late = new LinkedHashMap<>();
    for (Lead lead : plan.design().leads()) {
      for (LeadEnd end : List.of(lead.a(), lead.b())) {
        if (!end.place().equals(place)) {
          continue;
        }
        for (EndUse use : end.uses()) {
          EndKind kind = kind(use.landing());
          boolean rework = !use.asMade() && kind != EndKind.PARKED;
          (rework || kind == EndKind.PARKED ? late : rows)
              .computeIfAbsent(new Key(kind, words(use.landing()), rework), k -> new ArrayList<>())
              .add(
                  new EndRow.End(
                      leads.getOrDefault(lead.id(), 0), where(use.landing()), shown(lead, use)));
        }
      }
    }
    List<EndRow> all = new ArrayList<>();
    rows.forEach((key, ends) -> all.add(new EndRow(key.kind(), key.words(), false, ends)));
    late.forEach((key, ends) -> all.add(new EndRow(key.kind(), key.words(), key.rework(), ends)));
    return all;
  }

  /** Cases in which a lead joins what it is for; empty for all of its component. */
  static List<String> only(Plan plan, Lead lead) {
    Set<String> in = new LinkedHashSet<>(live(lead.a()));
    in.retainAll(live(lead.b()));
    return in.containsAll(component(plan, lead)) ? List.of() : List.copyOf(in);
  }

  /** Whether a lead serves every case of its component. */
  static boolean always(Plan plan, Lead lead) {
    Set<String> in = new LinkedHashSet<>(live(lead.a()));
    in.retainAll(live(lead.b()));
    return in.containsAll(component(plan, lead));
  }

  private static List<String> live(LeadEnd end) {
    return end.uses().stream()
        .filter(it -> it.asMade() || !(it.landing() instanceof Landing.Parked))
        .flatMap(it -> it.cases().stream())
        .toList();
  }

  private static List<String> component(Plan plan, Lead lead) {
    return plan.cases().stream()
        .filter(it -> it.component().equals(lead.component()))
        .map(Case::id)
        .toList();
  }

  private List<String> shown(Lead lead, EndUse use) {
    if (use.cases().isEmpty()) {
      return List.of("no case");
    }
    return use.cases().containsAll(component(plan, lead)) ? List.of() : use.cases();
  }

  private static EndKind kind(Landing landing) {
    if (landing instanceof Landing.InCavity) {
      return EndKind.CONNECTOR;
    } else if (landing instanceof Landing.InHousing) {
      return EndKind.HOUSING;
    } else if (landing instanceof Landing.InSlot) {
      return EndKind.BLOCK;
    } else if (landing instanceof Landing.OnGround) {
      return EndKind.GROUND;
    } else if (landing instanceof Landing.IntoCircuit) {
      return EndKind.CIRCUIT;
    }
    return landing instanceof Landing.InJoint ? EndKind.JOINT : EndKind.PARKED;
  }

  private String words(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return vehicle.connector(it.connector()).map(known -> known.name()).orElse(it.connector());
    } else if (landing instanceof Landing.InHousing it) {
      return plan.design().housings().stream()
          .filter(known -> known.id().equals(it.housing()))
          .map(known -> "housing for the " + known.matesWith())
          .findFirst()
          .orElse(it.housing());
    } else if (landing instanceof Landing.InSlot it) {
      return vehicle.fuseBlock(it.block()).map(known -> known.name()).orElse(it.block());
    } else if (landing instanceof Landing.OnGround it) {
      return vehicle.ground(it.ground()).map(known -> known.name()).orElse(it.ground());
    } else if (landing instanceof Landing.IntoCircuit it) {
      return vehicle.circuit(it.circuit()).map(known -> known.name()).orElse(it.circuit());
    }
    return landing instanceof Landing.InJoint it ? "joint " + it.joint() : "parked";
  }

  private static String where(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return it.cavity();
    } else if (landing instanceof Landing.InHousing it) {
      return it.cavity();
    }
    return landing instanceof Landing.InSlot it ? it.slot() : "";
  }
}
