package org.loomwright.cli.sum;

import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.heat.Ampacity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sum ampacity}: allowed continuous current by handbook and by heat balance. */
@Command(
    name = "ampacity",
    description = "Allowed continuous current of a wire, by handbook table and by heat balance.",
    sortOptions = false)
final class AmpacitySum extends Sum {

  @Option(names = "--wire", required = true, paramLabel = "SIZE", description = Wires.HELP)
  private WireSize wire;

  @Option(
      names = "--insulation-rating",
      required = true,
      paramLabel = "TEMPERATURE",
      description = "Highest continuous temperature of the insulation.")
  private Temperature insulationRating;

  @Option(
      names = "--ambient",
      required = true,
      paramLabel = "TEMPERATURE",
      description = "Temperature of the air around.")
  private Temperature ambient;

  @Option(
      names = "--wires",
      paramLabel = "N",
      defaultValue = "1",
      description = "Wires in the bundle, this one included; without it, a single wire.")
  private int wires;

  @Option(
      names = "--loaded",
      paramLabel = "PERCENT",
      description =
          "Share of the bundle's capacity in use, such as \"60%%\": the bundle curves of AC 43.13-1B"
              + " then count instead of the table's own bundle note.")
  private Optional<Percent> loaded;

  @Override
  Answer answer() {
    Ampacity.Result result =
        Ampacity.of(
            new Ampacity.Input(
                Wires.conductor(wire),
                insulationRating.celsius(),
                ambient.celsius(),
                wires,
                loaded.isPresent()
                    ? OptionalDouble.of(loaded.get().fraction())
                    : OptionalDouble.empty()));
    return Answer.of(
        result.trace(),
        result.handbookA().isPresent()
            ? Figure.of("handbookA", "by handbook", result.handbookA().getAsDouble(), "A")
            : Figure.none("handbookA", "by handbook", result.whyNoHandbook().orElse("")),
        Figure.of("heatBalanceA", "by heat balance", result.heatBalanceA(), "A"),
        Figure.of("allowedA", "allowed", result.allowedA(), "A"));
  }
}
