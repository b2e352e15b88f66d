package org.loomwright.model.condition;

/**
 * A word or sign of a condition.
 *
 * @param text as written; empty at the end
 * @param at index of its first character
 */
record Token(Kind kind, String text, int at) {
  enum Kind {
    /** A name or a word of the language. */
    WORD,
    /** One of = != ( ) and the comma. */
    SIGN,
    END
  }

  boolean isSign(String sign) {
    return kind == Kind.SIGN && text.equals(sign);
  }

  boolean isWord(String word) {
    return kind == Kind.WORD && text.equals(word);
  }

  /** The word but for upper and lower case. */
  boolean isMiscased(String word) {
    return kind == Kind.WORD && !text.equals(word) && text.equalsIgnoreCase(word);
  }

  /** For messages. */
  String shown() {
    return kind == Kind.END
        ? "the text ends"
        : "\"" + ConditionException.printable(text, 40) + "\" stands here";
  }
}
