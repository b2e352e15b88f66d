package org.loomwright.model.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import javax.measure.Quantity;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * A temperature such as "60 °C", "140 °F" or "-40 °C".
 *
 * <p>Equal when written the same; ordered by value, so the order is not consistent with equality.
 *
 * @param text as written
 * @param quantity the temperature in °C, not below absolute zero
 */
public record Temperature(String text, Quantity<javax.measure.quantity.Temperature> quantity)
    implements Comparable<Temperature> {

  /** Refuses a quantity that is not what the text says. */
  public Temperature {
    if (!quantity.equals(read(text))) {
      throw new IllegalArgumentException("\"" + text + "\" does not say " + quantity);
    }
  }

  /**
   * Reads a text.
   *
   * @throws QuantityException if it can't be read as a temperature
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Temperature of(String text) {
    return new Temperature(text, read(text));
  }

  /**
   * Writes a value as plain digits that read back as the same value.
   *
   * @throws QuantityException if the value can't be that of a temperature
   */
  public static Temperature ofCelsius(double temperatureC) {
    return of(QuantityReader.write(temperatureC, UnitKind.TEMPERATURE, "°C"));
  }

  /** The text as written. */
  @JsonValue
  @Override
  public String text() {
    return text;
  }

  /** The temperature in °C, not below absolute zero. */
  public double celsius() {
    return quantity.getValue().doubleValue();
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(celsius(), other.celsius());
  }

  @Override
  public String toString() {
    return text;
  }

  private static Quantity<javax.measure.quantity.Temperature> read(String text) {
    return Quantities.getQuantity(
        QuantityReader.read(text, UnitKind.TEMPERATURE).value(), Units.CELSIUS);
  }
}
