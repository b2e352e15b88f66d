package org.loomwright.physics.network;

import java.util.Locale;

/** What came of solving a network and its conductor temperatures together. */
public sealed interface HotOutcome {
  /** The outcome in one sentence for a person. */
  String message();

  /**
   * Currents and temperatures fit each other.
   *
   * @param solved the state; its network holds the wires at the temperatures found
   * @param rounds times the network was solved
   * @param lastChangeK largest change of a conductor temperature in the last round, K
   */
  record Settled(Solved solved, int rounds, double lastChangeK) implements HotOutcome {
    /** Conductor temperature of a wire, °C. */
    public double temperatureC(String wire) {
      return solved.network().find(Wire.class, wire).temperatureC();
    }

    @Override
    public String message() {
      return solved.message() + " in " + rounds + " rounds with the conductor temperatures";
    }
  }

  /**
   * The network has no state at the temperatures reached so far.
   *
   * @param outcome why not
   * @param rounds times the network was solved
   */
  record Unsolved(NetworkOutcome outcome, int rounds) implements HotOutcome {
    @Override
    public String message() {
      return outcome.message();
    }
  }

  /**
   * A conductor has no steady temperature at its current.
   *
   * @param wire the wire
   * @param currentA its current, A
   * @param reason in words
   * @param rounds times the network was solved
   */
  record TooHot(String wire, double currentA, String reason, int rounds) implements HotOutcome {
    @Override
    public String message() {
      return String.format(Locale.ROOT, "wire %s at %.2f A: %s", wire, currentA, reason);
    }
  }

  /**
   * Currents and temperatures did not come to rest.
   *
   * @param wire the wire that moved most in the last round
   * @param lastChangeK by how much, K
   * @param rounds times the network was solved
   */
  record NotSettled(String wire, double lastChangeK, int rounds) implements HotOutcome {
    @Override
    public String message() {
      return String.format(
          Locale.ROOT,
          "the temperature of wire %s still moves by %.3f K after %d rounds",
          wire,
          lastChangeK,
          rounds);
    }
  }
}
