package org.loomwright.planner.difference;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;

/** Small pieces of sentences. */
final class Words {
  private static final int LONG = 160;
  private static final int BRIEF = 90;

  /** Unit of shares of a fuse's rating; said once, behind the last figure. */
  static final String OF_RATING = "of the rating";

  private Words() {}

  /** "a, b and c". */
  static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** "a; b; and 4 more", for things whose names may hold commas. */
  static String few(List<String> words, int most) {
    return words.size() <= most
        ? String.join("; ", words)
        : String.join("; ", words.subList(0, most)) + "; and " + (words.size() - most) + " more";
  }

  /** "no lead", "1 lead", "3 leads". */
  static String count(long number, String noun) {
    return number == 0 ? "no " + noun : number + " " + (number == 1 ? noun : noun + "s");
  }

  /** "has" or "have" after a count. */
  static String verb(long number, String one, String many) {
    return number == 1 ? one : many;
  }

  /** Cut short where nobody would read on. */
  static String cut(String text) {
    return text.length() <= LONG ? text : text.substring(0, LONG).stripTrailing() + "…";
  }

  /** Cut shorter, for one of several things in a line. */
  static String brief(String text) {
    return text.length() <= BRIEF ? text : text.substring(0, BRIEF).stripTrailing() + "…";
  }

  static String mm(double lengthMm) {
    return plain(lengthMm, lengthMm < 100 ? 3 : 4) + " mm";
  }

  /** With as many digits as it takes to tell it from the other one. */
  static String figure(double value, double other, String unit) {
    if (Double.isNaN(value)) {
      return "no figure";
    }
    int digits = 3;
    while (digits < 8 && value != other && plain(value, digits).equals(plain(other, digits))) {
      digits++;
    }
    if (unit.equals(OF_RATING)) {
      return plain(value * 100, digits) + " %";
    }
    boolean counted = unit.isEmpty() || unit.equals("1");
    return plain(value, digits) + (counted ? "" : " " + unit);
  }

  static String plain(double value, int digits) {
    if (Double.isInfinite(value)) {
      return value > 0 ? "endless" : "endless below";
    }
    // Whole parts are never rounded away.
    int whole = (int) Math.max(0, Math.floor(Math.log10(Math.max(1, Math.abs(value)))) + 1);
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(Math.max(digits, whole)));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  static String money(BigDecimal sum, String currency) {
    return String.format(Locale.ROOT, "%.2f %s", sum, currency);
  }
}
