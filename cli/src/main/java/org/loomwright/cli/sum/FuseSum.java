package org.loomwright.cli.sum;

import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.sizing.FuseChoice;
import org.loomwright.physics.sizing.FuseRequest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sum fuse}: the smallest fuse that serves a load, and whether the wire suits it. */
@Command(
    name = "fuse",
    description = {
      "Smallest blade fuse that carries the load and rides out its start, and whether the wire is"
          + " protected by it. The wire is a single one with 105 °C PVC insulation, the way back as"
          + " long as the feed.",
      "Ends with 1 when a check fails."
    },
    sortOptions = false)
final class FuseSum extends Sum {

  @Option(
      names = "--continuous",
      required = true,
      paramLabel = "CURRENT",
      description = "Steady current of the load.")
  private Current continuous;

  @Option(
      names = "--peak",
      required = true,
      paramLabel = "CURRENT",
      description = "Starting current; \"0 A\" for none.")
  private Current peak;

  @Option(
      names = "--peak-time",
      required = true,
      paramLabel = "TIME",
      description = "How long the starting current lasts.")
  private TimeSpan peakTime;

  @Option(names = "--wire", required = true, paramLabel = "SIZE", description = Wires.HELP)
  private WireSize wire;

  @Option(
      names = "--length",
      required = true,
      paramLabel = "LENGTH",
      description = "One-way length from the fuse to the load.")
  private Length length;

  @Option(
      names = "--ambient",
      required = true,
      paramLabel = "TEMPERATURE",
      description = "Temperature of the air along the wire.")
  private Temperature ambient;

  @Option(
      names = "--supply",
      required = true,
      paramLabel = "VOLTAGE",
      description = "Lowest voltage at which the load runs.")
  private Voltage supply;

  @Override
  Answer answer() {
    FuseChoice.Result result =
        FuseChoice.of(
            FuseRequest.of(
                continuous.amperes(),
                peak.amperes(),
                peakTime.seconds(),
                Wires.conductor(wire),
                Wires.metres(length),
                ambient.celsius(),
                supply.volts()));
    Figure fuse =
        result.fuse().isPresent()
            ? new Figure("fuseA", "fuse", result.fuseA(), result.fuse().get().label())
            : Figure.none("fuseA", "fuse", "no standard fuse carries the load and its start");
    return Answer.checked(result.trace(), result.checks(), fuse);
  }
}
