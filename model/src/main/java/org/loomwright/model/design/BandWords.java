package org.loomwright.model.design;

import java.math.BigDecimal;
import java.util.Optional;

/** Bands and readings in words. */
public final class BandWords {
  private BandWords() {}

  /** Where a number has to lie, e.g. "12.4 V or more" or "4.5 V to 5.5 V". */
  public static String of(Band band) {
    Optional<String> low = band.low().map(it -> number(it) + " " + band.unit());
    Optional<String> high = band.high().map(it -> number(it) + " " + band.unit());
    if (low.isPresent() && high.isPresent()) {
      return low.get().equals(high.get()) ? low.get() : low.get() + " to " + high.get();
    }
    return low.map(it -> it + " or more").or(() -> high.map(it -> it + " or less")).orElse("");
  }

  /** What a reading has to be, in words; empty where any value will do. */
  public static Optional<String> wanted(Reading reading) {
    return switch (reading.kind()) {
      case NUMBER -> reading.band().map(BandWords::of);
      case WORKS -> Optional.of("yes");
      case WORDS -> Optional.empty();
    };
  }

  /**
   * The unit a reading's number is typed in: that of its band, else of the band of the reading it
   * repeats; empty where neither has one.
   */
  public static Optional<String> unit(Guide guide, Reading reading) {
    return reading
        .band()
        .or(
            () ->
                guide.steps().stream()
                    .flatMap(step -> step.readings().stream())
                    .filter(it -> reading.compareWith().filter(it.id()::equals).isPresent())
                    .flatMap(it -> it.band().stream())
                    .findFirst())
        .map(Band::unit);
  }

  private static String number(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
