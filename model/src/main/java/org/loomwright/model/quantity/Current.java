package org.loomwright.model.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * A current such as "22 A" or "350 mA".
 *
 * <p>Equal when written the same; ordered by value, so the order is not consistent with equality.
 *
 * @param text as written
 * @param quantity the current in A, zero or more
 */
public record Current(String text, Quantity<ElectricCurrent> quantity)
    implements Comparable<Current> {

  /** Refuses a quantity that is not what the text says. */
  public Current {
    if (!quantity.equals(read(text))) {
      throw new IllegalArgumentException("\"" + text + "\" does not say " + quantity);
    }
  }

  /**
   * Reads a text.
   *
   * @throws QuantityException if it can't be read as a current
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Current of(String text) {
    return new Current(text, read(text));
  }

  /**
   * Writes a value as plain digits that read back as the same value.
   *
   * @throws QuantityException if the value can't be that of a current
   */
  public static Current ofAmperes(double currentA) {
    return of(QuantityReader.write(currentA, UnitKind.CURRENT, "A"));
  }

  /** The text as written. */
  @JsonValue
  @Override
  public String text() {
    return text;
  }

  /** The current in A, zero or more. */
  public double amperes() {
    return quantity.getValue().doubleValue();
  }

  @Override
  public int compareTo(Current other) {
    return Double.compare(amperes(), other.amperes());
  }

  @Override
  public String toString() {
    return text;
  }

  private static Quantity<ElectricCurrent> read(String text) {
    return Quantities.getQuantity(
        QuantityReader.read(text, UnitKind.CURRENT).value(), Units.AMPERE);
  }
}
