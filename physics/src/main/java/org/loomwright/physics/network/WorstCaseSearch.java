package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the lowest voltage at each load and the highest current in each element over all states of
 * the switched loads and the supply range, without trying all of them where the structure allows.
 *
 * <ul>
 *   <li>If all switched loads take constant currents and none takes a constant power, the network
 *       is linear: each figure's worst state follows from the shares of the loads and sources.
 *   <li>If every load lowers the voltage at every other ({@link Monotone}), all on at the lowest
 *       supply is worst for the voltages and for most currents.
 *   <li>If there are few enough states, all are solved.
 *   <li>Otherwise those most likely to be worst are solved, and the figures are marked as not
 *       proven.
 * </ul>
 */
public final class WorstCaseSearch {
  private WorstCaseSearch() {}

  /** Searches; never solves more than {@link WorstCaseRequest#mostStates} states. */
  public static WorstCases search(WorstCaseRequest request) {
    Tally tally = new Tally(request);
    if (!FloatingParts.of(request.network()).isEmpty()) {
      tally.solve(request.state(request.switched(), Set.of()));
      return tally.result(q -> WorstCases.Basis.TRIED);
    }
    Optional<WorstCases> linear = Superposition.search(request, tally);
    return linear.orElseGet(() -> nonlinear(request, tally));
  }

  private static WorstCases nonlinear(WorstCaseRequest request, Tally tally) {
    Optional<Monotone> monotone = Monotone.of(request);
    for (LoadState state : candidates(request, monotone)) {
      tally.solve(state);
    }
    // The proof compares with the state of most stress, which must exist, and names the worst among
    // the ends and each load alone, which must all have been tried.
    boolean compares =
        monotone.isPresent()
            && request.mostStates() >= 2 + request.switched().size()
            && tally.hasSolved(request.state(request.switched(), Set.of()));
    Set<String> proven = compares ? monotone.orElseThrow().proven() : Set.of();
    boolean all = proven.size() == Tally.figures(request.network()).size();
    boolean few =
        request.states().bitLength() < Integer.SIZE
            && request.states().intValueExact() <= request.mostStates();
    boolean endsSuffice = request.ranged().isEmpty() || !hasPower(request.network());
    if (!all && few) {
      everyState(request, tally);
    }
    WorstCases.Basis rest =
        !all && few && endsSuffice ? WorstCases.Basis.EXHAUSTIVE : WorstCases.Basis.TRIED;
    return tally.result(q -> proven.contains(q) ? WorstCases.Basis.MONOTONE : rest);
  }

  private static boolean hasPower(Network network) {
    return network.all(ConstantPower.class).stream().anyMatch(p -> p.powerW() > 0);
  }

  private static void everyState(WorstCaseRequest request, Tally tally) {
    List<String> loads = List.copyOf(request.switched());
    List<String> sources = request.ranged();
    int bits = loads.size() + sources.size();
    for (int code = 0; code < 1 << bits; code++) {
      Set<String> on = new LinkedHashSet<>();
      Set<String> high = new LinkedHashSet<>();
      for (int i = 0; i < bits; i++) {
        if ((code >> i & 1) == 1) {
          if (i < loads.size()) {
            on.add(loads.get(i));
          } else {
            high.add(sources.get(i - loads.size()));
          }
        }
      }
      tally.solve(request.state(on, high));
    }
  }

  /** States likely to be worst for something, most likely first, no more than may be solved. */
  private static List<LoadState> candidates(WorstCaseRequest request, Optional<Monotone> monotone) {
    Set<LoadState> states = new LinkedHashSet<>();
    List<Set<String>> supplies = List.of(Set.of(), new LinkedHashSet<>(request.ranged()));
    Set<String> all = request.switched();
    states.add(request.state(all, supplies.get(0)));
    states.add(request.state(Set.of(), supplies.get(1)));
    for (String load : all) {
      states.add(request.state(Set.of(load), supplies.get(1)));
    }
    states.add(request.state(all, supplies.get(1)));
    states.add(request.state(Set.of(), supplies.get(0)));
    for (Set<String> on : monotone.map(Monotone::drivers).orElse(List.of())) {
      supplies.forEach(high -> states.add(request.state(on, high)));
    }
    for (String load : all) {
      Set<String> others = new LinkedHashSet<>(all);
      others.remove(load);
      supplies.forEach(high -> states.add(request.state(others, high)));
    }
    List<LoadState> first = new ArrayList<>(states);
    return first.subList(0, Math.min(first.size(), request.mostStates()));
  }
}
