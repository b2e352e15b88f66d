package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Solves states, each once, and keeps the worst figures seen. */
final class Tally {
  private final WorstCaseRequest request;
  private final Map<LoadState, NetworkOutcome> outcomes = new LinkedHashMap<>();
  private final Map<String, Figure> figures = new LinkedHashMap<>();

  Tally(WorstCaseRequest request) {
    this.request = request;
  }

  /** A figure and the state that gives it. */
  record Figure(double value, LoadState state) {}

  /** Key of the voltage across a load. */
  static String voltageOf(Element load) {
    return "V " + load.name();
  }

  /** Key of the current through an element. */
  static String currentOf(Element e) {
    return "I " + e.name();
  }

  /** Keys of all figures asked for. */
  static Set<String> figures(Network network) {
    Set<String> keys = new LinkedHashSet<>();
    network.all(Load.class).forEach(l -> keys.add(voltageOf(l)));
    network.elements().forEach(e -> keys.add(currentOf(e)));
    return keys;
  }

  int count() {
    return outcomes.size();
  }

  boolean hasSolved(LoadState state) {
    return outcomes.get(state) instanceof Solved;
  }

  /** Solves a state, unless it has been solved already or no more may be solved. */
  void solve(LoadState state) {
    if (outcomes.containsKey(state) || outcomes.size() >= request.mostStates()) {
      return;
    }
    NetworkOutcome outcome = NetworkSolver.solve(request.in(state));
    outcomes.put(state, outcome);
    if (outcome instanceof Solved solved) {
      for (Element e : solved.network().elements()) {
        BranchFlow flow = solved.flow(e.name());
        current(e, flow.currentA(), state);
        if (e instanceof Load) {
          voltage(e, flow.voltageV(), state);
        }
      }
    }
  }

  /** Books a current, if its magnitude is larger than all before. */
  void current(Element e, double amps, LoadState state) {
    Figure best = figures.get(currentOf(e));
    if (best == null || Math.abs(amps) > Math.abs(best.value)) {
      figures.put(currentOf(e), new Figure(amps, state));
    }
  }

  /** Books a voltage, if it is lower than all before. */
  void voltage(Element load, double volts, LoadState state) {
    Figure best = figures.get(voltageOf(load));
    if (best == null || volts < best.value) {
      figures.put(voltageOf(load), new Figure(volts, state));
    }
  }

  /**
   * The figures in the network's order; one that no state gave is left out.
   *
   * @param basis what the figure of a key rests on
   */
  WorstCases result(Function<String, WorstCases.Basis> basis) {
    Map<String, WorstCases.Worst> voltages = new LinkedHashMap<>();
    Map<String, WorstCases.Worst> currents = new LinkedHashMap<>();
    for (Element e : request.network().elements()) {
      if (e instanceof Load) {
        put(voltages, e, voltageOf(e), basis);
      }
      put(currents, e, currentOf(e), basis);
    }
    List<WorstCases.Unsolved> unsolved = new ArrayList<>();
    outcomes.forEach(
        (state, outcome) -> {
          if (!(outcome instanceof Solved)) {
            unsolved.add(new WorstCases.Unsolved(state, outcome));
          }
        });
    return new WorstCases(voltages, currents, outcomes.size(), request.states(), unsolved);
  }

  private void put(
      Map<String, WorstCases.Worst> into,
      Element e,
      String key,
      Function<String, WorstCases.Basis> basis) {
    Figure f = figures.get(key);
    if (f != null) {
      into.put(e.name(), new WorstCases.Worst(f.value, f.state, basis.apply(key)));
    }
  }
}
