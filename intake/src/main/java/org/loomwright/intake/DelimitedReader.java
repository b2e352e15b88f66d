package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads text with delimiters; which one it is follows from how evenly it cuts the rows. */
final class DelimitedReader {
  /** So many rows are looked at to find the delimiter. */
  private static final int SAMPLE = 300;

  private DelimitedReader() {}

  static Reading read(String text) {
    if (text.length() > Limits.CHARACTERS) {
      return new Reading.Bad(
          "the text has "
              + text.length()
              + " characters; at most "
              + Limits.CHARACTERS
              + " are read: paste only the rows of one connector");
    }
    String start = text.startsWith("\ufeff") ? text.substring(1) : text;
    String clean = start.replace("\r\n", "\n").replace('\r', '\n').replace('\0', ' ');
    TableForm form = form(clean);
    return table(form, new DelimitedRows(clean, form.delimiter()).rows(Integer.MAX_VALUE));
  }

  private static Reading table(TableForm form, List<List<String>> records) {
    List<PastedTable.Row> rows = new ArrayList<>();
    int cellCount = 0;
    for (int i = 0; i < records.size(); i++) {
      List<String> cells =
          PastedTable.trimmed(records.get(i).stream().map(CellText::clean).toList());
      if (cells.size() > Limits.COLUMNS) {
        return new Reading.Bad(
            "row "
                + (i + 1)
                + " has "
                + cells.size()
                + " columns; at most "
                + Limits.COLUMNS
                + " are read");
      }
      for (int column = 0; column < cells.size(); column++) {
        if (cells.get(column).length() > Limits.CELL) {
          return new Reading.Bad(tooLong(i + 1, column));
        }
      }
      cellCount += cells.size();
      if (!cells.isEmpty()) {
        rows.add(new PastedTable.Row(i + 1, cells));
      }
    }
    return checked(new PastedTable(form, rows, List.of()), cellCount);
  }

  static String tooLong(int row, int column) {
    return "cell "
        + PastedTable.ref(row, column)
        + " has more than "
        + Limits.CELL
        + " characters, so this is no table of a connector's cavities";
  }

  static Reading checked(PastedTable table, int cellCount) {
    if (table.rows().isEmpty()) {
      return new Reading.Bad("there is nothing in it; copy the rows of the table and paste again");
    }
    if (table.rows().size() > Limits.ROWS || cellCount > Limits.CELLS) {
      return new Reading.Bad(
          "the table is too large: at most "
              + Limits.ROWS
              + " rows and "
              + Limits.CELLS
              + " cells are read; paste only the rows of one connector");
    }
    return new Reading.Good(table);
  }

  /** The delimiter that cuts most rows into the same number of cells, leaving no stray quotes. */
  static TableForm form(String text) {
    TableForm best = TableForm.SINGLE;
    double most = 0;
    for (TableForm form : List.of(TableForm.TAB, TableForm.SEMICOLON, TableForm.COMMA)) {
      double evenness = evenness(text, form.delimiter());
      if (evenness > most + 1e-9) {
        most = evenness;
        best = form;
      }
    }
    return best;
  }

  private static double evenness(String text, char delimiter) {
    if (text.indexOf(delimiter) < 0) {
      return 0;
    }
    DelimitedRows reader = new DelimitedRows(text, delimiter);
    Map<Integer, Integer> widths = new TreeMap<>();
    int count = 0;
    int cut = 0;
    for (List<String> row : reader.rows(SAMPLE)) {
      if (row.size() == 1 && row.get(0).isBlank()) {
        continue;
      }
      count++;
      if (row.size() > 1) {
        cut++;
        widths.merge(row.size(), 1, Integer::sum);
      }
    }
    if (count == 0) {
      return 0;
    }
    int usual = widths.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    // Ragged rows still count a little: a delimiter that cuts every row is better than none.
    double stray = (double) reader.strayQuotes() / count;
    return (usual + 0.5 * (cut - usual)) / count - 0.5 * Math.min(1, stray);
  }
}
