package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Solves a network by nodal analysis: Kirchhoff's current law at every node, sources as a current
 * E/r beside their internal conductance, loads of constant power by Newton's method from the
 * voltages without them.
 *
 * <p>Newton's steps from above come down to the highest state there is: each node equation falls
 * convexly with the voltage across a load, and the matrix keeps a non-negative inverse as long as
 * it is positive definite (monotone convergence; Ortega and Rheinboldt, Iterative Solution of
 * Nonlinear Equations in Several Variables, 13.3.4, from memory). With shared grounds the same is
 * seen but not proven. Where the matrix stops being positive definite the voltage collapses. Before
 * that is said, the powers are raised from zero in ever smaller steps, which also tells what share
 * of them the lines can bring.
 */
public final class NetworkSolver {
  private static final int MOST_STEPS = 100;
  private static final double CONVERGED = 1e-10;
  private static final double SMALLEST_SHARE_STEP = 1e-6;

  /** Rounding slack when a voltage is held against a cut-off, V. */
  private static final double CUT_OFF_SLACK_V = 1e-9;

  private final Network network;
  private final NodeNumbers numbers;
  private final SparseSystem system;
  private final double[] conductancesS;
  private final double[] fixedIntoA;

  /**
   * Solves the network with all its loads running.
   *
   * @return the state; or why there is none; or the parts that hang on nothing
   * @throws org.loomwright.physics.SumException if double precision does not suffice, because
   *     resistances lie too far apart
   */
  public static NetworkOutcome solve(Network network) {
    NodeNumbers numbers = new NodeNumbers(network);
    return numbers.connected()
        ? new NetworkSolver(network, numbers).solve()
        : new NotConnected(FloatingParts.of(network));
  }

  private NetworkSolver(Network network, NodeNumbers numbers) {
    this.network = network;
    this.numbers = numbers;
    this.system = numbers.system();
    this.conductancesS = numbers.conductancesS();
    this.fixedIntoA = numbers.fixedIntoA();
  }

  private NetworkOutcome solve() {
    if (!system.factor(conductancesS)) {
      throw new IllegalStateException("a connected network of resistances is positive definite");
    }
    State idle = new State(system.solve(fixedIntoA), 1);
    if (numbers.powers().isEmpty()) {
      return judge(idle);
    }
    for (int p : numbers.powers()) {
      if (!(numbers.across(idle.voltages, p) > 0)) {
        return new NoOperatingPoint(
            NoOperatingPoint.Reason.BELOW_CUT_OFF, shortfalls(numbers.powers(), idle), 1);
      }
    }
    Optional<State> running = newton(1, idle);
    return running.isPresent() ? judge(running.get()) : inShares(idle);
  }

  /** Node voltages and the Newton steps they took. */
  private record State(double[] voltages, int steps) {}

  /**
   * The state with a share of all constant powers. Each load's P/V is replaced by its tangent at
   * the last voltage V0: a negative conductance -P/V0² and a fixed current 2P/V0.
   */
  private Optional<State> newton(double share, State start) {
    double[] v = start.voltages;
    double[] g = conductancesS.clone();
    for (int step = 1; step <= MOST_STEPS; step++) {
      double[] into = fixedIntoA.clone();
      for (int k = 0; k < numbers.powers().size(); k++) {
        int p = numbers.powers().get(k);
        double across = numbers.across(v, p);
        if (!(across > 0)) {
          return Optional.empty();
        }
        double watt = share * ((ConstantPower) network.elements().get(p)).powerW();
        g[numbers.edgeOfPower(k)] = -watt / (across * across);
        numbers.draw(into, p, 2 * watt / across);
      }
      if (!system.factor(g)) {
        return Optional.empty();
      }
      double[] next = system.solve(into);
      double change = 0;
      for (int i = 0; i < next.length; i++) {
        change = Math.max(change, Math.abs(next[i] - v[i]));
      }
      v = next;
      if (change <= CONVERGED * SparseSystem.largest(v)) {
        return Optional.of(new State(v, start.steps + step));
      }
    }
    return Optional.empty();
  }

  private NetworkOutcome inShares(State idle) {
    State last = idle;
    double share = 0;
    double stride = 0.5;
    while (stride >= SMALLEST_SHARE_STEP) {
      double next = Math.min(1, share + stride);
      Optional<State> state = newton(next, last);
      if (state.isEmpty()) {
        stride /= 2;
        continue;
      }
      last = state.get();
      share = next;
      if (share >= 1) {
        return judge(last);
      }
    }
    return new NoOperatingPoint(
        NoOperatingPoint.Reason.VOLTAGE_COLLAPSE, shortfalls(numbers.powers(), last), share);
  }

  private NetworkOutcome judge(State state) {
    List<Integer> low = new ArrayList<>();
    for (int i = 0; i < network.elements().size(); i++) {
      if (network.elements().get(i) instanceof Load load) {
        boolean asks =
            load instanceof ConstantCurrent c
                ? c.currentA() > 0
                : load instanceof ConstantPower p && p.powerW() > 0;
        if (asks && !(numbers.across(state.voltages, i) >= load.cutOffV() - CUT_OFF_SLACK_V)) {
          low.add(i);
        }
      }
    }
    return low.isEmpty()
        ? solved(state)
        : new NoOperatingPoint(NoOperatingPoint.Reason.BELOW_CUT_OFF, shortfalls(low, state), 1);
  }

  private List<NoOperatingPoint.Shortfall> shortfalls(List<Integer> loads, State state) {
    List<NoOperatingPoint.Shortfall> found = new ArrayList<>();
    for (int i : loads) {
      Load load = (Load) network.elements().get(i);
      found.add(
          new NoOperatingPoint.Shortfall(
              load.name(), numbers.across(state.voltages, i), load.cutOffV()));
    }
    found.sort(Comparator.comparingDouble(s -> s.voltageV() - s.neededV()));
    return found;
  }

  private Solved solved(State state) {
    Map<String, Double> voltages = new LinkedHashMap<>();
    numbers.nodes().forEach((node, n) -> voltages.put(node, SparseSystem.at(state.voltages, n)));
    double[] into = new double[numbers.count()];
    Map<String, BranchFlow> flows = new LinkedHashMap<>();
    for (int i = 0; i < network.elements().size(); i++) {
      Element e = network.elements().get(i);
      BranchFlow flow = flow(e, numbers.across(state.voltages, i));
      numbers.draw(into, i, flow.currentA());
      flows.put(e.name(), flow);
    }
    return new Solved(network, voltages, flows, state.steps, SparseSystem.largest(into));
  }

  private static BranchFlow flow(Element e, double across) {
    double current;
    double loss = 0;
    if (e instanceof Source s) {
      current = (s.emfV() + across) / s.internalOhm();
      loss = current * current * s.internalOhm();
    } else if (e instanceof Link l) {
      current = across / l.ohm();
      loss = current * current * l.ohm();
    } else {
      current = ((Load) e).currentA(across);
    }
    return new BranchFlow(e.name(), e.from(), e.to(), current, across, loss);
  }
}
