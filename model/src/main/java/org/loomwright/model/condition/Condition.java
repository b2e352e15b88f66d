package org.loomwright.model.condition;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;

/**
 * A statement about the traits of a build, kept as written.
 *
 * <p>The language, loosest first:
 *
 * <pre>
 * condition = "unknown" | any
 * any       = all { "or" all }
 * all       = single { "and" single }
 * single    = "not" single | "(" any ")" | "always" | "never"
 *           | trait "=" value | trait "!=" value | trait "in" "(" value { "," value } ")"
 * </pre>
 *
 * <p>"not" binds to the one statement after it: {@code not rear-feed = no and tow-prep = yes} means
 * {@code (not rear-feed = no) and tow-prep = yes}. Names of traits and values start with a letter
 * or digit, go on with letters, digits and {@code - _ . / :}, and keep upper and lower case apart.
 * The words of the language are lower case and can't be names, in whatever case.
 *
 * <p>Equal when written the same; see {@link #expr()} for what it says.
 *
 * @param text as written
 * @param expr what the text says
 */
public record Condition(String text, Expr expr) {

  /** The longest text that is read, in characters. */
  public static final int LONGEST_TEXT = 10_000;

  /** How deep parentheses and "not" may be nested. */
  public static final int DEEPEST_NESTING = 100;

  /** Refuses an expression that is not what the text says. */
  public Condition {
    if (!ConditionParser.parse(text).equals(expr)) {
      throw new IllegalArgumentException(
          "\"" + ConditionException.printable(text, 80) + "\" does not say the given expression");
    }
  }

  /**
   * Reads a text.
   *
   * @throws ConditionException if it can't be read
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Condition of(String text) {
    return new Condition(text, ConditionParser.parse(text));
  }

  /**
   * Writes an expression with as few parentheses as possible.
   *
   * @throws ConditionException if the text would be too long or too deeply nested
   */
  public static Condition of(Expr expr) {
    return new Condition(expr.print(), expr);
  }

  /** Holds on every build. */
  public static Condition always() {
    return of(new Expr.Always());
  }

  /** Holds on no build. */
  public static Condition never() {
    return of(new Expr.Never());
  }

  /** Nobody knows yet on which builds it holds. */
  public static Condition unknown() {
    return of(new Expr.Unknown());
  }

  /**
   * A trait has a value.
   *
   * @throws IllegalArgumentException if either can't be a name
   */
  public static Condition is(String trait, String value) {
    return of(new Expr.Is(trait, value));
  }

  /** Whether a word may name a trait or a value of one. */
  public static boolean isName(String word) {
    return Words.isName(word);
  }

  /** The text as written. */
  @JsonValue
  @Override
  public String text() {
    return text;
  }

  /** Whether nobody knows yet on which builds it holds. */
  public boolean isUnknown() {
    return expr instanceof Expr.Unknown;
  }

  /**
   * Holds where both hold. "always" and "never" are worked out at once.
   *
   * @throws IllegalArgumentException if either is unknown
   */
  public Condition and(Condition other) {
    checkKnown(other);
    if (expr instanceof Expr.Always || other.expr instanceof Expr.Never) {
      return other;
    }
    if (expr instanceof Expr.Never || other.expr instanceof Expr.Always) {
      return this;
    }
    return of(new Expr.And(List.of(expr, other.expr)));
  }

  /**
   * Holds where at least one holds. "always" and "never" are worked out at once.
   *
   * @throws IllegalArgumentException if either is unknown
   */
  public Condition or(Condition other) {
    checkKnown(other);
    if (expr instanceof Expr.Never || other.expr instanceof Expr.Always) {
      return other;
    }
    if (expr instanceof Expr.Always || other.expr instanceof Expr.Never) {
      return this;
    }
    return of(new Expr.Or(List.of(expr, other.expr)));
  }

  /**
   * Holds where this does not. A double "not" falls away.
   *
   * @throws IllegalArgumentException if this is unknown
   */
  public Condition negate() {
    checkKnown(this);
    if (expr instanceof Expr.Always) {
      return never();
    }
    if (expr instanceof Expr.Never) {
      return always();
    }
    return of(expr instanceof Expr.Not not ? not.part() : new Expr.Not(expr));
  }

  /** The names of the traits it mentions. */
  public SortedSet<String> traits() {
    return expr.traits();
  }

  /**
   * Whether it holds on a build.
   *
   * @param build the value of every trait mentioned, by trait name; others do no harm
   * @throws IllegalArgumentException if a trait that is mentioned is missing
   * @throws IllegalStateException if this is unknown
   */
  public boolean holds(Map<String, String> build) {
    // Asked for even where the answer would not depend on it, so that a gap never goes unseen.
    traits().stream()
        .filter(t -> !build.containsKey(t))
        .findFirst()
        .ifPresent(
            t -> {
              throw new IllegalArgumentException(
                  "The build gives no value for the trait " + t + " of \"" + text + "\"");
            });
    return expr.holds(build);
  }

  @Override
  public String toString() {
    return text;
  }

  private void checkKnown(Condition other) {
    if (isUnknown() || other.isUnknown()) {
      throw new IllegalArgumentException("An unknown condition can't be combined with others");
    }
  }
}
