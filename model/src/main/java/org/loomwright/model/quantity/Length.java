package org.loomwright.model.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * A length such as "820 mm", "32 1/2 in", "3 ft 6 in" or "1.2 m".
 *
 * <p>Equal when written the same; ordered by value, so the order is not consistent with equality.
 *
 * @param text as written
 * @param quantity the length in mm, zero or more
 */
public record Length(String text, Quantity<javax.measure.quantity.Length> quantity)
    implements Comparable<Length> {

  /** Refuses a quantity that is not what the text says. */
  public Length {
    if (!quantity.equals(read(text))) {
      throw new IllegalArgumentException("\"" + text + "\" does not say " + quantity);
    }
  }

  /**
   * Reads a text.
   *
   * @throws QuantityException if it can't be read as a length
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Length of(String text) {
    return new Length(text, read(text));
  }

  /**
   * Writes a value as plain digits that read back as the same value.
   *
   * @throws QuantityException if the value can't be that of a length
   */
  public static Length ofMm(double lengthMm) {
    return of(QuantityReader.write(lengthMm, UnitKind.LENGTH, "mm"));
  }

  /** The text as written. */
  @JsonValue
  @Override
  public String text() {
    return text;
  }

  /** The length in mm, zero or more. */
  public double mm() {
    return quantity.getValue().doubleValue();
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(mm(), other.mm());
  }

  @Override
  public String toString() {
    return text;
  }

  private static Quantity<javax.measure.quantity.Length> read(String text) {
    return Quantities.getQuantity(
        QuantityReader.read(text, UnitKind.LENGTH).value(), MetricPrefix.MILLI(Units.METRE));
  }
}
