package org.loomwright.intake;

/** Texts of cells, fit to be shown and to be written into a document. */
final class CellText {
  private static final int SHOWN = 60;

  private CellText() {}

  /**
   * Without space around it; line breaks as line feeds; other control characters as spaces; half
   * characters replaced.
   */
  static String clean(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.replace("\r\n", "\n")
        .replace('\r', '\n')
        .codePoints()
        .map(CellText::cleaned)
        .forEach(out::appendCodePoint);
    return out.toString().strip();
  }

  private static int cleaned(int c) {
    if (c == '\n') {
      return c;
    }
    int type = Character.getType(c);
    if (Character.isISOControl(c) || Character.isSpaceChar(c) || c == '\ufeff') {
      return ' ';
    }
    return type == Character.SURROGATE ? '\ufffd' : c;
  }

  /** On one line, with single spaces. */
  static String line(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  /** In quotation marks, on one line, cut when long. */
  static String shown(String text) {
    String line = line(text);
    int end = line.offsetByCodePoints(0, Math.min(SHOWN, line.codePointCount(0, line.length())));
    return "'" + line.substring(0, end) + (end < line.length() ? "…" : "") + "'";
  }
}
