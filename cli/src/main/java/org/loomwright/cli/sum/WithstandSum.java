package org.loomwright.cli.sum;

import java.util.OptionalDouble;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.protection.Withstand;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sum withstand}: the current a wire survives for a short time. */
@Command(
    name = "withstand",
    description = "Current that a wire survives for a short time, up to 5 s.",
    sortOptions = false)
final class WithstandSum extends Sum {

  @Option(names = "--wire", required = true, paramLabel = "SIZE", description = Wires.HELP)
  private WireSize wire;

  @Option(
      names = "--insulation",
      required = true,
      paramLabel = "MATERIAL",
      description =
          "Material of the insulation: PVC (70 °C class), PVC 90, XLPE, ETFE, silicone, rubber 60"
              + " or rubber 85.",
      converter = Wires.InsulationReader.class)
  private Insulation insulation;

  @Option(
      names = "--time",
      required = true,
      paramLabel = "TIME",
      description = "How long the current flows.")
  private TimeSpan time;

  @Override
  Answer answer() {
    Withstand.Result result =
        Withstand.of(
            new Withstand.Input(
                Wires.conductor(wire), insulation, OptionalDouble.empty(), time.seconds()));
    return Answer.of(result.trace(), Figure.of("currentA", "current", result.currentA(), "A"));
  }
}
