package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.rules.RunDefaults;
import org.loomwright.model.vehicle.Run;
import org.loomwright.planner.route.Laying;
import org.loomwright.planner.route.Route;
import org.loomwright.planner.route.Routes;
import org.loomwright.planner.tree.Ends;
import org.loomwright.planner.tree.Forest;
import org.loomwright.planner.tree.ForestFinder;
import org.loomwright.planner.tree.Link;

/**
 * Strands pulled together into one tree, or several that do not touch: of all that join the places
 * they end at, the one of least weighed length found.
 *
 * @param strands the same strands on their ways in the tree
 * @param weighedMm weighed length of the runs in use
 * @param leastWeighedMm proven least such length
 * @param exact whether nothing shorter exists
 * @param notes how near to the least it is, and which leads go a long way round
 */
record PulledTogether(
    List<Strand> strands,
    double weighedMm,
    double leastWeighedMm,
    boolean exact,
    List<String> notes) {
  PulledTogether {
    strands = List.copyOf(strands);
    notes = List.copyOf(notes);
  }

  static PulledTogether of(KitOrder order, List<Strand> strands, Routes routes) {
    Laying laying = routes.laying();
    Map<String, Run> runs = new HashMap<>();
    List<Link> links = new ArrayList<>();
    for (Run run : laying.usable()) {
      runs.put(run.id(), run);
      links.add(new Link(run.id(), run.from(), run.to(), laying.weighedMm(run)));
    }
    Set<Ends> pairs = new LinkedHashSet<>();
    strands.forEach(it -> pairs.add(ends(it)));
    Forest forest =
        ForestFinder.of(links)
            .joining(List.copyOf(pairs), RunDefaults.mostDetour(order.rules()).value().fraction())
            .orElseThrow(() -> new IllegalStateException("a lead whose ends no run joins"));
    List<Strand> moved = new ArrayList<>();
    for (Strand strand : strands) {
      Ends ends = ends(strand);
      List<Run> along =
          forest.path(ends.from(), ends.to()).stream()
              .map(Link::id)
              .flatMap(id -> Optional.ofNullable(runs.get(id)).stream())
              .toList();
      moved.add(strand.along(Route.along(order.vehicle(), ends.from(), along)));
    }
    return new PulledTogether(
        moved, forest.cost(), forest.leastCost(), forest.exact(), notes(forest));
  }

  private static List<String> notes(Forest forest) {
    List<String> notes = new ArrayList<>();
    notes.add(
        forest.exact()
            ? "Leads lie in the tree of least weighed length; none shorter joins the same places."
            : String.format(
                Locale.ROOT,
                "Leads lie in a tree of %.0f mm weighed length; any other has at least %.0f mm.",
                forest.cost(),
                forest.leastCost()));
    forest.notes().forEach(note -> notes.add("Tree of the leads: " + note + "."));
    return notes;
  }

  private static Ends ends(Strand strand) {
    List<String> places = strand.route().places();
    return new Ends(places.get(0), places.get(places.size() - 1));
  }
}
