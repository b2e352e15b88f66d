package org.loomwright.papers.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads formulas as traces write them: {@code r20 * (234.5 + T) / 254.5}, {@code I² R}, {@code
 * sqrt(sum d²)}. Names may have several words, a minus has spaces around it, and parts beside each
 * other are multiplied. What is no arithmetic, such as "heat balance", is not read.
 */
final class FormulaReader {
  private static final Pattern TOKEN =
      Pattern.compile(
          "\\s*(?:(?<number>\\d+(?:\\.\\d+)?(?:e-?\\d+)?)"
              + "|(?<name>[\\p{L}_][\\p{L}\\p{Nd}_.:#&'-]*"
              + "(?=[\\s()+*/^²³⁴,]|$))"
              + "|(?<sign>[+*×·/^()²³⁴\u2212√-]))");
  private static final List<String> FUNCTIONS = List.of("sqrt", "√", "ln");

  private final List<String> tokens;
  private final Predicate<String> known;
  private int at;

  private FormulaReader(List<String> tokens, Predicate<String> known) {
    this.tokens = tokens;
    this.known = known;
  }

  /**
   * The formula as a tree; empty when it is not arithmetic.
   *
   * @param known whether a name of several words is the name of something
   */
  static Optional<Expression> read(String formula, Predicate<String> known) {
    Optional<List<String>> tokens = tokens(formula);
    if (tokens.isEmpty() || tokens.get().isEmpty()) {
      return Optional.empty();
    }
    FormulaReader reader = new FormulaReader(tokens.get(), known);
    try {
      Expression all = reader.sum();
      return reader.at == reader.tokens.size() ? Optional.of(all) : Optional.empty();
    } catch (NotArithmetic words) {
      return Optional.empty();
    }
  }

  private static Optional<List<String>> tokens(String formula) {
    List<String> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(formula.strip());
    String text = formula.strip();
    int at = 0;
    while (at < text.length()) {
      if (!matcher.region(at, text.length()).lookingAt()) {
        return Optional.empty();
      }
      at = matcher.end();
      String name = matcher.group("name");
      if (name != null
          && !FUNCTIONS.contains(name)
          && at < text.length()
          && text.charAt(at) == '(') {
        // r(T) is one name; a factor in front of a sum has a space before the parenthesis.
        int close = text.indexOf(')', at);
        if (close < 0) {
          return Optional.empty();
        }
        tokens.add(name + text.substring(at, close + 1));
        at = close + 1;
      } else {
        tokens.add(matcher.group().strip());
      }
    }
    return Optional.of(tokens);
  }

  private Expression sum() {
    Expression left = product();
    while (is("+") || is("-") || is("\u2212")) {
      char sign = next().equals("+") ? '+' : '-';
      left = new Expression.Operation(sign, left, product());
    }
    return left;
  }

  private Expression product() {
    Expression left = power();
    while (at < tokens.size()) {
      if (is("*") || is("×") || is("·")) {
        next();
        left = new Expression.Operation('*', left, power());
      } else if (is("/")) {
        next();
        left = new Expression.Operation('/', left, power());
      } else if (is("(") || isName(tokens.get(at)) || FUNCTIONS.contains(tokens.get(at))) {
        left = new Expression.Operation('*', left, power());
      } else {
        break;
      }
    }
    return left;
  }

  private Expression power() {
    Expression base = atom();
    if (is("²") || is("³") || is("⁴")) {
      int power = 2 + "²³⁴".indexOf(next());
      return new Expression.Operation('^', base, number(Integer.toString(power)));
    }
    if (is("^")) {
      next();
      return new Expression.Operation('^', base, atom());
    }
    return base;
  }

  private Expression atom() {
    if (at >= tokens.size()) {
      throw new NotArithmetic();
    }
    String token = next();
    if (token.equals("(")) {
      Expression inner = sum();
      if (!is(")")) {
        throw new NotArithmetic();
      }
      next();
      return inner;
    }
    if (FUNCTIONS.contains(token)) {
      if (!is("(")) {
        throw new NotArithmetic();
      }
      return new Expression.Call(
          token.equals("ln") ? Expression.Function1.LOGARITHM : Expression.Function1.ROOT, atom());
    }
    if (Character.isDigit(token.charAt(0))) {
      return number(token);
    }
    if (token.equals("pi") || token.equals("π")) {
      return new Expression.Number(Math.PI, "π");
    }
    if (!isName(token)) {
      throw new NotArithmetic();
    }
    return new Expression.Name(longestName(token));
  }

  /** As many of the words that follow as make up a name. */
  private String longestName(String first) {
    StringBuilder words = new StringBuilder(first);
    String best = first;
    int end = at;
    for (int i = at; i < tokens.size() && isWord(tokens.get(i)); i++) {
      words.append(' ').append(tokens.get(i));
      if (known.test(words.toString())) {
        best = words.toString();
        end = i + 1;
      }
    }
    at = end;
    return best;
  }

  private static boolean isWord(String token) {
    return isName(token) || Character.isDigit(token.charAt(0));
  }

  private static boolean isName(String token) {
    return (Character.isLetter(token.charAt(0)) || token.charAt(0) == '_')
        && !FUNCTIONS.contains(token);
  }

  private static Expression number(String written) {
    return new Expression.Number(Double.parseDouble(written), written);
  }

  private boolean is(String token) {
    return at < tokens.size() && tokens.get(at).equals(token);
  }

  private String next() {
    return tokens.get(at++);
  }

  /** Thrown and caught here only: the formula is words. */
  private static final class NotArithmetic extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotArithmetic() {
      super("not arithmetic", null, false, false);
    }
  }
}
