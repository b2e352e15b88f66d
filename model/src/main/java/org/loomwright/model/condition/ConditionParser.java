package org.loomwright.model.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Reads the text of a condition by recursive descent; the grammar is given at Condition. */
final class ConditionParser {
  private static final String STATEMENT =
      "a statement such as \"tow-prep = yes\", not, always, never or \"(\"";
  private static final String JOINT = "and, or, or the end";

  private final String text;
  private final List<Token> tokens;
  private int index;
  private int depth;

  private ConditionParser(String text) {
    this.text = text;
    this.tokens = Tokens.of(text);
  }

  static Expr parse(String text) {
    if (text.length() > Condition.LONGEST_TEXT) {
      throw new ConditionException(
          text,
          Condition.LONGEST_TEXT,
          "the text goes on for " + text.length() + " characters",
          "at most " + Condition.LONGEST_TEXT);
    }
    return new ConditionParser(text).parseAll();
  }

  private Expr parseAll() {
    if (peek().isWord(Words.UNKNOWN) && tokens.size() == 2) {
      return new Expr.Unknown();
    }
    Expr expr = any();
    if (peek().kind() != Token.Kind.END) {
      throw unexpectedJoint(JOINT);
    }
    return expr;
  }

  private Expr any() {
    List<Expr> parts = new ArrayList<>(List.of(all()));
    while (peek().isWord(Words.OR)) {
      index++;
      parts.add(all());
    }
    return parts.size() == 1 ? parts.get(0) : new Expr.Or(parts);
  }

  private Expr all() {
    List<Expr> parts = new ArrayList<>(List.of(single()));
    while (peek().isWord(Words.AND)) {
      index++;
      parts.add(single());
    }
    return parts.size() == 1 ? parts.get(0) : new Expr.And(parts);
  }

  private Expr single() {
    Token token = peek();
    if (token.isWord(Words.ALWAYS)) {
      index++;
      return new Expr.Always();
    }
    if (token.isWord(Words.NEVER)) {
      index++;
      return new Expr.Never();
    }
    if (token.isWord(Words.NOT)) {
      index++;
      deeper(token);
      Expr part = single();
      depth--;
      return new Expr.Not(part);
    }
    if (token.isSign("(")) {
      index++;
      deeper(token);
      Expr inner = any();
      depth--;
      if (!peek().isSign(")")) {
        throw unexpectedJoint("and, or, or \")\" for the \"(\" at character " + (token.at() + 1));
      }
      index++;
      return inner;
    }
    return comparison();
  }

  private void deeper(Token token) {
    depth++;
    if (depth > Condition.DEEPEST_NESTING) {
      throw fail(
          token,
          "parentheses and not are nested too deeply",
          "at most " + Condition.DEEPEST_NESTING + " levels");
    }
  }

  private Expr comparison() {
    String trait = name(STATEMENT);
    Token sign = peek();
    if (sign.isSign("=")) {
      index++;
      return new Expr.Is(trait, name(aValueOf(trait)));
    }
    if (sign.isSign("!=")) {
      index++;
      return new Expr.Not(new Expr.Is(trait, name(aValueOf(trait))));
    }
    if (sign.isWord(Words.IN)) {
      index++;
      return new Expr.In(trait, values(trait));
    }
    String expected = "\"=\", \"!=\" or in after the trait " + shown(trait);
    if (sign.isMiscased(Words.IN)) {
      throw miscased(sign);
    }
    throw fail(sign, sign.shown(), expected);
  }

  private List<String> values(String trait) {
    expectSign("(", "\"(\" before the values of " + shown(trait));
    List<String> values = new ArrayList<>();
    do {
      Token token = peek();
      String value = name(aValueOf(trait));
      if (values.contains(value)) {
        throw fail(token, "\"" + shown(value) + "\" is listed twice", "each value once");
      }
      values.add(value);
    } while (skipSign(","));
    expectSign(")", "a comma or \")\" after a value of " + shown(trait));
    return values;
  }

  private String name(String expected) {
    Token token = peek();
    if (token.kind() != Token.Kind.WORD) {
      throw fail(token, token.shown(), expected);
    }
    if (token.isWord(Words.UNKNOWN)) {
      throw fail(token, "unknown can't be a part of a longer condition", expected);
    }
    if (Words.isReserved(token.text())) {
      throw !isLowerCase(token.text())
          ? miscased(token)
          : fail(token, "\"" + token.text() + "\" is a word of the language", expected);
    }
    index++;
    return token.text();
  }

  private static String aValueOf(String trait) {
    return "a value of " + shown(trait);
  }

  /** A name may be as long as the text; in a message it is cut. */
  private static String shown(String name) {
    return ConditionException.printable(name, 40);
  }

  private boolean skipSign(String sign) {
    boolean found = peek().isSign(sign);
    if (found) {
      index++;
    }
    return found;
  }

  private void expectSign(String sign, String expected) {
    if (!skipSign(sign)) {
      throw fail(peek(), peek().shown(), expected);
    }
  }

  private ConditionException unexpectedJoint(String expected) {
    Token token = peek();
    return token.isMiscased(Words.AND) || token.isMiscased(Words.OR)
        ? miscased(token)
        : fail(token, token.shown(), expected);
  }

  private ConditionException miscased(Token token) {
    return fail(
        token,
        "\"" + shown(token.text()) + "\" is a word of the language in upper case",
        "\"" + token.text().toLowerCase(Locale.ROOT) + "\" in lower case, or another name");
  }

  private static boolean isLowerCase(String word) {
    return word.equals(word.toLowerCase(Locale.ROOT));
  }

  private Token peek() {
    return tokens.get(index);
  }

  private ConditionException fail(Token token, String problem, String expected) {
    return new ConditionException(text, token.at(), problem, expected);
  }
}
