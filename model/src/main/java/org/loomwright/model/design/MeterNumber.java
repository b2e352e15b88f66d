package org.loomwright.model.design;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.model.vehicle.MeterBand.Unit;

/**
 * A number as it is read off a meter.
 *
 * @param exact its value, in the unit
 * @param unit unit it is in, such as "mV"; empty for none
 */
public record MeterNumber(BigDecimal exact, String unit) {
  private static final Pattern KEPT = Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?)(?: (\\S+))?");

  /** The number of a value as it is kept, such as "12.6 V"; empty when it is none. */
  public static Optional<MeterNumber> kept(String value) {
    Matcher match = KEPT.matcher(value.strip());
    return match.matches()
        ? Optional.of(
            new MeterNumber(
                new BigDecimal(match.group(1)), Optional.ofNullable(match.group(2)).orElse("")))
        : Optional.empty();
  }

  /** Its value. */
  public double value() {
    return exact.doubleValue();
  }

  /** Whether it is below zero, as with the leads of the meter swapped. */
  public boolean isNegative() {
    return exact.signum() < 0;
  }

  /** Its digits. */
  public String digits() {
    return exact.toPlainString();
  }

  /** Number and unit. */
  public String words() {
    return digits() + (unit.isEmpty() ? "" : " " + unit);
  }

  /** The same in another unit; empty when the units are not of one quantity. */
  public Optional<MeterNumber> in(String other) {
    if (other.equals(unit)) {
      return Optional.of(this);
    }
    Optional<Unit> from = Unit.of(unit);
    return Unit.of(other)
        .filter(to -> from.filter(it -> it.sort() == to.sort()).isPresent())
        .map(to -> to.fromBase(from.orElseThrow().toBase(exact)))
        // Written out: a number of thousands is not kept as 1.2E+3.
        .map(it -> new MeterNumber(new BigDecimal(it.toPlainString()), other));
  }

  /** The same in another unit; a number without one is taken to be in it. */
  public Optional<MeterNumber> takenIn(String other) {
    return unit.isEmpty() ? Optional.of(new MeterNumber(exact, other)) : in(other);
  }
}
