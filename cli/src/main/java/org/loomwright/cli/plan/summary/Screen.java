package org.loomwright.cli.plan.summary;

import java.util.ArrayList;
import java.util.List;

/**
 * Text for a terminal of {@value #WIDTH} columns: lines wrapped at blanks, rows in columns. Spaces
 * that must not break keep their words together and are printed as plain ones, because not every
 * terminal font has them.
 */
final class Screen {
  static final int WIDTH = 100;

  private static final String INDENT = "  ";
  private static final String GAP = "  ";
  private static final int LEAST_WIDTH = 20;

  private final StringBuilder text = new StringBuilder();

  /** A line from the left edge; what does not fit goes on below, indented. */
  Screen line(String words) {
    hang("", words);
    return this;
  }

  /** An empty line and a heading. */
  Screen heading(String words) {
    text.append('\n');
    return line(words);
  }

  /** An indented line that starts with a mark; what does not fit goes on under its words. */
  Screen item(String mark, String words) {
    hang(INDENT + mark + " ", words);
    return this;
  }

  /**
   * Rows in columns just wide enough; one column takes the room that is left and wraps.
   *
   * @param flexible index of the column that wraps
   * @param rows cells, as many in each row
   */
  Screen rows(int flexible, List<List<String>> rows) {
    if (rows.isEmpty()) {
      return this;
    }
    int columns = rows.get(0).size();
    int[] widths = new int[columns];
    int taken = INDENT.length() + GAP.length() * (columns - 1);
    int widest = 0;
    for (int column = 0; column < columns; column++) {
      for (List<String> row : rows) {
        widths[column] = Math.max(widths[column], width(row.get(column)));
      }
      if (column == flexible) {
        widest = widths[column];
      } else {
        taken += widths[column];
      }
    }
    widths[flexible] = Math.min(widest, Math.max(LEAST_WIDTH, WIDTH - taken));
    rows.forEach(row -> row(flexible, widths, row));
    return this;
  }

  private void row(int flexible, int[] widths, List<String> row) {
    List<String> pieces = wrap(row.get(flexible), widths[flexible]);
    for (int piece = 0; piece < pieces.size(); piece++) {
      StringBuilder line = new StringBuilder(INDENT);
      for (int column = 0; column < widths.length; column++) {
        String cell = column == flexible ? pieces.get(piece) : piece == 0 ? row.get(column) : "";
        line.append(cell).append(" ".repeat(Math.max(0, widths[column] - width(cell)))).append(GAP);
      }
      append(line.toString());
    }
  }

  private void hang(String start, String words) {
    String next = start.isEmpty() ? INDENT : " ".repeat(width(start));
    // Wrapped for the indented lines, so that the first one leaves the same room.
    String before = start;
    for (String piece : wrap(words, WIDTH - width(next))) {
      append(before + piece);
      before = next;
    }
  }

  private void append(String line) {
    text.append(line.replace('\u00A0', ' ').replace('\u202F', ' ').stripTrailing()).append('\n');
  }

  /** Pieces of at most the given width, broken at blanks; only a longer word is broken itself. */
  static List<String> wrap(String words, int width) {
    List<String> pieces = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    for (String word : words.strip().split("[ \\r\\n\\t]+", -1)) {
      String rest = word;
      if (!piece.isEmpty() && width(piece.toString()) + 1 + width(rest) > width) {
        pieces.add(piece.toString());
        piece.setLength(0);
      }
      while (width(rest) > width) {
        int cut = cut(rest, width);
        pieces.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      piece.append(piece.isEmpty() ? "" : " ").append(rest);
    }
    pieces.add(piece.toString());
    return pieces;
  }

  /** Where to break a word that is too long: after a joining mark, if there is one. */
  private static int cut(String word, int width) {
    int most = word.offsetByCodePoints(0, width);
    for (int at = most; at > 1; at--) {
      if ("-/,.;:_\\".indexOf(word.charAt(at - 1)) >= 0) {
        return at;
      }
    }
    return most;
  }

  private static int width(String words) {
    return words.codePointCount(0, words.length());
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
