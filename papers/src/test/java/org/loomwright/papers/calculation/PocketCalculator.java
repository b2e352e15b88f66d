package org.loomwright.papers.calculation;

import java.util.regex.Pattern;

/**
 * Reckons what is printed, as a reader with a pocket calculator does. Written apart from the
 * product, which never reads what it has printed.
 */
final class PocketCalculator {
  private static final String RAISED = "⁻⁰¹²³⁴⁵⁶⁷⁸⁹";

  private final String text;
  private int at;

  private PocketCalculator(String text) {
    this.text = text;
  }

  /** The outcome of a printed sum, e.g. "0.00471 × (234.5 + 105) / 254.5". */
  static double reckon(String printed) {
    PocketCalculator it =
        new PocketCalculator(
            raised(printed).replace('\u2212', '-').replaceAll("[\\s\u00A0\u202F]", ""));
    double value = it.sum();
    if (it.at != it.text.length()) {
      throw new IllegalArgumentException("can't be reckoned: " + printed);
    }
    return value;
  }

  /** Raised digits as a sign and a number: "10⁻⁸" is "10^-8". */
  private static String raised(String printed) {
    return Pattern.compile("[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+")
        .matcher(printed)
        .replaceAll(
            it -> {
              StringBuilder plain = new StringBuilder("^");
              it.group()
                  .chars()
                  .forEach(c -> plain.append("-0123456789".charAt(RAISED.indexOf(c))));
              return plain.toString();
            });
  }

  private double sum() {
    double value = product();
    while (next('+') || next('-')) {
      value += text.charAt(at - 1) == '+' ? product() : -product();
    }
    return value;
  }

  private double product() {
    double value = power();
    while (next('×') || next('/')) {
      boolean times = text.charAt(at - 1) == '×';
      double by = power();
      value = times ? value * by : value / by;
    }
    return value;
  }

  private double power() {
    double base = atom();
    return next('^') ? Math.pow(base, atom()) : base;
  }

  private double atom() {
    if (next('-')) {
      return -atom();
    }
    if (next('√')) {
      return Math.sqrt(atom());
    }
    if (text.startsWith("ln", at)) {
      at += 2;
      return Math.log(atom());
    }
    if (next('π')) {
      return Math.PI;
    }
    if (next('(')) {
      double value = sum();
      if (!next(')')) {
        throw new IllegalArgumentException("a parenthesis is missing: " + text);
      }
      return value;
    }
    int from = at;
    while (at < text.length() && "0123456789.".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    return Double.parseDouble(text.substring(from, at));
  }

  private boolean next(char sign) {
    boolean there = at < text.length() && text.charAt(at) == sign;
    at += there ? 1 : 0;
    return there;
  }
}
