package org.loomwright.model.quantity;

import java.util.Locale;

/** Reads "14 AWG", "14AWG", "2/0 AWG", "0000 AWG" and "AWG 14", in upper or lower case. */
final class AwgReader {
  private static final String WORD = "AWG";
  private static final String EXAMPLE = "\"14 AWG\" or \"2/0 AWG\"";

  private final Cursor cursor;

  private AwgReader(String text) {
    this.cursor = new Cursor(text, UnitKind.WIRE_SIZE);
  }

  /** Whether the text speaks of AWG at all. */
  static boolean isFor(String text) {
    return text.toUpperCase(Locale.ROOT).contains(WORD);
  }

  /** The gauge number; 0, −1, −2, −3 for 1/0 to 4/0. */
  static int read(String text) {
    return new AwgReader(text).readAll();
  }

  private int readAll() {
    cursor.begin();
    boolean wordFirst = word();
    cursor.spaces();
    int start = cursor.at();
    String digits = cursor.digits();
    if (digits.isEmpty()) {
      throw cursor.fail(start, "a gauge number must stand here", EXAMPLE);
    }
    int gauge = cursor.peek() == '/' ? slashed(start, digits) : plain(start, digits);
    int afterNumber = cursor.at();
    cursor.spaces();
    if (!wordFirst && !word()) {
      throw cursor.fail(afterNumber, "AWG must stand right after a whole gauge number", EXAMPLE);
    }
    if (!cursor.atEndAfterSpaces()) {
      throw cursor.leftOver();
    }
    return gauge;
  }

  private boolean word() {
    if (cursor.plain().regionMatches(true, cursor.at(), WORD, 0, WORD.length())) {
      cursor.moveTo(cursor.at() + WORD.length());
      return true;
    }
    return false;
  }

  private int slashed(int start, String digits) {
    cursor.moveTo(cursor.at() + 1);
    int zeroAt = cursor.at();
    if (!cursor.digits().equals("0")) {
      throw cursor.fail(zeroAt, "only a 0 may stand below the stroke", EXAMPLE);
    }
    if (digits.length() != 1 || digits.charAt(0) < '1' || digits.charAt(0) > '4') {
      throw cursor.fail(start, "there is no such gauge", "1/0, 2/0, 3/0 or 4/0 AWG");
    }
    return 1 - (digits.charAt(0) - '0');
  }

  private int plain(int start, String digits) {
    if (digits.length() <= 4 && digits.chars().allMatch(c -> c == '0')) {
      return 1 - digits.length();
    }
    int gauge = digits.length() <= 2 && digits.charAt(0) != '0' ? Integer.parseInt(digits) : -1;
    if (gauge < 1 || gauge > Awg.SMALLEST_WIRE) {
      throw cursor.fail(
          start, "there is no such gauge here", "4/0 to " + Awg.SMALLEST_WIRE + " AWG");
    }
    return gauge;
  }
}
