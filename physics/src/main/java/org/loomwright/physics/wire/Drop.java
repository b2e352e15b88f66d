package org.loomwright.physics.wire;

import java.util.OptionalDouble;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;

/** Voltage drop along a lead at steady direct current. */
public final class Drop {
  private Drop() {}

  /**
   * @param conductor the wire, feed and return alike
   * @param lengthM one-way length of the feed, m
   * @param returnLengthM length of the way back in the same wire, m; empty: the way back does not
   *     count
   * @param currentA current, A, not below zero
   * @param supplyV supply voltage, V, above zero; the percentage refers to it
   * @param temperatureC conductor temperature, °C
   */
  public record Input(
      Conductor conductor,
      double lengthM,
      OptionalDouble returnLengthM,
      double currentA,
      double supplyV,
      double temperatureC) {
    /** Checks the ranges. */
    public Input {
      Require.notNegative("length", lengthM, "m");
      returnLengthM.ifPresent(m -> Require.notNegative("return length", m, "m"));
      Require.notNegative("current", currentA, "A");
      Require.positive("supply voltage", supplyV, "V");
    }
  }

  /**
   * @param dropV drop, V; may exceed the supply: the current asked for could then not flow
   * @param dropPercent drop as percent of the supply
   * @param trace how it was reached
   */
  public record Result(double dropV, double dropPercent, Trace trace) {}

  /** U = I · r(T) · (L + Lreturn). */
  public static Result of(Input in) {
    double totalM = in.lengthM() + in.returnLengthM().orElse(0);
    Resistance.Result r =
        Resistance.of(new Resistance.Input(in.conductor(), totalM, in.temperatureC()));
    double dropV = in.currentA() * r.resistanceOhm();
    double percent = 100 * dropV / in.supplyV();
    Trace trace =
        Trace.builder()
            .given("one-way length", in.lengthM(), "m")
            .given("return length counted", in.returnLengthM().orElse(0), "m")
            .given("current", in.currentA(), "A")
            .given("supply", in.supplyV(), "V")
            .addAll(r.trace())
            .line("drop", "I * R", dropV, "V", "Ohm's law")
            .line("drop of supply", "100 * drop / supply", percent, "%", "definition")
            .build();
    return new Result(dropV, percent, trace);
  }
}
