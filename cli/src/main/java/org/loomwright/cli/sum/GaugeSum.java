package org.loomwright.cli.sum;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.sizing.GaugeChoice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code sum gauge}: the smallest wire that holds voltage drop and allowed current. */
@Command(
    name = "gauge",
    description = {
      "Smallest metric size and smallest gauge of a single wire that hold the voltage drop and the"
          + " allowed current at once.",
      "Ends with 1 when no size does."
    },
    sortOptions = false)
final class GaugeSum extends Sum {

  private static final String NO_SIZE = "even the largest size drops or heats too much";

  @Option(
      names = "--current",
      required = true,
      paramLabel = "CURRENT",
      description = "Steady current.")
  private Current current;

  @Option(
      names = "--length",
      required = true,
      paramLabel = "LENGTH",
      description =
          "One-way length of the lead. For a way back in the same wire give the length there and"
              + " back.")
  private Length length;

  @Option(
      names = "--supply",
      required = true,
      paramLabel = "VOLTAGE",
      description = "Supply voltage; the largest drop refers to it.")
  private Voltage supply;

  @Option(
      names = "--max-drop",
      required = true,
      paramLabel = "PERCENT",
      description = "Largest voltage drop, such as \"3%%\".")
  private Percent maxDrop;

  @Option(
      names = "--ambient",
      required = true,
      paramLabel = "TEMPERATURE",
      description = "Temperature of the air around.")
  private Temperature ambient;

  @Option(
      names = "--insulation-rating",
      required = true,
      paramLabel = "TEMPERATURE",
      description = "Highest continuous temperature of the insulation.")
  private Temperature insulationRating;

  @Override
  Answer answer() {
    GaugeChoice.Result result =
        GaugeChoice.of(
            GaugeChoice.Input.single(
                current.amperes(),
                Wires.metres(length),
                supply.volts(),
                100 * maxDrop.fraction(),
                ambient.celsius(),
                insulationRating.celsius()));
    List<Answer.Way> ways =
        Stream.of(result.metric(), result.awg())
            .flatMap(Optional::stream)
            .map(
                pick -> new Answer.Way("Why " + pick.conductor().label() + " serves", pick.trace()))
            .toList();
    boolean fails = result.metric().isEmpty() && result.awg().isEmpty();
    return new Answer(
        List.of(
            result.areaMm2().isPresent()
                ? Figure.of("areaMm2", "metric", result.areaMm2().getAsDouble(), "mm²")
                : Figure.none("areaMm2", "metric", NO_SIZE),
            gauge(result.awgLabel())),
        List.of(),
        fails,
        ways);
  }

  /** The gauge as a number: 0, -1, -2, -3 stand for 1/0 to 4/0. */
  private static Figure gauge(Optional<String> label) {
    if (label.isEmpty()) {
      return Figure.none("awg", "gauge", NO_SIZE);
    }
    OptionalDouble number =
        WireSize.of(label.get()).awg().stream().mapToDouble(gauge -> gauge).findFirst();
    return new Figure("awg", "gauge", number, label.get());
  }
}
