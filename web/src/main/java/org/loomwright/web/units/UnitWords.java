package org.loomwright.web.units;

import java.util.Collection;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.quantity.WireSize;

/**
 * Lengths and wire sizes in sentences, shown in the wanted units. For inches, "40 mm", "2 to 3 m"
 * and "2.5 mm²" are worked out anew; for millimetres, "14 AWG". Inches in a sentence stay: "2 in"
 * may also be the beginning of "2 in the box", so lengths on file are shown by {@link Display}.
 *
 * <p>Words a person wrote, such as the trade name of a wire, stay as they are.
 */
public final class UnitWords {
  private static final String NUMBER = "\\d+(?:\\.\\d+)?";
  private static final String BETWEEN = "(?:\\h?[–×]\\h?|\\hto\\h|\\hby\\h|\\hx\\h)";

  /**
   * Numbers with a metric unit behind; not within a longer number, a unit such as mm/s, a power.
   */
  private static final Pattern METRIC =
      Pattern.compile(
          "(?<![\\p{L}\\d./^²_-])("
              + NUMBER
              + "(?:"
              + BETWEEN
              + NUMBER
              + ")*)\\h(mm²|mm|cm|m)(?![\\p{L}\\d²³/^])(?!\\h\\((?:nearest\\h)?[\\d/]+\\hAWG)");

  private static final Pattern GAUGE =
      Pattern.compile(
          "(?<![\\p{L}\\d./-])(?<!\\()(?<!nearest\\h)(\\d{1,2}|[1-4]/0)\\hAWG(?![\\p{L}\\d)])");

  private static final Pattern ANY = Pattern.compile(METRIC.pattern() + "|" + GAUGE.pattern());

  private final Display units;
  private final List<String> asWritten;

  /**
   * @param units the wanted units
   * @param asWritten words that stay as they are
   */
  public UnitWords(Display units, Collection<String> asWritten) {
    this.units = units;
    this.asWritten =
        asWritten.stream().map(UnitWords::plain).filter(UnitWords::isMoreThanASize).toList();
  }

  /** Whether a length or a wire size may be in words; without one they never change. */
  static boolean speaksOfSizes(String words) {
    return words.indexOf('m') >= 0 || words.indexOf('A') >= 0;
  }

  /** Words that hold a size among others. */
  static boolean isMoreThanASize(String words) {
    Matcher found = ANY.matcher(words);
    return found.find() && found.group().length() < words.strip().length();
  }

  /** The words as they are shown. */
  public String of(String words) {
    if (!speaksOfSizes(words)) {
      return words;
    }
    Pattern wanted = units == Display.US ? METRIC : GAUGE;
    Matcher found = wanted.matcher(words);
    if (!found.find()) {
      return words;
    }
    String plain = plain(words);
    return found.replaceAll(
        it ->
            Matcher.quoteReplacement(
                isKept(plain, it) ? it.group() : units == Display.US ? inch(it) : metric(it)));
  }

  private static String plain(String words) {
    return words.replace('\u00A0', ' ').replace('\u202F', ' ');
  }

  private boolean isKept(String plain, MatchResult found) {
    for (String kept : asWritten) {
      for (int at = plain.indexOf(kept); at >= 0; at = plain.indexOf(kept, at + 1)) {
        if (at <= found.start() && found.end() <= at + kept.length()) {
          return true;
        }
      }
    }
    return false;
  }

  private static String metric(MatchResult found) {
    return Display.METRIC.show(WireSize.of(plain(found.group())));
  }

  private static String inch(MatchResult found) {
    String numbers = found.group(1);
    if (found.group(2).equals("mm²")) {
      return area(found.group(), numbers);
    }
    double factor = found.group(2).equals("m") ? 1000 : found.group(2).equals("cm") ? 10 : 1;
    return each(numbers, it -> Display.US.bareLengthMm(factor * Double.parseDouble(it)))
        + "\u00A0in";
  }

  private static String area(String words, String numbers) {
    if (numbers.matches(NUMBER)) {
      double areaMm2 = Double.parseDouble(numbers);
      String gauge = areaMm2 > 0 ? Display.gauge(areaMm2) : "";
      return gauge.isEmpty()
          ? words
          : gauge.startsWith("nearest") ? words + " (" + gauge + ")" : gauge;
    }
    String gauges =
        Pattern.compile(NUMBER)
            .matcher(numbers)
            .results()
            .map(it -> Double.parseDouble(it.group()))
            .filter(it -> it > 0)
            .map(it -> Display.gauge(it).replace("nearest ", ""))
            .collect(Collectors.joining(" to "));
    return words + " (nearest " + gauges + ")";
  }

  private static String each(String numbers, java.util.function.UnaryOperator<String> how) {
    return Pattern.compile(NUMBER)
        .matcher(numbers)
        .replaceAll(it -> Matcher.quoteReplacement(how.apply(it.group())));
  }
}
