package org.loomwright.papers.words;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import org.loomwright.model.quantity.Display;

/** How numbers are written on paper. Every number of the pack goes through here. */
public final class Figures {
  /** Keeps the groups of a number together and takes little room. */
  private static final char GROUP = '\u202F';

  private static final char MINUS = '\u2212';
  private static final int MOST_DECIMALS = 6;
  private static final double MM_PER_INCH = 25.4;
  private static final double SECONDS_PER_HOUR = 3600;

  /** Below this, mm are those of wires and terminals, of which tenths count. */
  private static final double FINE_MM = 20;

  /** Decimals by unit; other units get three significant digits. */
  private static final Map<String, Integer> DECIMALS =
      Map.of("mm", 0, "A", 1, "V", 2, "°C", 0, "%", 1, "mm²", 2, "min", 0);

  private Figures() {}

  /** A length along a lead in whole mm. */
  public static String mm(double lengthMm) {
    return fixed(lengthMm, 0);
  }

  /** A strip length or crimp height in mm, to a hundredth, without needless zeros. */
  public static String fineMm(double lengthMm) {
    return upTo(lengthMm, 2);
  }

  /** A length along a lead in the wanted units, without its unit. */
  public static String mm(double lengthMm, Display units) {
    return units == Display.METRIC || !Double.isFinite(lengthMm)
        ? mm(lengthMm)
        : sign(units.bareLengthMm(lengthMm));
  }

  /** A fine length in the wanted units, without its unit. */
  public static String fineMm(double lengthMm, Display units) {
    return units == Display.METRIC || !Double.isFinite(lengthMm)
        ? fineMm(lengthMm)
        : sign(units.bareLengthMm(lengthMm));
  }

  /** A conductor area under a heading that gives mm², or with its own unit where that is not so. */
  public static String area(double areaMm2, Display units) {
    return isMetric(areaMm2, units) ? area(areaMm2) : units.areaMm2(areaMm2);
  }

  /** A conductor area with its unit. */
  public static String size(double areaMm2, Display units) {
    return isMetric(areaMm2, units) ? area(areaMm2) + " mm²" : units.areaMm2(areaMm2);
  }

  /** Heading of a column of lengths in mm or of areas in mm², as it is in the wanted units. */
  public static String head(String metric, Display units) {
    return units == Display.METRIC
        ? metric
        : metric.endsWith(" mm²") ? "Size" : metric.replaceFirst(" mm$", " in");
  }

  private static boolean isMetric(double areaMm2, Display units) {
    return units == Display.METRIC || !(areaMm2 > 0) || Double.isInfinite(areaMm2);
  }

  /** A current in A, one decimal where needed. */
  public static String amps(double currentA) {
    return upTo(currentA, 1);
  }

  /** A conductor area in mm², up to two decimals. */
  public static String area(double areaMm2) {
    return upTo(areaMm2, 2);
  }

  /** An amount of money, two decimals, without currency. */
  public static String money(BigDecimal amount) {
    return sign(amount.setScale(2, RoundingMode.HALF_UP).toPlainString());
  }

  /** An amount of money with its currency. */
  public static String money(BigDecimal amount, String currency) {
    return money(amount) + "\u00A0" + currency;
  }

  /** A time in whole minutes. */
  public static String minutes(double minutes) {
    return minutes > 0 && minutes < 1 ? "under 1" : fixed(minutes, 0);
  }

  /** A count on average, to one decimal. */
  public static String average(double count) {
    return fixed(count, 1);
  }

  /** A quantity of parts, up to two decimals. */
  public static String quantity(double quantity) {
    return upTo(quantity, 2);
  }

  /** A share as whole percent; what is small but not nothing says so. */
  public static String share(double share) {
    if (Double.isFinite(share) && share > 0 && share < 0.01) {
      return "under 1\u00A0%";
    }
    return fixed(share * 100, 0) + "\u00A0%";
  }

