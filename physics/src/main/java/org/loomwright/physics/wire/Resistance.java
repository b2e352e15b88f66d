package org.loomwright.physics.wire;

import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;

/** Resistance of a length of conductor at a temperature. */
public final class Resistance {
  private Resistance() {}

  /**
   * @param conductor the wire
   * @param lengthM length of conductor, m, not below zero
   * @param temperatureC conductor temperature, -100 to 1083 °C
   */
  public record Input(Conductor conductor, double lengthM, double temperatureC) {
    /** Checks the ranges. */
    public Input {
      Require.notNegative("length", lengthM, "m");
    }
  }

  /**
   * @param resistanceOhm resistance of the whole length
   * @param trace how it was reached
   */
  public record Result(double resistanceOhm, Trace trace) {}

  /** R = r20 · L · (234.5+T)/254.5. */
  public static Result of(Input in) {
    Conductor c = in.conductor();
    double perM = c.resistanceOhmPerM(in.temperatureC());
    double ohm = perM * in.lengthM();
    Trace trace =
        Trace.builder()
            .given("length", in.lengthM(), "m")
            .given("conductor temperature", in.temperatureC(), "°C")
            .line(
                "resistance per metre at 20 °C of " + c.label(),
                "table",
                c.ohmPerM20C(),
                "ohm/m",
                c.source())
            .line(
                "resistance per metre at temperature",
                "r20 * (234.5 + T) / 254.5",
                perM,
                "ohm/m",
                Copper.TEMPERATURE_SOURCE)
            .line("resistance", "r * L", ohm, "ohm", "Ohm's law")
            .build();
    return new Result(ohm, trace);
  }
}
