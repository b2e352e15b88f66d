package org.loomwright.model.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * A voltage such as "12.6 V" or "-0.5 V".
 *
 * <p>Equal when written the same; ordered by value, so the order is not consistent with equality.
 *
 * @param text as written
 * @param quantity the voltage in V, of either sign
 */
public record Voltage(String text, Quantity<ElectricPotential> quantity)
    implements Comparable<Voltage> {

  /** Refuses a quantity that is not what the text says. */
  public Voltage {
    if (!quantity.equals(read(text))) {
      throw new IllegalArgumentException("\"" + text + "\" does not say " + quantity);
    }
  }

  /**
   * Reads a text.
   *
   * @throws QuantityException if it can't be read as a voltage
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Voltage of(String text) {
    return new Voltage(text, read(text));
  }

  /**
   * Writes a value as plain digits that read back as the same value.
   *
   * @throws QuantityException if the value can't be that of a voltage
   */
  public static Voltage ofVolts(double voltageV) {
    return of(QuantityReader.write(voltageV, UnitKind.VOLTAGE, "V"));
  }

  /** The text as written. */
  @JsonValue
  @Override
  public String text() {
    return text;
  }

  /** The voltage in V, of either sign. */
  public double volts() {
    return quantity.getValue().doubleValue();
  }

  @Override
  public int compareTo(Voltage other) {
    return Double.compare(volts(), other.volts());
  }

  @Override
  public String toString() {
    return text;
  }

  private static Quantity<ElectricPotential> read(String text) {
    return Quantities.getQuantity(QuantityReader.read(text, UnitKind.VOLTAGE).value(), Units.VOLT);
  }
}