  /** A count with its digits in groups of three. */
  public static String count(BigInteger count) {
    String digits = count.abs().toString();
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < digits.length(); i++) {
      if (i > 0 && (digits.length() - i) % 3 == 0) {
        text.append(GROUP);
      }
      text.append(digits.charAt(i));
    }
    return count.signum() < 0 ? MINUS + text.toString() : text.toString();
  }

  /** Words as the start of a line: first letter large. */
  public static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** A count of builds with the word. */
  public static String builds(BigInteger count) {
    return count(count) + (count.equals(BigInteger.ONE) ? " build" : " builds");
  }

  /** A figure with its unit. */
  public static String figure(double value, String unit) {
    if (isLongTime(value, unit)) {
      return hours(value);
    }
    return withUnit(number(value, unit), unit);
  }

  /**
   * A figure as it stands beside its limit: when both would be printed alike though they differ, it
   * gets decimals until the difference shows.
   */
  public static String figureBeside(double value, double other, String unit) {
    if (isLongTime(value, unit)) {
      return hours(value);
    }
    String text = number(value, unit);
    if (value == other || !Double.isFinite(value) || !Double.isFinite(other)) {
      return withUnit(text, unit);
    }
    String beside = number(other, unit);
    for (int decimals = DECIMALS.getOrDefault(unit, 0) + 1;
        text.equals(beside) && decimals <= MOST_DECIMALS;
        decimals++) {
      text = fixed(value, decimals);
      beside = fixed(other, decimals);
    }
    return withUnit(text, unit);
  }

  /** As {@link #figureBeside(double, double, String)}, lengths and sizes in the wanted units. */
  public static String figureBeside(double value, double other, String unit, Display units) {
    if (units == Display.US && unit.equals("mm") && Double.isFinite(value)) {
      return inchesBeside(value, other);
    }
    String shown = figureBeside(value, other, unit);
    return unit.equals("mm²") && !isMetric(value, units)
        ? shown + " (" + Display.gauge(value) + ")"
        : shown;
  }

  private static String inchesBeside(double valueMm, double otherMm) {
    String text = sign(Display.US.bareLengthMm(valueMm));
    if (valueMm != otherMm && Double.isFinite(otherMm)) {
      String beside = sign(Display.US.bareLengthMm(otherMm));
      for (int decimals = 3; text.equals(beside) && decimals <= MOST_DECIMALS; decimals++) {
        text = fixed(valueMm / MM_PER_INCH, decimals);
        beside = fixed(otherMm / MM_PER_INCH, decimals);
      }
    }
    return withUnit(text, "in");
  }

  /** Nobody thinks of hours in seconds. */
  private static boolean isLongTime(double value, String unit) {
    return unit.equals("s") && Double.isFinite(value) && value >= 2 * SECONDS_PER_HOUR;
  }

  private static String hours(double seconds) {
    return upTo(seconds / SECONDS_PER_HOUR, 1) + "\u00A0h";
  }

  /** A margin in whole percent with its sign; a loss that would round to nothing says so. */
  public static String margin(double margin) {
    if (!Double.isFinite(margin)) {
      return fixed(margin, 0);
    }
    if (margin < 0 && margin > -0.005) {
      return "under " + MINUS + "1\u00A0%";
    }
    String text = fixed(margin * 100, 0);
    return (margin > 0 && !text.equals("0") ? "+" : "") + text + "\u00A0%";
  }

  private static String number(double value, String unit) {
    if (unit.equals("mm") && Math.abs(value) < FINE_MM) {
      return upTo(value, 2);
    }
    Integer decimals = DECIMALS.get(unit);
    if (decimals != null || !Double.isFinite(value)) {
      return decimals == null
          ? fixed(value, 0)
          : unit.equals("A") ? upTo(value, decimals) : fixed(value, decimals);
    }
    if (Math.rint(value) == value && Math.abs(value) < 1e9) {
      return fixed(value, 0);
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(3));
    if (rounded.signum() != 0 && Math.abs(value) < 1e-4) {
      return scientific(rounded);
    }
    return sign(
        (rounded.scale() < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded)
            .stripTrailingZeros()
            .toPlainString());
  }

  private static String scientific(BigDecimal value) {
    int exponent = value.precision() - value.scale() - 1;
    return sign(value.movePointLeft(exponent).stripTrailingZeros().toPlainString())
        + "\u00A0×\u00A010^"
        + exponent;
  }

  private static String withUnit(String number, String unit) {
    // "1" is the unit of pure numbers.
    return unit.isEmpty() || unit.equals("1")
        ? number
        : number + "\u00A0" + unit.replace("ohm", "Ω");
  }

  private static String upTo(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return fixed(value, decimals);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : sign(rounded.stripTrailingZeros().toPlainString());
  }

  private static String fixed(double value, int decimals) {
    if (Double.isNaN(value)) {
      return "not known";
    }
    if (Double.isInfinite(value)) {
      return value > 0 ? "no limit" : "no lower limit";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0
        ? BigDecimal.ZERO.setScale(decimals).toPlainString()
        : sign(rounded.toPlainString());
  }

  private static String sign(String plain) {
    return plain.startsWith("-") ? MINUS + plain.substring(1) : plain;
  }
}
