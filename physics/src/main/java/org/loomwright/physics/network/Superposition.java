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
  private final Set<String> alwaysOn;
  private final WorstCaseRequest whole;
  private final Transfer transfer;
  private final Tally tally;

  private Superposition(
      WorstCaseRequest request,
      Set<String> alwaysOn,
      WorstCaseRequest whole,
      Transfer transfer,
      Tally tally) {
    this.request = request;
    this.alwaysOn = alwaysOn;
    this.whole = whole;
    this.transfer = transfer;
    this.tally = tally;
  }

  /**
   * Books the worst of every voltage and current.
   *
   * @param request the network, in which some loads that can be switched may be on for good
   * @param alwaysOn those loads
   * @param whole the request as it was made, in whose states the figures are booked
   * @return false if the network is not linear in what is switched; then nothing is booked
   */
  static boolean search(
      WorstCaseRequest request, Set<String> alwaysOn, WorstCaseRequest whole, Tally tally) {
    for (Load load : request.network().all(Load.class)) {
      boolean linear =
          load instanceof ConstantCurrent
              || load instanceof ConstantPower p && p.powerW() == 0
              || load instanceof ConstantResistance && !request.switched().contains(load.name());
      if (!linear) {
        return false;
      }
    }
    List<Load> ports =
        request.network().all(Load.class).stream()
            .filter(l -> !(l instanceof ConstantResistance))
            .toList();
    Optional<Transfer> transfer = Transfer.of(request.network(), ports);
    transfer.ifPresent(t -> new Superposition(request, alwaysOn, whole, t, tally).worst());
    return transfer.isPresent();
  }

  private void worst() {
    Set<LoadState> states = new LinkedHashSet<>();
    for (Load load : request.network().all(Load.class)) {
      Extreme lowest =
          extreme(
              -1,
              s -> transfer.loadVoltsPerVolt(load, s),
              p -> -transfer.loadOhm(load, p),
              load.name());
      states.add(lowest.state);
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
        if (most.value * sign > 0) {
          states.add(most.state);
        }
      }
    }
    // The states that count are solved too: they may have no operating point.
    states.forEach(tally::solve);
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
    on.addAll(alwaysOn);
    return new Extreme(value, whole.state(on, high));
  }
}
