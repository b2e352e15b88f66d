package org.loomwright.cli.sum;

import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.wire.Drop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sum drop}: voltage drop along a lead, with or without the way back. */
@Command(name = "drop", description = "Voltage drop along a lead.", sortOptions = false)
final class DropSum extends Sum {

  @Option(names = "--wire", required = true, paramLabel = "SIZE", description = Wires.HELP)
  private WireSize wire;

  @Option(
      names = "--length",
      required = true,
      paramLabel = "LENGTH",
      description = "One-way length of the lead.")
  private Length length;

  @Option(
      names = "--return-length",
      paramLabel = "LENGTH",
      description =
          "Length of the way back in the same wire; without it, the way back is left out.")
  private Optional<Length> returnLength;

  @Option(
      names = "--current",
      required = true,
      paramLabel = "CURRENT",
      description = "Steady current.")
  private Current current;

  @Option(
      names = "--supply",
      required = true,
      paramLabel = "VOLTAGE",
      description = "Supply voltage; the percentage refers to it.")
  private Voltage supply;

  @Option(
      names = "--temperature",
      required = true,
      paramLabel = "TEMPERATURE",
      description = "Temperature of the conductor.")
  private Temperature temperature;

  @Override
  Answer answer() {
    OptionalDouble returnM =
        returnLength.isPresent()
            ? OptionalDouble.of(Wires.metres(returnLength.get()))
            : OptionalDouble.empty();
    Drop.Result result =
        Drop.of(
            new Drop.Input(
                Wires.conductor(wire),
                Wires.metres(length),
                returnM,
                current.amperes(),
                supply.volts(),
                temperature.celsius()));
    return Answer.of(
        result.trace(),
        Figure.of("dropV", "drop", result.dropV(), "V"),
        Figure.of("dropPercent", "of the supply", result.dropPercent(), "%"));
  }
}
