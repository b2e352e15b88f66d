package org.loomwright.model.quantity;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.OptionalInt;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * The size of a conductor: a cross-section such as "2.5 mm²" or a gauge such as "14 AWG" or "2/0
 * AWG". The area of a gauge is that of the solid wire by ASTM B258.
 *
 * <p>Equal when written the same; ordered by area, so the order is not consistent with equality.
 *
 * @param text as written
 * @param quantity the area in mm², above zero
 */
public record WireSize(String text, Quantity<Area> quantity) implements Comparable<WireSize> {

  /** Refuses a quantity that is not what the text says. */
  public WireSize {
    if (!quantity.equals(read(text))) {
      throw new IllegalArgumentException("\"" + text + "\" does not say " + quantity);
    }
  }

  /**
   * Reads a text.
   *
   * @throws QuantityException if it can't be read as a wire size
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static WireSize of(String text) {
    return new WireSize(text, read(text));
  }

  /**
   * Writes an area as plain digits that read back as the same value.
   *
   * @throws QuantityException if the value can't be the area of a conductor
   */
  public static WireSize ofMm2(double areaMm2) {
    return of(QuantityReader.write(areaMm2, UnitKind.WIRE_SIZE, "mm²"));
  }

  /**
   * A gauge by its number.
   *
   * @param gauge 40 to 1, then 0, −1, −2, −3 for 1/0 to 4/0
   * @throws QuantityException if there is no such gauge
   */
  public static WireSize ofAwg(int gauge) {
    if (gauge < Awg.LARGEST_WIRE) {
      throw new QuantityException(
          gauge + " AWG",
          0,
          UnitKind.WIRE_SIZE.noun(),
          "there is no such gauge here",
          "-3 (for 4/0) to " + Awg.SMALLEST_WIRE);
    }
    return of(Awg.label(gauge));
  }

  /** The text as written. */
  @JsonValue
  @Override
  public String text() {
    return text;
  }

  /** The area in mm², above zero. */
  public double areaMm2() {
    return quantity.getValue().doubleValue();
  }

  /** Whether the size is written as a gauge. */
  public boolean isAwg() {
    return AwgReader.isFor(text);
  }

  /** The gauge number if written as one: 0, −1, −2, −3 stand for 1/0 to 4/0. */
  public OptionalInt awg() {
    return isAwg() ? OptionalInt.of(AwgReader.read(text)) : OptionalInt.empty();
  }

  /** One spelling for each size: "14 AWG", "2/0 AWG", "2.5 mm²". */
  public String label() {
    OptionalInt gauge = awg();
    return gauge.isPresent() ? Awg.label(gauge.getAsInt()) : Plain.text(areaMm2()) + " mm²";
  }

  @Override
  public int compareTo(WireSize other) {
    return Double.compare(areaMm2(), other.areaMm2());
  }

  @Override
  public String toString() {
    return text;
  }

  private static Quantity<Area> read(String text) {
    double areaMm2 =
        AwgReader.isFor(text)
            ? Awg.areaMm2(AwgReader.read(text))
            : QuantityReader.read(text, UnitKind.WIRE_SIZE).value();
    if (areaMm2 == 0) {
      throw new QuantityException(
          text,
          0,
          UnitKind.WIRE_SIZE.noun(),
          "a conductor must have an area above zero",
          QuantityReader.quoted(UnitKind.WIRE_SIZE.example()));
    }
    return Quantities.getQuantity(
        areaMm2, MetricPrefix.MILLI(Units.METRE).pow(2).asType(Area.class));
  }
}
