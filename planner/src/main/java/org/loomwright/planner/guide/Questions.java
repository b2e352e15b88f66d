package org.loomwright.planner.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.watch.PlanningStopped;
import org.loomwright.planner.ways.Reach;

/**
 * Which traits to ask for, in which order and on which builds, so that afterwards the answers
 * decide everything that has to be decided.
 *
 * <p>A question is asked only where it can still change a decision: on builds that, with all later
 * questions answered, could not be told from others that need different treatment; and where an act
 * that can't be undone easily rests on a reading, even if the vehicle's rules imply it. Within each
 * phase the order of least expected effort is found by trying all orders of up to five traits;
 * longer phases are ordered by effort.
 */
final class Questions {
  private static final int MOST_TRIED = 5;

  private final Vehicle vehicle;
  private final Builds builds;
  private final List<Region> decisions;

  private final Map<String, Region> readings;

  /**
   * @param decisions regions that the answers must decide
   * @param readings traits that must be read off on some builds whatever is implied already,
   *     because an act there can't be undone easily
   */
  Questions(Vehicle vehicle, Builds builds, List<Region> decisions, Map<String, Region> readings) {
    this.readings = Map.copyOf(readings);
    this.vehicle = vehicle;
    this.builds = builds;
    this.decisions = decisions.stream().distinct().filter(it -> !it.isEmpty()).toList();
  }

  /** The questions in order. */
  List<Question> find() {
    Set<String> inPlay = new TreeSet<>();
    decisions.forEach(decision -> inPlay.addAll(decision.traits()));
    inPlay.addAll(readings.keySet());
    Map<Phase, List<Trait>> phases = new LinkedHashMap<>();
    for (Phase phase : Phase.values()) {
      phases.put(
          phase,
          builds.traits().values().stream()
              .filter(trait -> inPlay.contains(trait.id()))
              .filter(trait -> Phase.of(trait.tell()) == phase)
              .sorted(Comparator.comparingDouble(this::effort).thenComparing(Trait::id))
              .toList());
    }
    List<Trait> order = new ArrayList<>();
    for (Phase phase : Phase.values()) {
      order.addAll(phases.getOrDefault(phase, List.of()));
    }
    int start = 0;
    for (Phase phase : Phase.values()) {
      int size = phases.getOrDefault(phase, List.of()).size();
      if (size > 1 && size <= MOST_TRIED) {
        order = cheapest(order, start, size);
      }
      start += size;
    }
    return ask(order);
  }

  private List<Trait> cheapest(List<Trait> order, int start, int size) {
    List<Trait> best = order;
    double least = expected(order);
    for (List<Trait> part : permutations(order.subList(start, start + size))) {
      List<Trait> candidate = new ArrayList<>(order);
      for (int i = 0; i < size; i++) {
        candidate.set(start + i, part.get(i));
      }
      double effort = expected(candidate);
      if (effort < least - 1e-9) {
        least = effort;
        best = candidate;
      }
    }
    return best;
  }

  private double expected(List<Trait> order) {
    return ask(order).stream().mapToDouble(it -> it.on().share() * effort(it.trait())).sum();
  }

  private List<Question> ask(List<Trait> order) {
    // Builds by the set of traits asked so far.
    Map<Set<String>, Region> asked = new LinkedHashMap<>();
    asked.put(Set.of(), builds.possible());
    List<Question> questions = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      PlanningStopped.ifAsked();
      Trait trait = order.get(i);
      List<String> later = order.subList(i + 1, order.size()).stream().map(Trait::id).toList();
      Map<Set<String>, Region> next = new LinkedHashMap<>();
      Region on = builds.none();
      for (Map.Entry<Set<String>, Region> one : asked.entrySet()) {
        Region useful = useful(trait, one.getKey(), later, one.getValue());
        Region rest = one.getValue().minus(useful);
        if (!useful.isEmpty()) {
          Set<String> more = new LinkedHashSet<>(new TreeSet<>(one.getKey()));
          more.add(trait.id());
          next.merge(new TreeSet<>(more), useful, Region::or);
          on = on.or(useful);
        }
        if (!rest.isEmpty()) {
          next.merge(new TreeSet<>(one.getKey()), rest, Region::or);
        }
      }
      asked = next;
      if (!on.isEmpty()) {
        questions.add(new Question(trait, on));
      }
    }
    return questions;
  }

  // Builds of the region on which leaving the question out would leave something undecided even
  // when
  // all later ones are asked; widened to all builds with the same answers so far.
  private Region useful(Trait trait, Set<String> known, List<String> later, Region region) {
    List<String> hidden = new ArrayList<>(builds.traits().keySet());
    hidden.removeAll(known);
    List<String> unasked = new ArrayList<>(hidden);
    hidden.removeAll(later);
    Region open = readings.getOrDefault(trait.id(), builds.none()).and(region);
    for (Region decision : decisions) {
      Region yes = region.and(decision).blurred(hidden);
      Region no = region.minus(decision).blurred(hidden);
      open = open.or(yes.and(no).and(region));
    }
    return open.isEmpty() ? open : open.blurred(unasked).and(region);
  }

  /** Minutes a question takes, its openings included. */
  double effort(Trait trait) {
    double minutes = trait.tell().effort().seconds() / 60;
    for (String id : Reach.inOrder(vehicle, trait.tell().openings())) {
      minutes += vehicle.opening(id).map(Opening::open).map(it -> it.seconds() / 60).orElse(0.0);
    }
    return minutes;
  }

  private static List<List<Trait>> permutations(List<Trait> items) {
    if (items.isEmpty()) {
      return List.of(List.of());
    }
    List<List<Trait>> result = new ArrayList<>();
    for (Trait first : items) {
      List<Trait> rest = new ArrayList<>(items);
      rest.remove(first);
      for (List<Trait> tail : permutations(rest)) {
        List<Trait> one = new ArrayList<>(List.of(first));
        one.addAll(tail);
        result.add(one);
      }
    }
    return result;
  }
}
