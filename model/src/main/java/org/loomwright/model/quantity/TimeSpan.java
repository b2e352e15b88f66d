package org.loomwright.model.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * A length of time such as "90 s", "5 min", "150 ms" or "1 h 30 min".
 *
 * <p>Equal when written the same; ordered by value, so the order is not consistent with equality.
 *
 * @param text as written
 * @param quantity the time in s, zero or more
 */
public record TimeSpan(String text, Quantity<Time> quantity) implements Comparable<TimeSpan> {

  /** Refuses a quantity that is not what the text says. */
  public TimeSpan {
    if (!quantity.equals(read(text))) {
      throw new IllegalArgumentException("\"" + text + "\" does not say " + quantity);
    }
  }

  /**
   * Reads a text.
   *
   * @throws QuantityException if it can't be read as a time
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static TimeSpan of(String text) {
    return new TimeSpan(text, read(text));
  }

  /**
   * Writes a value as plain digits that read back as the same value.
   *
   * @throws QuantityException if the value can't be that of a time
   */
  public static TimeSpan ofSeconds(double timeS) {
    return of(QuantityReader.write(timeS, UnitKind.TIME, "s"));
  }

  /** The text as written. */
  @JsonValue
  @Override
  public String text() {
    return text;
  }

  /** The time in s, zero or more. */
  public double seconds() {
    return quantity.getValue().doubleValue();
  }

  @Override
  public int compareTo(TimeSpan other) {
    return Double.compare(seconds(), other.seconds());
  }

  @Override
  public String toString() {
    return text;
  }

  private static Quantity<Time> read(String text) {
    return Quantities.getQuantity(QuantityReader.read(text, UnitKind.TIME).value(), Units.SECOND);
  }
}
