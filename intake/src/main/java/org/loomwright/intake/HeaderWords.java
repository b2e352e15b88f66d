package org.loomwright.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Compares the header of a column with the words used for each meaning. */
final class HeaderWords {
  /** Longer texts are no headers. */
  private static final int LONGEST = 60;

  private HeaderWords() {}

  /**
   * How well a header fits a meaning: 0.9 when it is one of its words; less when it only contains
   * one, the more so the farther from its end, as the last word of a header is what it is about; 0
   * when it has nothing of it.
   */
  static double fit(String header, Meaning meaning) {
    if (header.length() > LONGEST) {
      return 0;
    }
    String plain = plain(header);
    if (plain.isEmpty()) {
      return 0;
    }
    if (meaning.headers().contains(plain)) {
      return 0.9;
    }
    List<String> words = Arrays.asList(plain.split(" "));
    double best = 0;
    for (String phrase : meaning.headers()) {
      List<String> parts = Arrays.asList(phrase.split(" "));
      for (int at = 0; at + parts.size() <= words.size(); at++) {
        if (words.subList(at, at + parts.size()).equals(parts)) {
          int after = words.size() - at - parts.size();
          best = Math.max(best, Math.min(0.85, 0.55 + 0.1 * parts.size() - 0.05 * after));
        }
      }
    }
    return best;
  }

  /** The best fit of any meaning. */
  static double fit(String header) {
    return Arrays.stream(Meaning.values()).mapToDouble(it -> fit(header, it)).max().orElse(0);
  }

  private static String plain(String header) {
    String lower = header.toLowerCase(Locale.ROOT).strip();
    if (lower.equals("#")) {
      return lower;
    }
    return lower.replaceAll("[^\\p{L}\\p{N}²]+", " ").strip();
  }
}
