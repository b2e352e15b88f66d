package org.loomwright.planner.landing;

import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.parts.Wire;
import org.loomwright.physics.SumException;
import org.loomwright.physics.joining.ContactCurrent;
import org.loomwright.physics.joining.CurrentPoint;

/** What a terminal may carry with a wire at a place. */
public final class ContactLimit {
  private ContactLimit() {}

  /**
   * The limit with its trace.
   *
   * @param ambientC air at the terminal, °C
   * @throws SumException when the terminal's table says nothing of such a wire or place
   */
  public static ContactCurrent.Result of(Terminal terminal, Wire wire, double ambientC) {
    return ContactCurrent.limit(
        "terminal " + terminal.id(),
        terminal.currentLimit().amperes(),
        terminal.currentLimits().stream()
            .map(
                it ->
                    new CurrentPoint(
                        it.size().areaMm2(), it.ambient().celsius(), it.current().amperes()))
            .toList(),
        wire.size().areaMm2(),
        ambientC,
        terminal.source());
  }

  /** Whether a current is within it; not where the table says nothing. */
  static boolean carries(Terminal terminal, Wire wire, double ambientC, double currentA) {
    try {
      return currentA <= of(terminal, wire, ambientC).limitA() + 1e-9;
    } catch (SumException outsideTheTable) {
      // A terminal that the sums can't judge is never chosen.
      return false;
    }
  }

  /**
   * Highest air temperature at a place, °C.
   *
   * @throws IllegalStateException when the vehicle has no such place
   */
  public static double ambientC(KitOrder order, String place) {
    return order
        .vehicle()
        .place(place)
        .orElseThrow(() -> new IllegalStateException("the vehicle has no place '" + place + "'"))
        .ambient()
        .celsius();
  }
}
