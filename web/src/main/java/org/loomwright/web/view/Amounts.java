package org.loomwright.web.view;

import java.math.BigDecimal;
import java.math.MathContext;
import org.loomwright.model.quantity.Display;

/** Numbers with their units as people read them, the same in every locale. */
public final class Amounts {
  private Amounts() {}

  /** Four significant figures: more than any wire on a bench is known to. */
  public static String of(double value, String unit) {
    String number = number(value);
    return unit.isEmpty() || unit.equals("1") ? number : number + " " + unit;
  }

  /** The same, lengths and wire sizes in the wanted units. */
  public static String of(double value, String unit, Display units) {
    if (units == Display.US && Double.isFinite(value)) {
      if (unit.equals("mm") || unit.equals("m")) {
        return units.lengthMm(unit.equals("m") ? 1000 * value : value);
      }
      if (unit.equals("mm²") && value > 0) {
        return of(value, unit) + " (" + Display.gauge(value) + ")";
      }
    }
    return of(value, unit);
  }

  private static String number(double value) {
    if (Double.isNaN(value)) {
      return "not known";
    }
    if (Double.isInfinite(value)) {
      return "no limit";
    }
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : BigDecimal.valueOf(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
