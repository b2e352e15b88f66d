package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the lowest voltage at each load and the highest current in each element over all states of
 * the switched loads and the supply range, without trying all of them where the structure allows.
 *
 * <ul>
 *   <li>Loads of constant current alone leave the network linear: each figure's worst state follows
 *       from the shares of the loads and sources ({@link Superposition}).
 *   <li>If every load lowers the voltage at every other, all on at the lowest supply is worst for
 *       the voltages and for most currents ({@link Monotone}).
 *   <li>Where switched resistors are in the way, the above is done for each set of resistors.
 *   <li>If figures are left and there are few enough states, all are solved.
 *   <li>Otherwise those most likely to be worst are solved, and the figures are marked as not
 *       proven.
 * </ul>
 */
public final class WorstCaseSearch {
  private final WorstCaseRequest request;
  private final Tally tally;
  private final Map<String, WorstCases.Basis> proven = new LinkedHashMap<>();

  private WorstCaseSearch(WorstCaseRequest request) {
    this.request = request;
    this.tally = new Tally(request);
  }

  /** Searches; never solves more than {@link WorstCaseRequest#mostStates} states. */
  public static WorstCases search(WorstCaseRequest request) {
    return new WorstCaseSearch(request).search();
  }

  private WorstCases search() {
    List<String> resistors =
        request.network().all(ConstantResistance.class).stream()
            .map(Element::name)
            .filter(request.switched()::contains)
            .toList();
    Optional<Monotone> monotone = Optional.empty();
    if (resistors.isEmpty()) {
      proven.putAll(proveFor(request, Set.of()));
    } else {
      monotone = Monotone.withResistors(request);
      monotone.ifPresent(this::proveWithResistors);
      if (open() && resistors.size() < Integer.SIZE - 1 && 1 << resistors.size() <= most()) {
        proveForEachSet(resistors);
      }
    }
    boolean every = open() && everyState();
    if (open() && !every) {
      likely(monotone.or(() -> Monotone.withoutResistors(request))).forEach(tally::solve);
    }
    boolean endsSuffice = request.ranged().isEmpty() || !hasPower();
    WorstCases.Basis rest =
        every && endsSuffice ? WorstCases.Basis.EXHAUSTIVE : WorstCases.Basis.TRIED;
    return tally.result(key -> proven.getOrDefault(key, rest));
  }

  private int most() {
    return request.mostStates();
  }

  /** Whether figures are left to prove. */
  private boolean open() {
    return proven.size() < Tally.figures(request.network()).size();
  }

  private boolean hasPower() {
    return request.network().all(ConstantPower.class).stream().anyMatch(p -> p.powerW() > 0);
  }

  /**
   * Figures that are certain while some switched resistors are on and all others gone.
   *
   * @param sub the network with those resistors, always on
   * @param on names of those resistors
   */
  private Map<String, WorstCases.Basis> proveFor(WorstCaseRequest sub, Set<String> on) {
    Map<String, WorstCases.Basis> found = new LinkedHashMap<>();
    if (Superposition.search(sub, on, request, tally)) {
      Tally.figures(sub.network()).forEach(k -> found.put(k, WorstCases.Basis.SUPERPOSITION));
      return found;
    }
    Set<String> all = new LinkedHashSet<>(sub.switched());
    all.addAll(on);
    Set<LoadState> states = new LinkedHashSet<>();
    states.add(request.state(all, Set.of()));
    states.add(request.state(on, Set.copyOf(request.ranged())));
    if (request.ranged().size() <= Monotone.MOST_RANGED) {
      for (int code = 1; code < 1 << request.ranged().size(); code++) {
        states.add(request.state(all, chosen(request.ranged(), code)));
      }
    }
    states.forEach(tally::solve);
    // The proof compares with the state of most stress and names these states: all must exist.
    if (states.stream().allMatch(tally::hasSolved)) {
      Monotone.withoutResistors(sub)
          .ifPresent(m -> m.proven().forEach(k -> found.put(k, WorstCases.Basis.MONOTONE)));
    }
    return found;
  }

  /** Resistors switched in a network where every load lowers every other. */
  private void proveWithResistors(Monotone monotone) {
    Set<String> high = Set.copyOf(request.ranged());
    List<LoadState> states = new ArrayList<>();
    states.add(request.state(request.switched(), Set.of()));
    states.add(request.state(Set.of(), high));
    // A resistor takes most when it is alone on.
    request.switched().forEach(load -> states.add(request.state(Set.of(load), high)));
    states.forEach(tally::solve);
    if (states.stream().allMatch(tally::hasSolved)) {
      monotone.proven().forEach(k -> proven.put(k, WorstCases.Basis.MONOTONE));
    }
  }

  /** A figure is certain if it is so for each set of resistors that may be on. */
  private void proveForEachSet(List<String> resistors) {
    Set<String> certain = Tally.figures(request.network());
    for (int code = 0; code < 1 << resistors.size(); code++) {
      Set<String> on = chosen(resistors, code);
      WorstCaseRequest sub = request.withResistors(resistors, on);
      Set<String> here = Tally.figures(sub.network());
      here.removeAll(proveFor(sub, on).keySet());
      certain.removeAll(here);
    }
    certain.forEach(k -> proven.putIfAbsent(k, WorstCases.Basis.EXHAUSTIVE));
  }

  private static Set<String> chosen(List<String> names, long code) {
    Set<String> found = new LinkedHashSet<>();
    for (int i = 0; i < names.size(); i++) {
      if ((code >> i & 1) == 1) {
        found.add(names.get(i));
      }
    }
    return found;
  }

  /** Solves all states, if that is allowed. */
  private boolean everyState() {
    if (request.states().bitLength() >= Integer.SIZE || request.states().intValue() > most()) {
      return false;
    }
    List<String> loads = List.copyOf(request.switched());
    List<String> sources = request.ranged();
    for (int code = 0; code < request.states().intValue(); code++) {
      tally.solve(request.state(chosen(loads, code), chosen(sources, (long) code >> loads.size())));
    }
    return request.states().intValue() <= tally.count();
  }

  /** States likely to be worst for something, most likely first. */
  private Set<LoadState> likely(Optional<Monotone> monotone) {
    Set<LoadState> states = new LinkedHashSet<>();
    List<Set<String>> supplies = List.of(Set.of(), Set.copyOf(request.ranged()));
    Set<String> all = request.switched();
    for (Set<String> high : supplies) {
      states.add(request.state(all, high));
      states.add(request.state(Set.of(), high));
    }
    for (String load : all) {
      states.add(request.state(Set.of(load), supplies.get(1)));
    }
    for (Set<String> on : monotone.map(Monotone::drivers).orElse(List.of())) {
      supplies.forEach(high -> states.add(request.state(on, high)));
    }
    for (String load : all) {
      Set<String> others = new LinkedHashSet<>(all);
      others.remove(load);
      supplies.forEach(high -> states.add(request.state(others, high)));
    }
    return states;
  }
}
