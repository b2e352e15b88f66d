package org.loomwright.physics.network;

import java.util.LinkedHashMap;
import java.util.Map;
import org.loomwright.physics.Require;
import org.loomwright.physics.wire.Copper;

/**
 * Solves a network and the temperatures of its wires together: the current heats the conductor, the
 * hotter conductor has more resistance, and that changes the current.
 *
 * <p>Fixed point: solve at the last temperatures, ask for the temperatures at those currents, move
 * towards them. The step is the whole way at first and is halved whenever the largest change grows.
 */
public final class HotNetworkSolver {
  /** Temperatures have settled when none moves by more, K. */
  public static final double SETTLED_K = 0.001;

  /** Most rounds before giving up. */
  public static final int MOST_ROUNDS = 200;

  private static final double SMALLEST_STEP = 1.0 / 64;

  private static final String MELTS =
      "the conductor would melt: no steady temperature below "
          + Require.text(Copper.MELTING_C)
          + " °C";

  private HotNetworkSolver() {}

  /**
   * @param network the network; the temperatures of its wires are the first guess
   * @param heat gives a wire's temperature at a current
   */
  public static HotOutcome solve(Network network, ConductorHeat heat) {
    Network at = network;
    double step = 1;
    double before = Double.POSITIVE_INFINITY;
    String mover = "";
    for (int round = 1; round <= MOST_ROUNDS; round++) {
      NetworkOutcome outcome = NetworkSolver.solve(at);
      if (!(outcome instanceof Solved solved)) {
        return new HotOutcome.Unsolved(outcome, round);
      }
      Map<String, Wire> moved = new LinkedHashMap<>();
      double change = 0;
      for (Wire wire : at.all(Wire.class)) {
        double currentA = Math.abs(solved.flow(wire.name()).currentA());
        double target = target(heat, wire, currentA);
        if (target >= Copper.MELTING_C && wire.temperatureC() >= Copper.MELTING_C - SETTLED_K) {
          return new HotOutcome.TooHot(wire.name(), currentA, MELTS, round);
        }
        moved.put(
            wire.name(), wire.at(wire.temperatureC() + step * (target - wire.temperatureC())));
        double by = Math.abs(target - wire.temperatureC());
        if (!(by <= change)) {
          change = by;
          mover = wire.name();
        }
      }
      if (change <= SETTLED_K) {
        return new HotOutcome.Settled(solved, round, change);
      }
      if (change >= before) {
        step = Math.max(SMALLEST_STEP, step / 2);
      }
      before = change;
      at = at.with(moved);
    }
    return new HotOutcome.NotSettled(mover, before, MOST_ROUNDS);
  }

  /** The melting point stands for "would melt": at that resistance the current may be less. */
  private static double target(ConductorHeat heat, Wire wire, double currentA) {
    return Math.min(Copper.MELTING_C, heat.temperatureC(wire, currentA).orElse(Copper.MELTING_C));
  }
}
