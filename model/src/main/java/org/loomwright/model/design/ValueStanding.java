package org.loomwright.model.design;

import java.math.BigDecimal;
import java.util.Optional;

/** How a value that was taken stands against what its reading wants. */
public enum ValueStanding {
  /** Not taken yet. */
  OPEN,
  /** As it has to be. */
  HOLDS,
  /** Not as it has to be, or not to be read as what it should be. */
  OUTSIDE,
  /** Taken; any value will do. */
  TAKEN,
  /** Has to be compared with a value that was not taken, or is no number. */
  NO_BEFORE;

  /**
   * How a value stands.
   *
   * @param value as it is kept, such as "12.6 V", "180 mV" or "yes"; blank when it was not taken. A
   *     number without a unit is in that of the reading
   * @param before the value it is compared with, as it is kept
   */
  public static ValueStanding of(Reading reading, String value, Optional<String> before) {
    if (value.isBlank()) {
      return OPEN;
    }
    return switch (reading.kind()) {
      case WORDS -> TAKEN;
      case WORKS -> of(value.strip().equals("yes"));
      case NUMBER -> number(reading, value, before);
    };
  }

  private static ValueStanding number(Reading reading, String value, Optional<String> before) {
    Optional<MeterNumber> now = in(reading, value);
    if (reading.band().isPresent()) {
      Band band = reading.band().get();
      if (now.filter(it -> band.holds(it.value()) && fits(it, band)).isEmpty()) {
        return OUTSIDE;
      }
    }
    if (reading.mostRise().isPresent()) {
      Optional<MeterNumber> then = before.flatMap(it -> in(reading, it));
      if (now.isEmpty()) {
        return OUTSIDE;
      }
      if (then.isEmpty()) {
        return NO_BEFORE;
      }
      BigDecimal rise = now.get().exact().subtract(then.get().exact());
      return of(rise.compareTo(BigDecimal.valueOf(reading.mostRise().get())) <= 0);
    }
    return reading.band().isPresent() ? HOLDS : TAKEN;
  }

  private static Optional<MeterNumber> in(Reading reading, String value) {
    return MeterNumber.kept(value).flatMap(it -> it.takenIn(reading.unit().orElse("")));
  }

  // With the leads of the meter swapped, every number would be small enough.
  private static boolean fits(MeterNumber number, Band band) {
    return !number.isNegative() || band.low().filter(it -> it < 0).isPresent();
  }

  private static ValueStanding of(boolean holds) {
    return holds ? HOLDS : OUTSIDE;
  }
}
