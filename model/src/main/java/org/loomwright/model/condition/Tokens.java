package org.loomwright.model.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Cuts the text of a condition into words and signs. */
final class Tokens {
  /** What people type who know other languages. Longer spellings first where one starts another. */
  private static final Map<String, String> FOREIGN =
      Map.ofEntries(
          Map.entry("≠", "\"!=\""),
          Map.entry("<>", "\"!=\""),
          Map.entry("==", "\"=\""),
          Map.entry("&&", "the word and"),
          Map.entry("&", "the word and"),
          Map.entry("||", "the word or"),
          Map.entry("|", "the word or"),
          Map.entry("!", "the word not, or \"!=\""),
          Map.entry("\"", "names without quotation marks"),
          Map.entry("'", "names without quotation marks"));

  private final String text;
  private int at;

  private Tokens(String text) {
    this.text = text;
  }

  static List<Token> of(String text) {
    Tokens tokens = new Tokens(text);
    List<Token> all = new ArrayList<>();
    Token token;
    do {
      token = tokens.next();
      all.add(token);
    } while (token.kind() != Token.Kind.END);
    return all;
  }

  private Token next() {
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
    int start = at;
    if (start == text.length()) {
      return new Token(Token.Kind.END, "", start);
    }
    int c = text.codePointAt(start);
    if (Words.isNameStart(c)) {
      while (at < text.length() && Words.isNamePart(text.codePointAt(at))) {
        at += Character.charCount(text.codePointAt(at));
      }
      return new Token(Token.Kind.WORD, text.substring(start, at), start);
    }
    refuseForeign(start);
    if (text.startsWith("!=", start)) {
      at += 2;
      return new Token(Token.Kind.SIGN, "!=", start);
    }
    if (c == '=' || c == '(' || c == ')' || c == ',') {
      at++;
      return new Token(Token.Kind.SIGN, text.substring(start, at), start);
    }
    throw new ConditionException(
        text,
        start,
        "\""
            + ConditionException.printable(Character.toString(c), 1)
            + "\" is not a sign of this language",
        Words.isNamePart(c)
            ? "a name that starts with a letter or digit"
            : "a name, = != ( ) or a comma");
  }

  private void refuseForeign(int start) {
    if (text.startsWith("!=", start) && !text.startsWith("!==", start)) {
      return;
    }
    // Longest first, so that && is not taken for &.
    for (int length = 2; length >= 1; length--) {
      String sign = text.substring(start, Math.min(text.length(), start + length));
      String right = FOREIGN.get(sign);
      if (right != null) {
        throw new ConditionException(
            text, start, "\"" + sign + "\" is not a sign of this language", right);
      }
    }
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }
}
