package org.loomwright.model.quantity;

import java.math.BigDecimal;
import org.loomwright.model.quantity.UnitWord.UnitSystem;

/**
 * Reads a number and a unit, or a row of them as in "3 ft 6 in". Everything in the text must be
 * read; what is left over is an error with its position.
 */
final class QuantityReader {
  private static final BigDecimal LARGEST = new BigDecimal("1e15");
  private static final BigDecimal ABSOLUTE_ZERO_C = new BigDecimal("-273.15");

  private final Cursor cursor;
  private final UnitKind kind;

  private QuantityReader(String text, UnitKind kind) {
    this.cursor = new Cursor(text, kind);
    this.kind = kind;
  }

  /**
   * What was read.
   *
   * @param value in the base unit of the kind, finite
   * @param system where the unit as written is at home
   */
  record Reading(double value, UnitSystem system) {}

  /**
   * Reads a whole text.
   *
   * @throws QuantityException if any part of it can't be read, or the value can't be
   */
  static Reading read(String text, UnitKind kind) {
    return new QuantityReader(text, kind).readAll();
  }

  /** The canonical text of a value: plain digits, no exponent, one space, the unit. */
  static String write(double value, UnitKind kind, String unit) {
    checkFinite(value, kind);
    return Plain.text(value) + " " + unit;
  }

  /** The canonical text of a share of one, multiplied by 100 without rounding. */
  static String writePercent(double fraction) {
    checkFinite(fraction, UnitKind.PERCENT);
    return Plain.text(new BigDecimal(Double.toString(fraction)).movePointRight(2)) + " %";
  }

  private static void checkFinite(double value, UnitKind kind) {
    if (!Double.isFinite(value)) {
      throw new QuantityException(
          Double.toString(value),
          0,
          kind.noun(),
          "this is not a finite number",
          quoted(kind.example()));
    }
  }

  /** In quotation marks, fit for a message of one line. */
  static String quoted(String text) {
    return "\"" + QuantityException.printable(text) + "\"";
  }

  private Reading readAll() {
    cursor.begin();
    int start = cursor.at();
    boolean negative = cursor.sign();
    Exact number = NumberReader.read(cursor);
    UnitWord unit = unit(number);
    Exact total = unit.toBase(negative ? number.negated() : number);
    UnitWord last = unit;
    Exact lastNumber = number;
    while (!cursor.atEndAfterSpaces()) {
      if (!last.startsChain() || !cursor.atDigit()) {
        throw cursor.leftOver();
      }
      int termStart = cursor.at();
      Exact nextNumber = NumberReader.read(cursor);
      UnitWord next = unit(nextNumber);
      checkFollows(last, lastNumber, next, nextNumber, termStart);
      Exact term = next.toBase(nextNumber);
      total = total.plus(negative ? term.negated() : term);
      last = next;
      lastNumber = nextNumber;
    }
    return new Reading(checked(total, start), unit.system());
  }

  private void checkFollows(
      UnitWord last, Exact lastNumber, UnitWord next, Exact number, int termStart) {
    if (!last.mayBeFollowedBy(next)) {
      throw cursor.fail(
          termStart,
          next.symbol() + " can't follow " + last.symbol(),
          "one unit, or units from large to small such as "
              + (kind == UnitKind.LENGTH ? "\"3 ft 6 in\"" : "\"1 h 30 min\""));
    }
    BigDecimal ratio = last.factor().divide(next.factor());
    if (!lastNumber.isWhole()) {
      throw cursor.fail(
          termStart,
          "only the last number may have a fraction",
          "a whole number of " + last.symbol() + " before it");
    }
    if (number.compareWith(ratio) >= 0) {
      throw cursor.fail(
          termStart,
          "this is not less than one " + last.symbol(),
          "less than " + ratio.toPlainString() + " " + next.symbol() + " here");
    }
  }

  private double checked(Exact total, int start) {
    if (total.signum() < 0 && !kind.mayBeNegative()) {
      throw cursor.fail(start, kind.noun() + " must not be negative", quoted(kind.example()));
    }
    if (kind == UnitKind.TEMPERATURE && total.compareWith(ABSOLUTE_ZERO_C) < 0) {
      throw cursor.fail(start, "this is below absolute zero", "-273.15 °C or more");
    }
    double value = total.toDouble();
    if (total.compareWith(LARGEST) > 0 || total.negated().compareWith(LARGEST) > 0) {
      throw cursor.fail(start, "the number is too large", kind.noun() + " of a real thing");
    }
    if (value == 0 && total.signum() != 0) {
      throw cursor.fail(start, "the number is too small", kind.noun() + " of a real thing");
    }
    // Adding zero turns the negative zero of "-0 V" into zero.
    return value + 0.0;
  }

  private UnitWord unit(Exact number) {
    cursor.spaces();
    if (cursor.atEnd()) {
      throw cursor.fail(cursor.at(), "the unit is missing", missingUnit(number));
    }
    UnitWord unit = cursor.unit();
    if (unit.kind() != kind) {
      throw cursor.fail(
          cursor.at() - unit.symbol().length(),
          unit.symbol() + " is a unit of " + unit.kind().bareNoun() + ", not of " + kind.bareNoun(),
          kind.units() + ", such as " + quoted(kind.example()));
    }
    return unit;
  }

  private String missingUnit(Exact number) {
    if (kind == UnitKind.PERCENT && number.compareWith(BigDecimal.ONE) <= 0) {
      double percent = number.times(BigDecimal.valueOf(100)).toDouble();
      return quoted(Plain.text(percent) + " %")
          + " if a share of one is meant, "
          + quoted(Plain.text(number.toDouble()) + " %")
          + " if not";
    }
    return kind.units() + " after the number, such as " + quoted(kind.example());
  }
}
