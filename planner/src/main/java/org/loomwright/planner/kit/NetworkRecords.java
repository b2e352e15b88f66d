package org.loomwright.planner.kit;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.NetworkBranch;
import org.loomwright.model.design.NetworkState;
import org.loomwright.physics.Require;
import org.loomwright.physics.network.Solved;
import org.loomwright.physics.network.Source;

/** The solved networks of a kit as data, and how they were solved in words. */
final class NetworkRecords {
  private final Evaluation evaluation;

  NetworkRecords(Evaluation evaluation) {
    this.evaluation = evaluation;
  }

  /** Each joint case with all loads on at the lowest supply. */
  List<NetworkState> states() {
    List<NetworkState> states = new ArrayList<>();
    for (Evaluation.Solved one : evaluation.cases()) {
      one.figures().states().stream()
          .findFirst()
          .ifPresent(solved -> states.add(state(one.figures().cases(), solved)));
    }
    return states;
  }

  /** Load states tried, of how many, and whether the worst figures are proven. */
  List<String> notes() {
    int tried = 0;
    BigInteger possible = BigInteger.ZERO;
    int open = 0;
    for (Evaluation.Solved one : evaluation.cases()) {
      tried += one.figures().tried();
      possible = possible.add(one.figures().possible());
      open += one.figures().proven() ? 0 : 1;
    }
    return List.of(
        "Networks: "
            + evaluation.cases().size()
            + " combinations of cases; "
            + tried
            + " of "
            + possible
            + " load states solved, "
            + (open == 0
                ? "all worst figures proven."
                : "in " + open + " combinations the worst figures are those of the states tried."),
        "Bundles: every lead at its own current, as tight as can be, in its covering; loads count as"
            + " on without end.");
  }

  private static NetworkState state(List<String> cases, Solved solved) {
    double emfV = solved.network().all(Source.class).get(0).emfV();
    List<NetworkBranch> branches =
        solved.flows().values().stream()
            .map(
                flow ->
                    new NetworkBranch(
                        flow.name(),
                        flow.from(),
                        flow.to(),
                        flow.currentA(),
                        flow.voltageV(),
                        flow.lossW()))
            .toList();
    return new NetworkState(
        cases,
        "all loads on, source at " + Require.text(emfV) + " V",
        solved.voltagesV(),
        branches);
  }
}
