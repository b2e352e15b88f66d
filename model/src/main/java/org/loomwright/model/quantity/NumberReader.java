package org.loomwright.model.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Locale;

/** Reads a number without sign: digits with a point, or a fraction, or a whole and a fraction. */
final class NumberReader {
  private static final String VULGAR = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

  private NumberReader() {}

  static Exact read(Cursor cursor) {
    int start = cursor.at();
    String whole = cursor.digits();
    if (whole.isEmpty()) {
      throw noNumber(cursor);
    }
    boolean point = cursor.peek() == '.';
    if (point) {
      cursor.moveTo(cursor.at() + 1);
      String decimals = cursor.digits();
      if (decimals.isEmpty()) {
        throw cursor.fail(
            cursor.at(), "a digit must follow the point", "digits such as " + whole + ".5");
      }
      whole = whole + "." + decimals;
    }
    refuseOtherForms(cursor, start, whole);
    BigDecimal value = new BigDecimal(whole);
    if (cursor.peek() == '/') {
      return fraction(cursor, start, whole, point);
    }
    int afterNumber = cursor.at();
    cursor.spaces();
    if (!cursor.atDigit()) {
      return Exact.of(value);
    }
    if (afterNumber == cursor.at()) {
      throw cursor.leftOver();
    }
    int second = cursor.at();
    String top = cursor.digits();
    if (cursor.peek() != '/') {
      throw cursor.fail(
          second,
          "the number goes on after a space",
          "all digits together, without separators, such as "
              + QuantityReader.quoted(whole + top + tail(cursor)));
    }
    if (point) {
      throw cursor.fail(
          second, "a fraction can't follow a number with a point", "one or the other");
    }
    Exact part = fraction(cursor, second, top, false);
    if (part.compareWith(BigDecimal.ONE) >= 0) {
      throw cursor.fail(
          second, "the fraction is not less than one", "a fraction such as \"1/2\" after a whole");
    }
    return Exact.of(value).plus(part);
  }

  private static Exact fraction(Cursor cursor, int start, String top, boolean point) {
    if (!cursor.kind().mayBeFraction()) {
      throw cursor.fail(
          start,
          "a fraction can't be used for " + cursor.kind().noun(),
          "a number with a point, such as " + QuantityReader.quoted(cursor.kind().example()));
    }
    if (point) {
      throw cursor.fail(start, "the upper number has a point", "whole numbers such as \"1/2\"");
    }
    cursor.moveTo(cursor.at() + 1);
    int bottomAt = cursor.at();
    String bottom = cursor.digits();
    if (bottom.isEmpty()) {
      throw cursor.fail(bottomAt, "the lower number is missing", "a fraction such as \"1/2\"");
    }
    BigInteger denominator = new BigInteger(bottom);
    if (denominator.signum() == 0) {
      throw cursor.fail(bottomAt, "the lower number is zero", "a fraction such as \"1/2\"");
    }
    if (cursor.peek() == '/' || cursor.peek() == '.' || cursor.peek() == ',') {
      throw cursor.fail(cursor.at(), "the fraction goes on", "two whole numbers such as \"1/2\"");
    }
    return new Exact(new BigDecimal(top), denominator);
  }

  private static void refuseOtherForms(Cursor cursor, int start, String number) {
    char c = cursor.peek();
    if (c == ',') {
      throw comma(cursor, number);
    }
    if (c == '.') {
      throw cursor.fail(
          cursor.at(), "a second point", "one point at most and no separators, such as \"1000.5\"");
    }
    if (c == 'e' || c == 'E') {
      boolean signed = cursor.peek(1) == '+' || cursor.peek(1) == '-';
      if (Cursor.isDigit(cursor.peek(signed ? 2 : 1))) {
        throw cursor.fail(
            cursor.at(),
            "powers of ten are not read",
            "the number in plain digits, such as "
                + QuantityReader.quoted(cursor.kind().example()));
      }
    }
    if (VULGAR.indexOf(c) >= 0) {
      throw vulgar(cursor, start);
    }
  }

  private static QuantityException comma(Cursor cursor, String number) {
    int commaAt = cursor.at();
    cursor.moveTo(commaAt + 1);
    String decimals = cursor.digits();
    String expected;
    if (decimals.isEmpty()) {
      expected = QuantityReader.quoted(cursor.kind().example());
    } else if (cursor.peek() == '.' || cursor.peek() == ',') {
      // More separators follow, so this one can only part thousands.
      expected = QuantityReader.quoted(cursor.text().strip().replace(",", ""));
    } else {
      String tail = tail(cursor);
      expected = QuantityReader.quoted(number + "." + decimals + tail);
      if (decimals.length() == 3) {
        expected +=
            ", or if thousands were meant " + QuantityReader.quoted(number + decimals + tail);
      }
    }
    return cursor.fail(
        commaAt, "a comma is not read, as its meaning differs by country; use a point", expected);
  }

  /** What is left of the text after one space; empty if nothing is. */
  private static String tail(Cursor cursor) {
    cursor.spaces();
    String rest = cursor.text().substring(cursor.at()).strip();
    return rest.isEmpty() ? "" : " " + rest;
  }

  private static QuantityException vulgar(Cursor cursor, int start) {
    return cursor.fail(
        cursor.at(),
        "fractions in one character are not read",
        cursor.at() == start ? "\"1/2\"" : "a space and the fraction, such as \"32 1/2 in\"");
  }

  private static QuantityException noNumber(Cursor cursor) {
    if (cursor.peek() == '.') {
      return cursor.fail(cursor.at(), "a digit must stand before the point", "\"0.5\"");
    }
    if (cursor.peek() != '\0' && VULGAR.indexOf(cursor.peek()) >= 0) {
      return vulgar(cursor, cursor.at());
    }
    String token = cursor.token().toLowerCase(Locale.ROOT);
    boolean notFinite = token.startsWith("nan") || token.startsWith("inf") || token.startsWith("∞");
    return cursor.fail(
        cursor.at(),
        notFinite ? "this is not a finite number" : "a number must stand here",
        QuantityReader.quoted(cursor.kind().example()));
  }
}
