package org.loomwright.web.job;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as they are read off a meter and typed. */
public final class Meter {
  private static final Pattern TYPED = Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?) *(\\p{L}*)");
  private static final Pattern COMMA = Pattern.compile("-?\\d+,\\d+.*");
  private static final Pattern KEPT = Pattern.compile("(-?\\d+(?:\\.\\d+)?)(?: .*)?");

  private Meter() {}

  /** What was typed. */
  public sealed interface Reading {}

  /**
   * A number.
   *
   * @param text its digits
   * @param value its value, in the wanted unit
   */
  public record Number(String text, double value) implements Reading {}

  /**
   * None.
   *
   * @param words what is wrong and what would be right
   */
  public record Wrong(String words) implements Reading {}

  /**
   * Reads a number.
   *
   * @param unit unit it has to be in, which may stand behind it; empty for a number without one
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
    if (!named.isEmpty() && !named.equals(unit)) {
      return new Wrong(
          unit.isEmpty()
              ? "write the number alone, without '" + named + "'"
              : "write the number in " + unit + ", not in '" + named + "'");
    }
    return new Number(match.group(1), Double.parseDouble(match.group(1)));
  }

  private static String shortened(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "…" : text;
  }

  /** The number at the start of a value as it is kept, such as "12.6 V". */
  public static Optional<Double> kept(String value) {
    Matcher match = KEPT.matcher(value);
    return match.matches() ? Optional.of(Double.parseDouble(match.group(1))) : Optional.empty();
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
