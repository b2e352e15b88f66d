package org.loomwright.web.job;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as they are read off a meter and typed. */
public final class Meter {
  private static final Pattern TYPED = Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?) *(\\p{L}*)");
  private static final Pattern COMMA = Pattern.compile("-?\\d+,\\d+.*");
  private static final Pattern KEPT = Pattern.compile("(-?\\d+(?:\\.\\d+)?)(?: (\\S+))?");

  /** Powers of ten of the units that bands have. */
  private static final Map<String, Integer> POWERS =
      Map.of("V", 0, "mV", -3, "A", 0, "mA", -3, "\u03a9", 0, "k\u03a9", 3);

  private Meter() {}

  private static String base(String unit) {
    return unit.substring(unit.length() - 1);
  }

  /** Whether a unit is one of resistance, where a meter can show that nothing is connected. */
  public static boolean isResistance(String unit) {
    return unit.endsWith("\u03a9");
  }

  /** What was typed. */
  public sealed interface Reading {}

  /**
   * A number.
   *
   * @param exact its value
   * @param unit unit it is in; empty for none
   */
  public record Number(BigDecimal exact, String unit) implements Reading {
    /** Its value. */
    public double value() {
      return exact.doubleValue();
    }

    /** Its digits. */
    public String digits() {
      return exact.toPlainString();
    }

    /** Number and unit. */
    public String words() {
      return digits() + (unit.isEmpty() ? "" : " " + unit);
    }

    /** The same in another unit; empty when the units are not of one quantity. */
    public Optional<Number> in(String other) {
      if (other.equals(unit)) {
        return Optional.of(this);
      }
      if (!POWERS.containsKey(unit)
          || !POWERS.containsKey(other)
          || !base(unit).equals(base(other))) {
        return Optional.empty();
      }
      BigDecimal value =
          exact.scaleByPowerOfTen(POWERS.getOrDefault(unit, 0) - POWERS.getOrDefault(other, 0));
      return Optional.of(new Number(new BigDecimal(value.toPlainString()), other));
    }
  }

  /**
   * None.
   *
   * @param words what is wrong and what would be right
   */
  public record Wrong(String words) implements Reading {}

  /**
   * Reads a number.
   *
   * @param unit unit it is in where none stands behind it, and in which it is given back; empty for
   *     a number without one
   */
  public static Reading read(String typed, String unit) {
    String text = typed.strip().replace('\u2212', '-').replace('\u00a0', ' ');
    if (text.isEmpty()) {
      return new Wrong("write the number the meter shows" + (unit.isEmpty() ? "" : ", in " + unit));
    }
    if (COMMA.matcher(text).matches()) {
      return new Wrong(
          "write a point in place of the comma: " + text.replaceFirst(",", ".") + ", not " + text);
    }
    Matcher match = TYPED.matcher(text);
    if (!match.matches()) {
      return new Wrong(
          "'"
              + shortened(text)
              + "' is no number; write digits with a point, such as 12.6"
              + (unit.isEmpty() ? "" : ", in " + unit));
    }
    String named = match.group(2).replace('\u2126', '\u03a9');
    Number number = new Number(new BigDecimal(match.group(1)), named.isEmpty() ? unit : named);
    return number
        .in(unit)
        .<Reading>map(it -> it)
        .orElseGet(
            () ->
                new Wrong(
                    unit.isEmpty()
                        ? "write the number alone, without '" + named + "'"
                        : "write the number in " + unit + ", not in '" + named + "'"));
  }

  private static String shortened(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "…" : text;
  }

  /** The number at the start of a value as it is kept, such as "12.6 V". */
  public static Optional<Number> kept(String value) {
    Matcher match = KEPT.matcher(value);
    return match.matches()
        ? Optional.of(
            new Number(
                new BigDecimal(match.group(1)), Optional.ofNullable(match.group(2)).orElse("")))
        : Optional.empty();
  }

  /** Whether a word means that something works; empty when it is neither yes nor no. */
  public static Optional<Boolean> works(String value) {
    return switch (value.strip().toLowerCase(Locale.ROOT)) {
      case "yes" -> Optional.of(true);
      case "no" -> Optional.of(false);
      default -> Optional.empty();
    };
  }
}
