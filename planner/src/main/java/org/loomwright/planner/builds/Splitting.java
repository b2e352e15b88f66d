package org.loomwright.planner.builds;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;

/**
 * Splits regions by some traits into a decision diagram. Answers that leave the same open meet
 * again, so that the work grows with the diagram and not with the number of combinations.
 *
 * @param <T> what the ends hold
 */
public final class Splitting<T> {
  private record Key(int trait, List<Rest> rests) {}

  private final List<Trait> traits;
  private final Function<List<Rest>, T> end;
  private final Diagram.Maker<T> maker = new Diagram.Maker<>();
  private final Map<Key, Integer> known = new HashMap<>();

  private Splitting(List<Trait> traits, Function<List<Rest>, T> end) {
    this.traits = List.copyOf(traits);
    this.end = end;
  }

  /**
   * A diagram over some traits.
   *
   * @param traits the traits in the order in which they are asked for
   * @param regions what is split; one region or more of the same builds
   * @param end what an end holds, from what is left of each region there
   */
  public static <T> Diagram<T> of(
      List<Trait> traits, List<Region> regions, Function<List<Rest>, T> end) {
    Splitting<T> splitting = new Splitting<>(traits, end);
    return splitting.maker.done(splitting.split(0, regions.stream().map(Rest::of).toList()));
  }

  private int split(int trait, List<Rest> rests) {
    Key key = new Key(trait, rests);
    Integer before = known.get(key);
    if (before != null) {
      return before;
    }
    int way;
    if (trait == traits.size()) {
      way = maker.end(end.apply(rests));
    } else {
      List<Integer> next = new ArrayList<>();
      for (TraitValue value : traits.get(trait).values()) {
        next.add(
            split(
                trait + 1,
                rests.stream().map(rest -> rest.given(traits.get(trait), value)).toList()));
      }
      way = maker.node(trait, next);
    }
    known.put(key, way);
    return way;
  }
}
