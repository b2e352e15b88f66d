package org.loomwright.physics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** What tests hold networks against, with the tolerances in one place. */
final class NetworkAssert {
  /** Two exact sums of the same voltage, V. */
  static final double EXACT_V = 1e-8;

  /** Two exact sums of the same current, A. */
  static final double EXACT_A = 1e-6;

  private NetworkAssert() {}

  /** Solves, and lets the independent checker look at the result if there is one. */
  static NetworkOutcome outcome(Network network) {
    NetworkOutcome outcome = NetworkSolver.solve(network);
    return outcome instanceof Solved s ? checked(s) : outcome;
  }

  /** Solves with temperatures, and lets the checker look at the result if there is one. */
  static HotOutcome hot(Network network, ConductorHeat heat) {
    HotOutcome outcome = HotNetworkSolver.solve(network, heat);
    if (outcome instanceof HotOutcome.Settled settled) {
      checked(settled.solved());
    }
    return outcome;
  }

  /** The checked result of a network that must have one. */
  static Solved solved(Network network) {
    NetworkOutcome outcome = outcome(network);
    assertThat(outcome).as(outcome.message()).isInstanceOf(Solved.class);
    return (Solved) outcome;
  }

  static Solved checked(Solved solved) {
    NetworkCheck.Report report = NetworkCheck.check(solved);
    assertThat(report.faults()).isEmpty();
    return solved;
  }

  static void voltage(Solved solved, String node, double expectedV) {
    assertThat(solved.voltageV(node)).as("node " + node).isCloseTo(expectedV, within(EXACT_V));
  }

  static void current(Solved solved, String element, double expectedA) {
    assertThat(solved.flow(element).currentA())
        .as("element " + element)
        .isCloseTo(expectedA, within(EXACT_A));
  }
}
