package org.loomwright.cli.sum;

import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.heat.WireHeat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sum temperature}: steady conductor temperature of a single wire in still air. */
@Command(
    name = "temperature",
    description = "Temperature that the conductor of a single wire in still air settles at.",
    sortOptions = false)
final class TemperatureSum extends Sum {

  @Option(names = "--wire", required = true, paramLabel = "SIZE", description = Wires.HELP)
  private WireSize wire;

  @Option(
      names = "--current",
      required = true,
      paramLabel = "CURRENT",
      description = "Steady current.")
  private Current current;

  @Option(
      names = "--ambient",
      required = true,
      paramLabel = "TEMPERATURE",
      description = "Temperature of the air around.")
  private Temperature ambient;

  @Override
  Answer answer() {
    WireHeat.Result result =
        WireHeat.temperature(
            WireHeat.Lying.single(Wires.conductor(wire), ambient.celsius()), current.amperes());
    return Answer.of(
        result.trace(), Figure.of("conductorC", "conductor", result.conductorC(), "°C"));
  }
}
