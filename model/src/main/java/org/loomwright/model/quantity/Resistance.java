package org.loomwright.model.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * A resistance such as "5 mΩ", "0.5 Ω" or "60 ohm".
 *
 * <p>Equal when written the same; ordered by value, so the order is not consistent with equality.
 *
 * @param text as written
 * @param quantity the resistance in Ω, zero or more
 */
public record Resistance(String text, Quantity<ElectricResistance> quantity)
    implements Comparable<Resistance> {

  /** Refuses a quantity that is not what the text says. */
  public Resistance {
    if (!quantity.equals(read(text))) {
      throw new IllegalArgumentException("\"" + text + "\" does not say " + quantity);
    }
  }

  /**
   * Reads a text.
   *
   * @throws QuantityException if it can't be read as a resistance
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Resistance of(String text) {
    return new Resistance(text, read(text));
  }

  /**
   * Writes a value as plain digits that read back as the same value.
   *
   * @throws QuantityException if the value can't be that of a resistance
   */
  public static Resistance ofOhms(double resistanceOhm) {
    return of(QuantityReader.write(resistanceOhm, UnitKind.RESISTANCE, "Ω"));
  }

  /** The text as written. */
  @JsonValue
  @Override
  public String text() {
    return text;
  }

  /** The resistance in Ω, zero or more. */
  public double ohms() {
    return quantity.getValue().doubleValue();
  }

  @Override
  public int compareTo(Resistance other) {
    return Double.compare(ohms(), other.ohms());
  }

  @Override
  public String toString() {
    return text;
  }

  private static Quantity<ElectricResistance> read(String text) {
    return Quantities.getQuantity(
        QuantityReader.read(text, UnitKind.RESISTANCE).value(), Units.OHM);
  }
}
