package org.loomwright.physics.protection;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.heat.ThermalMass;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.heat.WireTransient;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;

/**
 * How long a wire stands a current: from the adiabatic short circuit to the current it carries for
 * good, one line without a join.
 *
 * <p>The conductor heats as in {@link WireTransient} with the copper alone storing heat; at short
 * times nothing is given off and the line is t = k²S²/I² of IEC 60949, at long times it ends at the
 * allowed current of {@link WireHeat}. The wire is damaged when it passes the temperature allowed
 * for the time:
 *
 * <ul>
 *   <li>up to 5 s the end temperature of a short circuit (IEC 60364-5-54),
 *   <li>from 1 h on the continuous rating,
 *   <li>between them falling with the logarithm of time. That is our own choice, below what the
 *       overload test of ISO 6722-1 lets pass (rating + 50 K for 6 h, from memory) but for its
 *       first minutes.
 * </ul>
 *
 * The temperature rises with time and current while the allowed one falls with time, so the line
 * falls steadily with the current.
 */
public final class DamageLine {
  /** Times above this count as "for good", s: 100 h. */
  public static final double FOR_GOOD_S = 360_000;

  /** Source of the line. */
  public static final String SOURCE =
      "IEC 60949 at short times, heat balance at long times; temperature allowed between 5 s and 1"
          + " h: straight in log time";

  private static final double SHORT_S = 5;
  private static final double LONG_S = 3600;

  /** Below this the time is reckoned without loss, s; its share of the heat is nothing. */
  private static final double SHORTEST_S = 1e-6;

  private static final int HALVINGS = 60;

  private final Wire wire;
  private final WireTransient heat;
  private final double enduranceA;

  private DamageLine(Wire wire, WireTransient heat, double enduranceA) {
    this.wire = wire;
    this.heat = heat;
    this.enduranceA = enduranceA;
  }

  /**
   * @param lying the wire and where it lies; in a bundle all loaded wires carry the fault, so for a
   *     fault of one lead give the wire alone with the temperature at which its load leaves it
   * @param insulation its material, for the end temperature of a short circuit
   * @param ratingC continuous rating, °C, at least 1 K above the ambient and below the end
   *     temperature
   * @param startC conductor when the fault begins, °C, from the ambient to the rating
   */
  public record Wire(WireHeat.Lying lying, Insulation insulation, double ratingC, double startC) {
    /** Checks the ranges. */
    public Wire {
      Require.within(
          "insulation rating", ratingC, lying.ambientC() + 1, insulation.finalC() - 1, "°C");
      Require.within("conductor at the start", startC, lying.ambientC(), ratingC, "°C");
    }

    /** The wire alone, at its rating when the fault begins: the worst start. */
    public static Wire hot(
        Conductor conductor, Insulation insulation, double ratingC, double ambientC) {
      return new Wire(WireHeat.Lying.single(conductor, ambientC), insulation, ratingC, ratingC);
    }
  }

  /** The line of a wire. */
  public static DamageLine of(Wire wire) {
    WireTransient heat =
        WireTransient.of(wire.lying(), ThermalMass.copperOnly(wire.lying().conductor()));
    double enduranceA = WireHeat.current(wire.lying(), wire.ratingC()).currentA();
    return new DamageLine(wire, heat, enduranceA);
  }

  /** The wire. */
  public Wire wire() {
    return wire;
  }

  /** Current the wire carries for good, A. */
  public double enduranceA() {
    return enduranceA;
  }

  /** Temperature allowed for a time, °C; falls from the end temperature to the rating. */
  public double allowedC(double timeS) {
    double end = wire.insulation().finalC();
    if (timeS <= SHORT_S) {
      return end;
    }
    if (timeS >= LONG_S) {
      return wire.ratingC();
    }
    double part = Math.log(timeS / SHORT_S) / Math.log(LONG_S / SHORT_S);
    return end + part * (wire.ratingC() - end);
  }

  /**
   * Time until the wire is damaged, s; infinite up to the current it carries for good.
   *
   * @param currentA 0 to 100 000 A
   */
  public double timeS(double currentA) {
    Require.within("current", currentA, 0, 100_000, "A");
    if (currentA <= enduranceA) {
      return Double.POSITIVE_INFINITY;
    }
    // The answer is where the time to a temperature meets the time that temperature is allowed for.
    double low = wire.ratingC();
    double high = wire.insulation().finalC();
    double toHigh = reachS(high, currentA);
    if (toHigh <= SHORT_S) {
      return Math.max(SHORTEST_S, toHigh);
    }
    double toLow = reachS(low, currentA);
    if (toLow >= LONG_S) {
      return toLow;
    }
    // Never cooler than the rating, where the time allowed begins to fall.
    double start = Math.max(wire.startC(), low);
    return heat.timeToMeetS(
                start, Math.min(high, Copper.MELTING_C), currentA, t -> allowedForS(t) - toLow)
            .orElseThrow(() -> new IllegalStateException("the wire never passes its allowed line"))
        + toLow;
  }

  /**
   * Largest current the wire stands for a time, A: the line read the other way.
   *
   * @param timeS 0.001 to 360 000 s
   */
  public double currentA(double timeS) {
    Require.within("time", timeS, 0.001, FOR_GOOD_S, "s");
    double low = enduranceA;
    double high = 100_000;
    if (timeS(high) >= timeS) {
      throw new SumException(
          wire.lying().conductor().label()
              + " stands more than 100000 A for "
              + Require.text(timeS)
              + " s, which is beyond the range of this sum");
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = Math.sqrt(Math.max(low, 1e-9) * high);
      if (timeS(middle) >= timeS) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * Points of the line for a chart, current rising.
   *
   * @param toA largest current, A
   * @param count points, from 2 on; none where the wire carries that current for good
   */
  public List<ChartPoint> points(double toA, int count) {
    List<ChartPoint> points = new ArrayList<>();
    double fromA = enduranceA * 1.0005;
    if (toA <= fromA) {
      return points;
    }
    for (int i = 0; i < count; i++) {
      double currentA = fromA * Math.pow(toA / fromA, (double) i / (count - 1));
      points.add(new ChartPoint(currentA, Math.min(FOR_GOOD_S, timeS(currentA))));
    }
    return points;
  }

  private double reachS(double targetC, double currentA) {
    double target = Math.min(targetC, Copper.MELTING_C);
    if (target <= wire.startC()) {
      return 0;
    }
    return heat.timeToReachS(wire.startC(), target, currentA).orElse(Double.POSITIVE_INFINITY);
  }

  /** Inverse of {@link #allowedC} between its ends. */
  private double allowedForS(double temperatureC) {
    double end = wire.insulation().finalC();
    double part = (end - temperatureC) / (end - wire.ratingC());
    return SHORT_S * Math.pow(LONG_S / SHORT_S, part);
  }
}
