package org.loomwright.planner.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;

/**
 * Finds the questions that a customer is asked: traits that can be told without opening the vehicle
 * and whose value can change what is known of something to be decided.
 */
final class Asked {
  private final Vehicle vehicle;
  private final Builds builds;
  private final List<String> inside = new ArrayList<>();
  private final Map<String, Set<Topic>> found = new LinkedHashMap<>();

  Asked(Vehicle vehicle, Builds builds) {
    this.vehicle = vehicle;
    this.builds = builds;
    for (Trait trait : builds.traits().values()) {
      if (!isOutside(trait)) {
        inside.add(trait.id());
      }
    }
  }

  /**
   * Whether a customer can tell it: the owner knows it, or it is seen with nothing opened.
   * Measuring is not for customers, even where nothing is in the way.
   */
  static boolean isOutside(Trait trait) {
    return trait.tell().how() == TellHow.ASK_OWNER
        || trait.tell().how() == TellHow.LOOK && trait.tell().openings().isEmpty();
  }

  /** Takes in what has to be decided: regions of which each build is in at most one. */
  void decide(Topic topic, List<Region> outcomes) {
    for (Region outcome : outcomes) {
      Region may = outcome.blurred(inside);
      Region others = builds.possible().minus(may);
      // Rules can tie a trait that is not asked for to one that is; ask as few as possible anew.
      List<String> keep = new ArrayList<>(builds.traits().keySet());
      keep.removeAll(inside);
      keep.removeAll(found.keySet());
      keep.addAll(found.keySet());
      for (String trait : may.apartFrom(others, keep)) {
        found.computeIfAbsent(trait, id -> EnumSet.noneOf(Topic.class)).add(topic);
      }
    }
  }

  /** What a question helps to decide. */
  Set<Topic> topics(Trait trait) {
    return found.getOrDefault(trait.id(), Set.of());
  }

  /**
   * The traits to ask for: first what the owner knows, then what one looks at, place by place in
   * the order of the document.
   */
  List<Trait> traits() {
    List<String> places = new ArrayList<>();
    builds.traits().values().forEach(it -> places.add(it.tell().place()));
    return builds.traits().values().stream()
        .filter(it -> found.containsKey(it.id()))
        .sorted(
            Comparator.<Trait, Boolean>comparing(it -> it.tell().how() != TellHow.ASK_OWNER)
                .thenComparing(
                    it ->
                        it.tell().how() == TellHow.ASK_OWNER
                            ? 0
                            : places.indexOf(it.tell().place())))
        .toList();
  }

  /** A trait as a question. */
  FitQuestion question(Trait trait) {
    double whole =
        trait.values().stream()
            .mapToDouble(it -> it.share().map(share -> share.fraction()).orElse(1.0))
            .sum();
    List<FitQuestion.Option> options =
        trait.values().stream()
            .map(
                it ->
                    new FitQuestion.Option(
                        it.id(),
                        it.words(),
                        trait.tell().expect().getOrDefault(it.id(), ""),
                        it.share().map(share -> share.fraction()).orElse(1.0) / whole))
            .toList();
    return new FitQuestion(
        trait.id(),
        trait.name(),
        trait.tell().question(),
        trait.tell().how(),
        vehicle.place(trait.tell().place()).map(it -> it.name()).orElse(trait.tell().place()),
        options,
        topics(trait));
  }
}
