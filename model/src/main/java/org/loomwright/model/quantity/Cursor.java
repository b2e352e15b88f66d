package org.loomwright.model.quantity;

import java.util.Map;
import java.util.Optional;

/**
 * A place in a text that is being read. Look-alike characters are levelled one for one first, so
 * that positions are those of the text as written.
 */
final class Cursor {
  /** Room for the smallest double in plain digits; nobody writes a quantity this long. */
  private static final int LONGEST = 400;

  private static final Map<String, String> HINTS =
      Map.of(
          "mil", "can mean 1/1000 in or a millimetre",
          "mils", "can mean 1/1000 in or a millimetre",
          "ga", "does not say which gauge",
          "gauge", "does not say which gauge");

  private final String text;
  private final String plain;
  private final UnitKind kind;
  private int at;

  Cursor(String text, UnitKind kind) {
    this.text = text;
    this.kind = kind;
    if (text.length() > LONGEST) {
      throw fail(
          LONGEST,
          "the text is longer than " + LONGEST + " characters",
          QuantityReader.quoted(kind.example()));
    }
    StringBuilder levelled = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      levelled.append(level(text.charAt(i)));
    }
    this.plain = levelled.toString();
  }

  private static char level(char c) {
    return switch (c) {
      // No-break, figure, thin and narrow no-break space.
      case '\u00a0', '\u2007', '\u2009', '\u202f' -> ' ';
      // Minus sign.
      case '\u2212' -> '-';
      // Greek small mu to micro sign.
      case '\u03bc' -> '\u00b5';
      // Ohm sign to Greek capital omega.
      case '\u2126' -> '\u03a9';
      // Masculine ordinal indicator, typed for a degree sign.
      case '\u00ba' -> '\u00b0';
      // Fraction slash and division slash.
      case '\u2044', '\u2215' -> '/';
      // Double and single closing quotation marks, put by word processors for inch and foot marks.
      case '\u201d' -> '"';
      case '\u2019' -> '\'';
      default -> c;
    };
  }

  int at() {
    return at;
  }

  void moveTo(int position) {
    at = position;
  }

  boolean atEnd() {
    return at >= plain.length();
  }

  /** The character here, or NUL at the end. */
  char peek() {
    return peek(0);
  }

  char peek(int ahead) {
    return at + ahead < plain.length() ? plain.charAt(at + ahead) : '\0';
  }

  boolean atDigit() {
    return isDigit(peek());
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  void spaces() {
    while (peek() == ' ') {
      at++;
    }
  }

  boolean atEndAfterSpaces() {
    spaces();
    return atEnd();
  }

  /** Skips leading spaces and refuses a text without anything else. */
  void begin() {
    if (atEndAfterSpaces()) {
      throw fail(0, "there is nothing to read", QuantityReader.quoted(kind.example()));
    }
  }

  /** Reads a sign if there is one; true for minus. */
  boolean sign() {
    char c = peek();
    if (c == '-' || c == '+') {
      at++;
    }
    return c == '-';
  }

  /** A run of digits 0 to 9, possibly empty. */
  String digits() {
    int start = at;
    while (atDigit()) {
      at++;
    }
    return plain.substring(start, at);
  }

  /** Reads a unit; whatever follows it directly must not be a part of a longer word. */
  UnitWord unit() {
    Optional<UnitWord> found = UnitWord.longestAt(plain, at);
    if (found.isPresent()) {
      char after = peek(found.get().symbol().length());
      if (after == '\0' || after == ' ' || isDigit(after)) {
        at += found.get().symbol().length();
        return found.get();
      }
    }
    String token = token();
    Optional<UnitWord> near = UnitWord.sameLetters(token, kind);
    String hint = HINTS.getOrDefault(token, "is not a unit that is known here");
    throw fail(
        at,
        QuantityReader.quoted(token) + " " + hint,
        near.map(w -> "\"" + w.symbol() + "\"; upper and lower case matter")
            .orElse(kind.units() + ", such as " + QuantityReader.quoted(kind.example())));
  }

  /** The text as written from here to the next space. */
  String token() {
    int end = plain.indexOf(' ', at);
    return text.substring(at, end < 0 ? text.length() : end);
  }

  String plain() {
    return plain;
  }

  String text() {
    return text;
  }

  UnitKind kind() {
    return kind;
  }

  QuantityException leftOver() {
    return fail(
        at,
        QuantityReader.quoted(text.substring(at).strip()) + " is left over",
        "the end of the text after " + QuantityReader.quoted(text.substring(0, at).strip()));
  }

  QuantityException fail(int position, String problem, String expected) {
    return new QuantityException(text, position, kind.noun(), problem, expected);
  }
}
