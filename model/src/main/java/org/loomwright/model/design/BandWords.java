package org.loomwright.model.design;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What readings have to be, in words. */
public final class BandWords {
  private static final Pattern NAMED = Pattern.compile(", in ([^ ,]+)$");

  private BandWords() {}

  /** What a reading has to be, in words; empty where any value will do. */
  public static Optional<String> wanted(Reading reading) {
    return switch (reading.kind()) {
      case NUMBER -> reading.band().map(Band::words);
      case WORKS -> Optional.of("yes");
      case WORDS -> Optional.empty();
    };
  }

  /**
   * The unit a reading's number is typed in: that of its band; of one without a band the unit that
   * ends its name, as in "key-off current, in mA"; else that of the reading it repeats. Empty where
   * none says one.
   */
  public static Optional<String> unit(Guide guide, Reading reading) {
    return unit(reading)
        .or(
            () ->
                guide.steps().stream()
                    .flatMap(step -> step.readings().stream())
                    .filter(it -> reading.compareWith().filter(it.id()::equals).isPresent())
                    .flatMap(it -> unit(it).stream())
                    .findFirst());
  }

  private static Optional<String> unit(Reading reading) {
    Matcher named = NAMED.matcher(reading.name());
    return reading
        .band()
        .map(Band::unit)
        .or(() -> named.find() ? Optional.of(named.group(1)) : Optional.empty());
  }
}
