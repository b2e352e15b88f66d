package org.loomwright.physics.network;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;

/**
 * A network whose loads can be switched and whose sources have ranges.
 *
 * @param network the network with all loads; the electromotive forces of sources without a range
 *     count as given
 * @param switched names of the loads that may be on or off, each on its own; the others are always
 *     on
 * @param ranges range of the electromotive force of a source, by name
 * @param mostStates most states to solve, at least 1
 */
public record WorstCaseRequest(
    Network network, Set<String> switched, Map<String, EmfRange> ranges, int mostStates) {
  /** Most states to solve unless said otherwise. */
  public static final int USUAL_MOST_STATES = 4096;

  /**
   * Checks the names.
   *
   * @throws SumException if a load or source is not in the network
   */
  public WorstCaseRequest {
    switched = Collections.unmodifiableSet(new LinkedHashSet<>(switched));
    ranges = Collections.unmodifiableMap(new LinkedHashMap<>(ranges));
    for (String load : switched) {
      network.find(Load.class, load);
    }
    for (String source : ranges.keySet()) {
      network.find(Source.class, source);
    }
    Require.within("number of states to solve", mostStates, 1, Integer.MAX_VALUE, "states");
  }

  /**
   * @param lowV lowest electromotive force, V
   * @param highV highest, V, not below the lowest
   */
  public record EmfRange(double lowV, double highV) {
    /** Checks the order. */
    public EmfRange {
      Require.notNegative("lowest electromotive force", lowV, "V");
      if (!(highV >= lowV)) {
        throw new SumException(
            "highest electromotive force must be at least the lowest, "
                + Require.text(lowV)
                + " V, but is "
                + Require.text(highV)
                + " V");
      }
      Require.notNegative("highest electromotive force", highV, "V");
    }
  }

  /** How many states there are: every load on or off, every range at its lowest or highest. */
  BigInteger states() {
    long ends = ranges.values().stream().filter(r -> r.highV() > r.lowV()).count();
    return BigInteger.ONE.shiftLeft(switched.size() + (int) ends);
  }

  /** The network in one state. */
  Network in(LoadState state) {
    List<String> off = switched.stream().filter(s -> !state.on().contains(s)).toList();
    Map<String, Source> sources = new LinkedHashMap<>();
    state
        .emfV()
        .forEach((name, emf) -> sources.put(name, network.find(Source.class, name).withEmf(emf)));
    return network.without(off).with(sources);
  }

  /** A state from the loads that are on and, for each ranged source, whether it stands high. */
  LoadState state(Set<String> on, Set<String> high) {
    Set<String> ordered = new LinkedHashSet<>(switched);
    ordered.retainAll(on);
    Map<String, Double> emf = new LinkedHashMap<>();
    ranges.forEach((name, r) -> emf.put(name, high.contains(name) ? r.highV() : r.lowV()));
    return new LoadState(ordered, emf);
  }

  /** Sources whose range has two different ends. */
  List<String> ranged() {
    List<String> found = new ArrayList<>();
    ranges.forEach(
        (name, r) -> {
          if (r.highV() > r.lowV()) {
            found.add(name);
          }
        });
    return found;
  }

  /** Highest electromotive force a source may have, V. */
  double highestV(Source s) {
    EmfRange r = ranges.get(s.name());
    return r == null ? s.emfV() : r.highV();
  }

  /** Lowest electromotive force a source may have, V. */
  double lowestV(Source s) {
    EmfRange r = ranges.get(s.name());
    return r == null ? s.emfV() : r.lowV();
  }

  /** The request with some resistors on for good and the others gone. */
  WorstCaseRequest withResistors(List<String> resistors, Set<String> on) {
    Set<String> left = new LinkedHashSet<>(switched);
    resistors.forEach(left::remove);
    List<String> gone = resistors.stream().filter(r -> !on.contains(r)).toList();
    return new WorstCaseRequest(network.without(gone), left, ranges, mostStates);
  }
}
