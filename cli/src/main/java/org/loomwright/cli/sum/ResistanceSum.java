package org.loomwright.cli.sum;

import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.wire.Resistance;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sum resistance}: resistance of a length of wire at a temperature. */
@Command(
    name = "resistance",
    description = "Resistance of a length of wire at the temperature of its conductor.",
    sortOptions = false)
final class ResistanceSum extends Sum {

  @Option(names = "--wire", required = true, paramLabel = "SIZE", description = Wires.HELP)
  private WireSize wire;

  @Option(
      names = "--length",
      required = true,
      paramLabel = "LENGTH",
      description = "Length of the wire.")
  private Length length;

  @Option(
      names = "--temperature",
      required = true,
      paramLabel = "TEMPERATURE",
      description = "Temperature of the conductor.")
  private Temperature temperature;

  @Override
  Answer answer() {
    Resistance.Result result =
        Resistance.of(
            new Resistance.Input(
                Wires.conductor(wire), Wires.metres(length), temperature.celsius()));
    return Answer.of(
        result.trace(), Figure.of("resistanceOhm", "resistance", result.resistanceOhm(), "ohm"));
  }
}
