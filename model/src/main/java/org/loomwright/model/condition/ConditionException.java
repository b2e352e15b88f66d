package org.loomwright.model.condition;

import java.util.Locale;

/**
 * Says why a text could not be read as a condition: where, what is wrong, and what would be right.
 */
public final class ConditionException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;
  private static final int SHOWN = 80;

  private final String text;
  private final int position;
  private final String problem;
  private final String expected;

  ConditionException(String text, int position, String problem, String expected) {
    super(
        String.format(
            Locale.ROOT,
            "\"%s\" can't be read as a condition: at character %d, %s; expected %s",
            printable(text, SHOWN),
            position + 1,
            problem,
            expected));
    this.text = text;
    this.position = position;
    this.problem = problem;
    this.expected = expected;
  }

  /** The whole text as it was given. */
  public String text() {
    return text;
  }

  /** Index of the first character that can't be read, counted from 0; the length at the end. */
  public int position() {
    return position;
  }

  /** What is wrong, as a part of a sentence. */
  public String problem() {
    return problem;
  }

  /** What would be right. */
  public String expected() {
    return expected;
  }

  /** Cuts a long text and replaces control characters, so that a message stays one line. */
  static String printable(String text, int longest) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .limit(longest)
        .map(
            c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE ? '?' : c)
        .forEach(out::appendCodePoint);
    return text.codePoints().skip(longest).findAny().isPresent() ? out + "…" : out.toString();
  }
}
