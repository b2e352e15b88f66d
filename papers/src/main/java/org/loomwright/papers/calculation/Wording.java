package org.loomwright.papers.calculation;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Formulas and units as they stand in print. */
final class Wording {
  private static final Map<String, String> LETTERS =
      Map.ofEntries(
          Map.entry("r20", "r₂₀"),
          Map.entry("rho20", "ρ₂₀"),
          Map.entry("rho", "ρ"),
          Map.entry("eps", "ε"),
          Map.entry("sigma", "σ"),
          Map.entry("pi", "π"),
          Map.entry("lambda", "λ"),
          Map.entry("tau", "τ"),
          Map.entry("sqrt", "√"));
  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");
  private static final Pattern POWER_OF_TEN = Pattern.compile("(\\d+(?:\\.\\d+)?)e(-?\\d+)");

  private Wording() {}

  /** A formula text with the trade's letters and signs. */
  static String formula(String text) {
    String letters =
        WORD.matcher(POWER_OF_TEN.matcher(text).replaceAll(it -> it.group(1) + tenTo(it.group(2))))
            .replaceAll(it -> Matcher.quoteReplacement(letter(it.group())));
    return letters
        .replace(" * ", " × ")
        .replace(" - ", " \u2212 ")
        .replace("(-", "(\u2212")
        .replace(" ohm", " Ω");
  }

  private static String letter(String word) {
    return LETTERS.getOrDefault(word, word);
  }

  /** A number of a formula text. */
  static String number(String written) {
    return POWER_OF_TEN
        .matcher(written)
        .replaceAll(it -> "(" + it.group(1) + tenTo(it.group(2)) + ")")
        .replace("-", "\u2212");
  }

  /** A factor that is a power of ten, e.g. " × 10⁻⁸". */
  static String tenTo(String exponent) {
    StringBuilder text = new StringBuilder("\u00A0×\u00A010");
    exponent.chars().forEach(it -> text.append(it == '-' ? '⁻' : SUPERSCRIPTS.charAt(it - '0')));
    return text.toString();
  }

  /** A unit in print; pure numbers have none. */
  static String unit(String unit) {
    return unit.equals("1") ? "" : unit.replace("ohm", "Ω").replace("s^0.5", "√s");
  }
}
