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

  /** Below this a length is a strip length or a crimp height, of which thousandths count. */
  private static final double FINE_BELOW_MM = 10;

  /** Sizes less than this apart are the same wire. */
  private static final double SAME_SIZE = 0.01;

  private static final double MM_PER_INCH = 25.4;

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
   * wire to buy: "2.08 mm² (14 AWG)", "2.5 mm² (nearest 13 AWG)". Only a size within 1 % of a gauge
   * is shown as that gauge alone: see {@link #areaMm2}.
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
    return this == METRIC ? size.text() : gaugeOf(size.areaMm2(), size.label());
  }

  /**
   * A size known by its area alone. Metric: to 0.01 mm². US: the gauge within 1 % of it, e.g. "14
   * AWG" for 2.08 mm², else the area with the gauge nearest to it, "2.5 mm² (nearest 13 AWG)".
   *
   * @param areaMm2 in mm², finite, above zero
   */
  public String areaMm2(double areaMm2) {
    String metric = Plain.rounded(areaMm2, 2) + " mm²";
    return this == METRIC ? metric : gaugeOf(areaMm2, metric);
  }

  /**
   * The gauge of an area: "14 AWG" within 1 % of it, else "nearest 13 AWG".
   *
   * @param areaMm2 in mm², finite, above zero
   */
  public static String gauge(double areaMm2) {
    int gauge = Awg.nearest(areaMm2);
    boolean same = Math.abs(areaMm2 / Awg.areaMm2(gauge) - 1) <= SAME_SIZE;
    return (same ? "" : "nearest ") + Awg.label(gauge);
  }

  private static String gaugeOf(double areaMm2, String metric) {
    String gauge = gauge(areaMm2);
    return gauge.startsWith("nearest") ? metric + " (" + gauge + ")" : gauge;
  }

  /** The unit lengths are shown in: "mm" or "in". */
  public String lengthUnit() {
    return this == METRIC ? "mm" : "in";
  }

  /** As written, or converted to a tenth of a degree. */
  public String show(Temperature temperature) {
    return writtenIn(temperature.text(), UnitKind.TEMPERATURE)
        ? temperature.text()
        : temperatureC(temperature.celsius());
  }

  /**
   * Metric: to 0.1 mm, below 10 mm to 0.01 mm. US: to 0.01 in, below 10 mm (about 0.4 in) to 0.001
   * in.
   *
   * @param lengthMm in mm, finite
   */
  public String lengthMm(double lengthMm) {
    return bareLengthMm(lengthMm) + " " + lengthUnit();
  }

  /** As {@link #lengthMm}, without the unit. */
  public String bareLengthMm(double lengthMm) {
    boolean fine = Math.abs(lengthMm) < FINE_BELOW_MM;
    if (this == METRIC) {
      return Plain.rounded(lengthMm, fine ? 2 : 1);
    }
    return Plain.rounded(lengthMm / MM_PER_INCH, fine ? 3 : 2);
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
}
