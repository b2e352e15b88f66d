package org.loomwright.physics.network;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The network has no steady state with all its loads running.
 *
 * @param reason why
 * @param shortfalls the loads that fall short, lowest share of their need first; at least one
 * @param deliverableShare if the voltage collapses: largest share of all constant powers at once
 *     for which a state was found, 0 to 1; else 1
 */
public record NoOperatingPoint(Reason reason, List<Shortfall> shortfalls, double deliverableShare)
    implements NetworkOutcome {
  /** Copies the list. */
  public NoOperatingPoint {
    shortfalls = List.copyOf(shortfalls);
  }

  /** Why there is none. */
  public enum Reason {
    /** The lines cannot bring the power that constant-power loads ask, at any voltage. */
    VOLTAGE_COLLAPSE,
    /** A state exists, but it leaves at least one load below its cut-off voltage. */
    BELOW_CUT_OFF
  }

  /**
   * @param load name of the load
   * @param voltageV voltage across it, V: in the state found, or at the last state before collapse
   * @param neededV its cut-off voltage, V
   */
  public record Shortfall(String load, double voltageV, double neededV) {}

  @Override
  public String message() {
    if (reason == Reason.VOLTAGE_COLLAPSE) {
      Shortfall worst = shortfalls.get(0);
      return String.format(
          Locale.ROOT,
          "the voltage collapses: at most %.1f %% of the constant powers can be brought;"
              + " there load %s has %.2f V",
          100 * deliverableShare,
          worst.load(),
          worst.voltageV());
    }
    return shortfalls.stream()
        .map(
            s ->
                String.format(
                    Locale.ROOT,
                    "load %s would have %.2f V, below its cut-off of %.2f V",
                    s.load(),
                    s.voltageV(),
                    s.neededV()))
        .collect(Collectors.joining("; "));
  }
}
