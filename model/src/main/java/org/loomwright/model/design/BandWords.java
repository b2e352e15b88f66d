package org.loomwright.model.design;

import java.math.BigDecimal;
import java.util.Optional;

/** What readings have to be, in words. */
public final class BandWords {
  private BandWords() {}

  /** What a reading has to be, in words; empty where any value will do. */
  public static Optional<String> wanted(Reading reading) {
    return switch (reading.kind()) {
      case NUMBER -> reading.band().map(Band::words).or(() -> rise(reading));
      case WORKS -> Optional.of("yes");
      case WORDS -> Optional.empty();
    };
  }

  private static Optional<String> rise(Reading reading) {
    return reading
        .mostRise()
        .map(
            it ->
                "at most "
                    + BigDecimal.valueOf(it).stripTrailingZeros().toPlainString()
                    + " "
                    + reading.unit().orElse("")
                    + " above the value before");
  }
}
