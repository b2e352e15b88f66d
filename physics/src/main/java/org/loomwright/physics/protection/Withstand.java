package org.loomwright.physics.protection;

import java.util.OptionalDouble;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;

/**
 * Current a copper conductor withstands for a short time with no heat given off: I = k S / √t (IEC
 * 60364-5-54, IEC 60949). Valid up to 5 s; longer times are refused.
 */
public final class Withstand {
  /** Longest time for which the sum holds, s. */
  public static final double LONGEST_S = 5;

  /** Source of the formula. */
  public static final String SOURCE = "IEC 60364-5-54, I²t = k²S², up to 5 s";

  /** Heat capacity of copper by volume, J/(K·mm³); IEC 60949. */
  private static final double HEAT_CAPACITY = 3.45e-3;

  /** Resistivity of copper at 20 °C, ohm·mm; IEC 60949. */
  private static final double RESISTIVITY = 17.241e-6;

  private Withstand() {}

  /**
   * @param conductor the wire
   * @param insulation its material, giving the temperature at the end
   * @param initialC conductor temperature at the start, °C; empty: the material's own pair and the
   *     published k
   * @param timeS how long the current flows, above 0 to 5 s
   */
  public record Input(
      Conductor conductor, Insulation insulation, OptionalDouble initialC, double timeS) {
    /** Refuses times beyond 5 s. */
    public Input {
      Require.positive("time", timeS, "s");
      if (timeS > LONGEST_S) {
        throw new SumException(
            "the short-circuit sum holds up to 5 s, but the time is "
                + Require.text(timeS)
                + " s; beyond that the allowed current counts");
      }
    }
  }

  /**
   * @param currentA largest current, A
   * @param k factor used, A·√s/mm²
   * @param i2tA2s k²S², A²s
   * @param trace how it was reached
   */
  public record Result(double currentA, double k, double i2tA2s, Trace trace) {}

  /** I = k S / √t. */
  public static Result of(Input in) {
    Conductor c = in.conductor();
    double k = k(in.insulation(), in.initialC());
    double i2t = k * k * c.areaMm2() * c.areaMm2();
    double currentA = Math.sqrt(i2t / in.timeS());
    boolean published = publishedPair(in.insulation(), in.initialC());
    Trace trace =
        Trace.builder()
            .given("conductor area of " + c.label(), c.areaMm2(), "mm²")
            .given("time", in.timeS(), "s")
            .given("conductor at the start", in.initialC().orElse(in.insulation().initialC()), "°C")
            .line(
                "conductor at the end",
                "limit of " + in.insulation().label(),
                in.insulation().finalC(),
                "°C",
                in.insulation().source())
            .line(
                "k",
                published
                    ? "table"
                    : "sqrt(Qc (B + 20) / rho20 * ln((B + Tf) / (B + Ti))), Qc = 3.45e-3 J/(K mm³), rho20 ="
                        + " 17.241e-6 ohm mm, B = 234.5",
                k,
                "A s^0.5/mm²",
                published ? in.insulation().source() : "IEC 60949")
            .line("withstand", "k² S²", i2t, "A²s", SOURCE)
            .line("current", "k S / sqrt(t)", currentA, "A", SOURCE)
            .build();
    return new Result(currentA, k, i2t, trace);
  }

  /**
   * k of copper for a material and start temperature: the published value for the material's own
   * pair, otherwise the closed form; 0 where the start is at or above the end temperature.
   */
  public static double k(Insulation insulation, OptionalDouble initialC) {
    return publishedPair(insulation, initialC)
        ? insulation.k()
        : closedFormK(initialC.getAsDouble(), insulation.finalC());
  }

  /**
   * k = √(Qc (B+20)/ρ20 · ln((B+Tf)/(B+Ti))) for copper, A·√s/mm²; IEC 60949 with Qc = 3.45e-3
   * J/(K·mm³), B = 234.5 °C, ρ20 = 17.241e-6 ohm·mm.
   *
   * @param initialC Ti, °C, above -100
   * @param finalC Tf, °C, up to 1083
   * @return 0 where the start is at or above the end
   */
  public static double closedFormK(double initialC, double finalC) {
    Require.within("temperature at the start", initialC, -100, Copper.MELTING_C, "°C");
    Require.within("temperature at the end", finalC, -100, Copper.MELTING_C, "°C");
    if (initialC >= finalC) {
      return 0;
    }
    double b = Copper.ZERO_RESISTANCE_C;
    return Math.sqrt(
        HEAT_CAPACITY * (b + 20) / RESISTIVITY * Math.log((b + finalC) / (b + initialC)));
  }

  private static boolean publishedPair(Insulation insulation, OptionalDouble initialC) {
    return initialC.isEmpty() || initialC.getAsDouble() == insulation.initialC();
  }
}
