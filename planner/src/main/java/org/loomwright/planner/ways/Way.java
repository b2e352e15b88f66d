package org.loomwright.planner.ways;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.need.NeedAt;

/**
 * One possible way to meet one need.
 *
 * @param id stable name, used by wishes and for ties
 * @param need need
 * @param kind kind
 * @param words the way in words
 * @param demands what it needs of the vehicle
 * @param when builds on which all demands hold
 * @param leads leads it brings
 * @param uses capacity it takes up
 * @param openings what has to be open; an opening several ways need is paid once
 * @param ownCost cost beside leads and openings: work in the vehicle
 * @param undo how it can be taken back, the hardest of its acts
 * @param host factory circuit it relies on, if any
 * @param weak check it is bound to fail, in words; taken only where nothing else is left, so that
 *     the plan shows the failing check with its figure
 * @param forbidden why it is not allowed
 */
public record Way(
    String id,
    NeedAt need,
    WayKind kind,
    String words,
    List<Demand> demands,
    Region when,
    List<LeadDraft> leads,
    List<Use> uses,
    List<String> openings,
    double ownCost,
    Undo undo,
    Optional<Circuit> host,
    Optional<String> weak,
    Optional<String> forbidden) {
  public Way {
    demands = List.copyOf(demands);
    leads = List.copyOf(leads);
    uses = List.copyOf(uses);
    openings = List.copyOf(openings);
  }

  // Ways are looked up in tables all the time, and of one order no two have the same id.
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** Whether the planner may choose it anywhere. */
  public boolean isOpen() {
    return forbidden.isEmpty() && !when.isEmpty();
  }

  /** The same way, forbidden for a reason. */
  public Way forbid(String reason) {
    return new Way(
        id,
        need,
        kind,
        words,
        demands,
        when,
        leads,
        uses,
        openings,
        ownCost,
        undo,
        host,
        weak,
        forbidden.or(() -> Optional.of(reason)));
  }

  /** The same way at another cost of its own. */
  public Way withOwnCost(double cost) {
    return new Way(
        id, need, kind, words, demands, when, leads, uses, openings, cost, undo, host, weak,
        forbidden);
  }
}
