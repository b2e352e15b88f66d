package org.loomwright.web.job;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.model.design.MeterNumber;

/** Numbers as they are read off a meter and typed. */
public final class Meter {
  private static final Pattern TYPED = Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?) *(\\p{L}*)");
  private static final Pattern COMMA = Pattern.compile("-?\\d+,\\d+.*");

  private Meter() {}

  /** Whether a unit is one of resistance, where a meter can show that nothing is connected. */
  public static boolean isResistance(String unit) {
    return unit.endsWith("\u03a9");
  }

  /** What was typed. */
  public sealed interface Reading {}

  /**
   * A number.
   *
   * @param meter the number
   */
  public record Number(MeterNumber meter) implements Reading {}

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
    return new MeterNumber(new BigDecimal(match.group(1)), named.isEmpty() ? unit : named)
        .in(unit)
        .<Reading>map(Number::new)
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

  /** Whether a word means that something works; empty when it is neither yes nor no. */
  public static Optional<Boolean> works(String value) {
    return switch (value.strip().toLowerCase(Locale.ROOT)) {
      case "yes" -> Optional.of(true);
      case "no" -> Optional.of(false);
      default -> Optional.empty();
    };
  }
}
