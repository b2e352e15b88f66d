package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a text at one delimiter (RFC 4180): a cell that starts with a quotation mark ends at the
 * next mark that stands before a delimiter or line end, two marks inside mean one. A mark that is
 * never closed so, and one inside a cell, is an ordinary character, e.g. for inches.
 */
final class DelimitedRows {
  private final String text;
  private final char delimiter;
  private int at;
  private int strayQuotes;

  DelimitedRows(String text, char delimiter) {
    this.text = text;
    this.delimiter = delimiter;
  }

  /** The first rows, at most so many, empty ones included. */
  List<List<String>> rows(int most) {
    at = 0;
    strayQuotes = 0;
    List<List<String>> rows = new ArrayList<>();
    while (at < text.length() && rows.size() < most) {
      rows.add(row());
    }
    return rows;
  }

  /** Quotation marks met so far that were no part of quoting. */
  int strayQuotes() {
    return strayQuotes;
  }

  private List<String> row() {
    List<String> cells = new ArrayList<>();
    while (true) {
      cells.add(cell());
      if (at >= text.length()) {
        return cells;
      }
      char end = text.charAt(at++);
      if (end == '\n') {
        return cells;
      }
      if (at >= text.length()) {
        cells.add("");
        return cells;
      }
    }
  }

  private String cell() {
    if (text.charAt(at) == '"') {
      int end = closing(at + 1);
      if (end >= 0) {
        String quoted = text.substring(at + 1, end).replace("\"\"", "\"");
        at = end + 1;
        return quoted;
      }
    }
    int start = at;
    while (at < text.length() && text.charAt(at) != delimiter && text.charAt(at) != '\n') {
      if (text.charAt(at) == '"') {
        strayQuotes++;
      }
      at++;
    }
    return text.substring(start, at);
  }

  /** Where the quoting ends, -1 if it does not. Looks no farther than a cell may be long. */
  private int closing(int from) {
    int last = Math.min(text.length(), from + 2 * Limits.CELL);
    for (int i = from; i < last; i++) {
      if (text.charAt(i) != '"') {
        continue;
      }
      if (i + 1 == text.length() || text.charAt(i + 1) == delimiter || text.charAt(i + 1) == '\n') {
        return i;
      }
      if (text.charAt(i + 1) != '"') {
        return -1;
      }
      i++;
    }
    return -1;
  }
}
