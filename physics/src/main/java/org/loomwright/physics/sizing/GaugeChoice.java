package org.loomwright.physics.sizing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.heat.Ampacity;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Drop;

/**
 * The smallest metric size and the smallest gauge that hold voltage drop and allowed current at
 * once.
 *
 * <p>The length is the one-way length of the feed and the way back does not count; double the
 * length, or halve the drop, to include a return in the same wire. The drop is reckoned with the
 * conductor at its insulation rating: the wire is never hotter while the allowed current holds, so
 * this is the cautious temperature.
 */
public final class GaugeChoice {
  private GaugeChoice() {}

  /**
   * @param currentA steady current, A, above zero
   * @param oneWayLengthM length of the feed, m; the way back does not count
   * @param supplyV supply voltage, V
   * @param maxDropPercent largest drop as percent of the supply, above 0 to 100
   * @param ambientC air temperature, °C
   * @param insulationRatingC highest continuous temperature of the insulation, °C
   * @param wires wires in the bundle, this one included; 1 is a single wire
   * @param loadedShare see {@link Ampacity.Input}
   */
  public record Input(
      double currentA,
      double oneWayLengthM,
      double supplyV,
      double maxDropPercent,
      double ambientC,
      double insulationRatingC,
      int wires,
      OptionalDouble loadedShare) {
    /** Checks the ranges. */
    public Input {
      Require.positive("current", currentA, "A");
      Require.notNegative("length", oneWayLengthM, "m");
      Require.positive("supply voltage", supplyV, "V");
      Require.within("largest drop", maxDropPercent, 1e-6, 100, "%");
    }

    /** A single wire in free air. */
    public static Input single(
        double currentA,
        double oneWayLengthM,
        double supplyV,
        double maxDropPercent,
        double ambientC,
        double insulationRatingC) {
      return new Input(
          currentA,
          oneWayLengthM,
          supplyV,
          maxDropPercent,
          ambientC,
          insulationRatingC,
          1,
          OptionalDouble.empty());
    }
  }

  /**
   * A size that passes.
   *
   * @param conductor the size
   * @param checks voltage drop and allowed current
   * @param trace how the figures were reached
   */
  public record Pick(Conductor conductor, List<Check> checks, Trace trace) {
    /** Copies the checks. */
    public Pick {
      checks = List.copyOf(checks);
    }
  }

  /**
   * @param metric smallest metric size; empty if even the largest fails
   * @param awg smallest gauge; empty if even the largest fails
   */
  public record Result(Optional<Pick> metric, Optional<Pick> awg) {
    /** Area of the metric choice, mm². */
    public OptionalDouble areaMm2() {
      return metric
          .map(p -> OptionalDouble.of(p.conductor().areaMm2()))
          .orElseGet(OptionalDouble::empty);
    }

    /** Label of the gauge choice, e.g. "14 AWG". */
    public Optional<String> awgLabel() {
      return awg.map(p -> p.conductor().label());
    }
  }

  /** Tries the catalogue sizes from small to large. */
  public static Result of(Input in) {
    return new Result(
        smallest(Conductor.metricCatalogue(), in), smallest(Conductor.awgCatalogue(), in));
  }

  /** Drop and allowed current of one size. */
  public static Pick check(Conductor conductor, Input in) {
    Drop.Result drop =
        Drop.of(
            new Drop.Input(
                conductor,
                in.oneWayLengthM(),
                OptionalDouble.empty(),
                in.currentA(),
                in.supplyV(),
                in.insulationRatingC()));
    Ampacity.Result allowed =
        Ampacity.of(
            new Ampacity.Input(
                conductor, in.insulationRatingC(), in.ambientC(), in.wires(), in.loadedShare()));
    List<Check> checks =
        List.of(
            Check.atMost(
                "voltage drop",
                drop.dropPercent(),
                in.maxDropPercent(),
                "%",
                "drop of the one-way feed at most "
                    + Require.text(in.maxDropPercent())
                    + " % of the supply",
                "given limit"),
            Check.atMost(
                "conductor carries the load",
                in.currentA(),
                allowed.allowedA(),
                "A",
                "current at most the allowed current of " + conductor.label(),
                "smaller of 33 CFR 183.425 Table 5 and heat balance"));
    return new Pick(
        conductor, checks, Trace.builder().addAll(drop.trace()).addAll(allowed.trace()).build());
  }

  private static Optional<Pick> smallest(List<Conductor> sizes, Input in) {
    return sizes.stream()
        .map(c -> check(c, in))
        .filter(p -> Check.worst(p.checks()) != Verdict.FAILS)
        .findFirst();
  }
}
