package org.loomwright.model.quantity;

import org.loomwright.model.quantity.UnitWord.UnitSystem;

/**
 * Shows quantities in metric or US units. What is already written in the wanted units is shown as
 * written; anything else is worked out anew from the value as written each time. What is shown is
 * for reading and never becomes data, so nothing drifts however often the units are switched.
 */
public enum Display {
  /** Millimetres, mm², °C. */
  METRIC(UnitSystem.METRIC),
  /** Inches, AWG, °F. */
  US(UnitSystem.US);

  /** Below this a length is a strip length or a crimp height, and 1/32 in is too coarse. */
  private static final double FINE_BELOW_MM = 10;

  private static final double MM_PER_INCH = 25.4;

  /** 1/32 in is less than 1 mm, so whole millimetres stay apart. */
  private static final int PARTS_OF_INCH = 32;

  private final UnitSystem system;

  Display(UnitSystem system) {
    this.system = system;
  }

  /** As written, or converted: see {@link #lengthMm}. */
  public String show(Length length) {
    return writtenIn(length.text(), UnitKind.LENGTH) ? length.text() : lengthMm(length.mm());
  }

  /**
   * As written; a size written the other way always keeps the one as written, because that is the
   * wire to buy: "2.08 mm² (14 AWG)", "2.5 mm² (nearest 13 AWG)".
   */
  public String show(WireSize size) {
    if (size.isAwg()) {
      return this == US
          ? size.text()
          : Plain.rounded(size.areaMm2(), areaDecimals(size.areaMm2()))
              + " mm² ("
              + size.label()
              + ")";
    }
    return this == METRIC
        ? size.text()
        : size.label() + " (nearest " + Awg.label(Awg.nearest(size.areaMm2())) + ")";
  }

  /** As written, or converted to a tenth of a degree. */
  public String show(Temperature temperature) {
    return writtenIn(temperature.text(), UnitKind.TEMPERATURE)
        ? temperature.text()
        : temperatureC(temperature.celsius());
  }

  /**
   * Metric: to 0.1 mm, below 10 mm to 0.01 mm. US: to 1/32 in, below 10 mm (about 0.4 in) to 0.001
   * in.
   *
   * @param lengthMm in mm, finite
   */
  public String lengthMm(double lengthMm) {
    boolean fine = Math.abs(lengthMm) < FINE_BELOW_MM;
    if (this == METRIC) {
      return Plain.rounded(lengthMm, fine ? 2 : 1) + " mm";
    }
    double inches = lengthMm / MM_PER_INCH;
    return (fine ? Plain.rounded(inches, 3) : thirtySeconds(inches)) + " in";
  }

  /**
   * To 0.1 degree.
   *
   * @param temperatureC in °C, finite
   */
  public String temperatureC(double temperatureC) {
    return this == METRIC
        ? Plain.rounded(temperatureC, 1) + " °C"
        : Plain.rounded(temperatureC * 9 / 5 + 32, 1) + " °F";
  }

  private boolean writtenIn(String text, UnitKind kind) {
    return QuantityReader.read(text, kind).system() == system;
  }

  private static int areaDecimals(double areaMm2) {
    return areaMm2 < 1 ? 3 : 2;
  }

  private static String thirtySeconds(double inches) {
    long parts = Math.round(Math.abs(inches) * PARTS_OF_INCH);
    long whole = parts / PARTS_OF_INCH;
    long top = parts % PARTS_OF_INCH;
    String sign = inches < 0 && parts != 0 ? "-" : "";
    if (top == 0) {
      return sign + whole;
    }
    long shared = Long.lowestOneBit(top);
    String fraction = (top / shared) + "/" + (PARTS_OF_INCH / shared);
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }
}
