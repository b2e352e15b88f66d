package org.loomwright.model.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;

/**
 * A share such as "60 %" or "3%". May be above 100 %.
 *
 * <p>Equal when written the same; ordered by value, so the order is not consistent with equality.
 *
 * @param text as written
 * @param quantity the share of one, zero or more: 0.6 for "60 %"
 */
public record Percent(String text, Quantity<Dimensionless> quantity)
    implements Comparable<Percent> {

  /** Refuses a quantity that is not what the text says. */
  public Percent {
    if (!quantity.equals(read(text))) {
      throw new IllegalArgumentException("\"" + text + "\" does not say " + quantity);
    }
  }

  /**
   * Reads a text.
   *
   * @throws QuantityException if it can't be read as a percentage
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Percent of(String text) {
    return new Percent(text, read(text));
  }

  /**
   * Writes a value as plain digits that read back as the same value.
   *
   * @throws QuantityException if the value can't be that of a percentage
   */
  public static Percent ofFraction(double fraction) {
    return of(QuantityReader.writePercent(fraction));
  }

  /** The text as written. */
  @JsonValue
  @Override
  public String text() {
    return text;
  }

  /** The share of one, zero or more: 0.6 for "60 %". */
  public double fraction() {
    return quantity.getValue().doubleValue();
  }

  @Override
  public int compareTo(Percent other) {
    return Double.compare(fraction(), other.fraction());
  }

  @Override
  public String toString() {
    return text;
  }

  private static Quantity<Dimensionless> read(String text) {
    return Quantities.getQuantity(
        QuantityReader.read(text, UnitKind.PERCENT).value(), AbstractUnit.ONE);
  }
}
