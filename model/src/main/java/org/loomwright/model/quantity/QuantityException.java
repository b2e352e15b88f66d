package org.loomwright.model.quantity;

import java.util.Locale;

/**
 * Says why a text could not be read as a quantity: where, what is wrong, and what would be right.
 *
 * <p>The message is one readable sentence for a person; the parts are there for programs.
 */
public final class QuantityException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;
  private static final int SHOWN = 60;

  private final String text;
  private final int position;
  private final String problem;
  private final String expected;

  QuantityException(String text, int position, String noun, String problem, String expected) {
    super(
        String.format(
            Locale.ROOT,
            "\"%s\" can't be read as %s: at character %d, %s; expected %s",
            printable(text),
            noun,
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

  /** What would be right, with an example. */
  public String expected() {
    return expected;
  }

  /** Cuts a long text and replaces control characters, so that a message stays one line. */
  static String printable(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .limit(SHOWN)
        .map(
            c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE ? '?' : c)
        .forEach(out::appendCodePoint);
    return text.codePoints().skip(SHOWN).findAny().isPresent() ? out + "…" : out.toString();
  }
}
