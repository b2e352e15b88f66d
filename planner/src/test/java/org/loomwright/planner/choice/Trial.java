package org.loomwright.planner.choice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.LeadDraft;
import org.loomwright.planner.ways.Use;
import org.loomwright.planner.ways.Way;

/** Tries every set of ways, one per need. */
final class Trial {
  private final Map<NeedAt, List<Way>> ways;
  private final ToDoubleFunction<LeadDraft> leadCost;
  private final ToDoubleFunction<String> openingCost;
  private final List<List<NeedAt>> components;

  /**
   * Tries the ways that one build has.
   *
   * @param components needs planned together; an opening is paid once in each
   */
  Trial(
      Map<NeedAt, List<Way>> ways,
      ToDoubleFunction<LeadDraft> leadCost,
      ToDoubleFunction<String> openingCost,
      List<List<NeedAt>> components) {
    this.ways = ways;
    this.leadCost = leadCost;
    this.openingCost = openingCost;
    this.components = components;
  }

  /** Cost of the cheapest set that meets the needs, empty when there is none. */
  Optional<Double> best(List<NeedAt> needs) {
    return best(needs, 0, new ArrayList<>());
  }

  private Optional<Double> best(List<NeedAt> needs, int from, List<Way> chosen) {
    if (from == needs.size()) {
      return fits(chosen) ? Optional.of(cost(chosen)) : Optional.empty();
    }
    Optional<Double> best = Optional.empty();
    for (Way way : ways.getOrDefault(needs.get(from), List.of())) {
      chosen.add(way);
      Optional<Double> cost = best(needs, from + 1, chosen);
      chosen.remove(chosen.size() - 1);
      if (cost.isPresent() && (best.isEmpty() || cost.get() < best.get())) {
        best = cost;
      }
    }
    return best;
  }

  /** Own cost of each way, each lead once, each opening once per component. */
  double cost(Collection<Way> chosen) {
    double cost = 0;
    Set<String> leads = new HashSet<>();
    Set<String> opened = new HashSet<>();
    for (Way way : chosen) {
      cost += way.ownCost();
      for (LeadDraft lead : way.leads()) {
        cost += leads.add(lead.key()) ? leadCost.applyAsDouble(lead) : 0;
      }
      for (String opening : way.openings()) {
        int part = part(way.need());
        cost += opened.add(part + " " + opening) ? openingCost.applyAsDouble(opening) : 0;
      }
    }
    return cost;
  }

  private int part(NeedAt need) {
    for (int i = 0; i < components.size(); i++) {
      if (components.get(i).contains(need)) {
        return i;
      }
    }
    throw new AssertionError(need.id() + " belongs to no component");
  }

  /** No cavity for two pins, no slot for two leads, no joint with two feeds, no limit exceeded. */
  static boolean fits(Collection<Way> chosen) {
    Map<String, String> holders = new HashMap<>();
    Map<String, Double> used = new HashMap<>();
    for (Way way : chosen) {
      for (LeadDraft lead : way.leads()) {
        if (!take(holders, lead.a(), way, lead, false)
            || !take(holders, lead.b(), way, lead, true)) {
          return false;
        }
      }
      for (Use use : way.uses()) {
        if (used.merge(use.resource(), use.amount(), Double::sum) > use.limit() + 1e-9) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean take(
      Map<String, String> holders, Touch touch, Way way, LeadDraft lead, boolean end) {
    String holder = "";
    if (touch instanceof Touch.AtCavity || touch instanceof Touch.AtHousing) {
      holder = way.need().id();
    } else if (touch instanceof Touch.AtSlot || touch instanceof Touch.AtJoint && end) {
      holder = lead.key();
    }
    String before = holder.isEmpty() ? null : holders.put(touch.key(), holder);
    return before == null || before.equals(holder);
  }
}
