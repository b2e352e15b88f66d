package org.loomwright.physics.network;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Worst states of a linear network: any voltage or current is a sum of a share of each source and a
 * share of each constant current, so each share is taken or left by its sign alone.
 */
final class Superposition {
  /** A share this far below the largest is rounding; its load is left on. */
  private static final double NO_SHARE = 1e-12;

  private final WorstCaseRequest request;
  private final Transfer transfer;
  private final Tally tally;

  private Superposition(WorstCaseRequest request, Transfer transfer, Tally tally) {
    this.request = request;
    this.transfer = transfer;
    this.tally = tally;
  }

  /** Empty if the network is not linear in what is switched. */
  static Optional<WorstCases> search(WorstCaseRequest request, Tally tally) {
    for (Load load : request.network().all(Load.class)) {
      boolean linear =
          load instanceof ConstantCurrent
              || load instanceof ConstantPower p && p.powerW() == 0
              || load instanceof ConstantResistance && !request.switched().contains(load.name());
      if (!linear) {
        return Optional.empty();
      }
    }
    List<Load> ports =
        request.network().all(Load.class).stream()
            .filter(l -> !(l instanceof ConstantResistance))
            .toList();
    return Transfer.of(request.network(), ports)
        .map(t -> new Superposition(request, t, tally).worst());
  }

  private WorstCases worst() {
    for (Load load : request.network().all(Load.class)) {
      Extreme lowest =
          extreme(
              -1,
              s -> transfer.loadVoltsPerVolt(load, s),
              p -> -transfer.loadOhm(load, p),
              load.name());
      solveIfAllowed(lowest.state);
      tally.voltage(load, lowest.value, lowest.state);
      if (transfer.ports().contains(load)) {
        tally.current(load, load.currentA(lowest.value), lowest.state);
      }
    }
    for (Element branch : transfer.branches()) {
      for (int sign : new int[] {1, -1}) {
        Extreme most =
            extreme(
                sign,
                s -> transfer.amperesPerVolt(branch, s),
                p -> transfer.amperesPerAmpere(branch, p),
                "");
        tally.current(branch, most.value, most.state);
      }
    }
    WorstCases found = tally.result(q -> WorstCases.Basis.SUPERPOSITION);
    // The states that count are solved too: they may have no operating point.
    found.highestCurrent().values().forEach(w -> solveIfAllowed(w.state()));
    return tally.result(q -> WorstCases.Basis.SUPERPOSITION);
  }

  private void solveIfAllowed(LoadState state) {
    if (tally.count() < request.mostStates()) {
      tally.solve(state);
    }
  }

  private record Extreme(double value, LoadState state) {}

  /**
   * The largest (sign 1) or smallest (sign -1) value of a figure.
   *
   * @param always a load that counts as on whatever its share
   */
  private Extreme extreme(
      int sign, ToDoubleFunction<Source> perVolt, ToDoubleFunction<Load> perAmpere, String always) {
    double value = 0;
    Set<String> high = new LinkedHashSet<>();
    for (Source s : transfer.sources()) {
      double share = perVolt.applyAsDouble(s);
      boolean up = sign * share > 0;
      if (up) {
        high.add(s.name());
      }
      value += share * (up ? request.highestV(s) : request.lowestV(s));
    }
    double largest = 0;
    for (Load p : transfer.ports()) {
      largest = Math.max(largest, Math.abs(perAmpere.applyAsDouble(p)));
    }
    Set<String> on = new LinkedHashSet<>();
    for (Load p : transfer.ports()) {
      double share = perAmpere.applyAsDouble(p);
      boolean taken = p.name().equals(always) || sign * share >= -NO_SHARE * largest;
      if (taken) {
        on.add(p.name());
      }
      if (taken || !request.switched().contains(p.name())) {
        value += share * p.currentA(Double.NaN);
      }
    }
    return new Extreme(value, request.state(on, high));
  }
}
