package org.loomwright.planner.electrics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.physics.Require;
import org.loomwright.physics.network.Load;
import org.loomwright.physics.network.LoadState;
import org.loomwright.physics.network.Network;
import org.loomwright.physics.network.NetworkCheck;
import org.loomwright.physics.network.NetworkOutcome;
import org.loomwright.physics.network.NetworkSolver;
import org.loomwright.physics.network.Solved;
import org.loomwright.physics.network.Source;
import org.loomwright.physics.network.WorstCaseRequest;
import org.loomwright.physics.network.WorstCases;

/**
 * A second look at solved networks: node balance, each element's own law, energy, and whether each
 * worst figure is what its state gives.
 *
 * @param states states solved again
 * @param figures worst figures compared
 * @param worstBalanceA largest sum of currents left over at a node, A
 * @param worstLawV largest voltage by which an element misses its law, V
 * @param worstGapW largest gap between power brought and power used, W
 * @param faults what does not hold, one sentence each
 */
public record Verified(
    int states,
    int figures,
    double worstBalanceA,
    double worstLawV,
    double worstGapW,
    List<String> faults) {
  /** How {@link #words()} begins. */
  public static final String VERIFIED = "Networks verified: ";

  /** By how much a figure may differ, as share of it and in its unit. */
  private static final double ALIKE = 1e-6;

  /** Copies the faults. */
  public Verified {
    faults = List.copyOf(faults);
  }

  /** Nothing looked at. */
  public static Verified none() {
    return new Verified(0, 0, 0, 0, 0, List.of());
  }

  /** Two looks as one. */
  public Verified and(Verified other) {
    List<String> all = new ArrayList<>(faults);
    all.addAll(other.faults);
    return new Verified(
        states + other.states,
        figures + other.figures,
        Math.max(worstBalanceA, other.worstBalanceA),
        Math.max(worstLawV, other.worstLawV),
        Math.max(worstGapW, other.worstGapW),
        all);
  }

  /** What was looked at, in one sentence. */
  public String words() {
    return String.format(
        java.util.Locale.ROOT,
        VERIFIED
            + "%d states solved again, %d worst figures compared; largest imbalance at"
            + " a node %.1e A, largest miss of an element's law %.1e V, largest gap of energy %.1e"
            + " W; %s",
        states,
        figures,
        worstBalanceA,
        worstLawV,
        worstGapW,
        faults.isEmpty()
            ? "no fault found."
            : faults.size() == 1 ? "1 fault found." : faults.size() + " faults found.");
  }

  static Verified of(WorstCaseRequest request, WorstCases worst) {
    Map<LoadState, Solved> solved = new LinkedHashMap<>();
    Verified all = none();
    for (Map.Entry<String, WorstCases.Worst> one : worst.lowestVoltage().entrySet()) {
      all = all.and(look(request, one, true, solved));
    }
    for (Map.Entry<String, WorstCases.Worst> one : worst.highestCurrent().entrySet()) {
      all = all.and(look(request, one, false, solved));
    }
    return all;
  }

  private static Verified look(
      WorstCaseRequest request,
      Map.Entry<String, WorstCases.Worst> one,
      boolean voltage,
      Map<LoadState, Solved> known) {
    LoadState state = one.getValue().state();
    Verified seen = none();
    if (!known.containsKey(state)) {
      NetworkOutcome outcome = NetworkSolver.solve(in(request, state));
      if (!(outcome instanceof Solved solved)) {
        return new Verified(1, 0, 0, 0, 0, List.of(one.getKey() + ": " + outcome.message()));
      }
      known.put(state, solved);
      NetworkCheck.Report report = NetworkCheck.check(solved);
      seen =
          new Verified(
              1,
              0,
              report.worstBalanceA(),
              report.worstLawV(),
              Math.abs(report.powerGapW()),
              report.faults());
    }
    Solved solved = known.get(state);
    if (solved == null) {
      throw new IllegalStateException("a state that was just solved");
    }
    if (!solved.flows().containsKey(one.getKey())) {
      return seen.and(
          new Verified(
              0,
              1,
              0,
              0,
              0,
              List.of(one.getKey() + ": it is switched off in the state its figure is of")));
    }
    double againV =
        voltage ? solved.flow(one.getKey()).voltageV() : solved.flow(one.getKey()).currentA();
    double foundV = one.getValue().value();
    boolean alike = Math.abs(againV - foundV) <= ALIKE * Math.max(1, Math.abs(foundV));
    return seen.and(
        new Verified(
            0,
            1,
            0,
            0,
            0,
            alike
                ? List.of()
                : List.of(
                    one.getKey()
                        + ": found "
                        + Require.text(foundV)
                        + ", its state gives "
                        + Require.text(againV))));
  }

  private static Network in(WorstCaseRequest request, LoadState state) {
    List<String> off =
        request.network().all(Load.class).stream()
            .map(Load::name)
            .filter(name -> request.switched().contains(name) && !state.on().contains(name))
            .toList();
    Map<String, Source> sources = new LinkedHashMap<>();
    state
        .emfV()
        .forEach(
            (name, emfV) ->
                sources.put(name, request.network().find(Source.class, name).withEmf(emfV)));
    return request.network().without(off).with(sources);
  }
}
