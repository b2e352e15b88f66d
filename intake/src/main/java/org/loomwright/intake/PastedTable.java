package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A table as it was pasted. Cells keep their row and column as a person sees them in a spreadsheet;
 * rows without any text are left out, and so are empty cells at the end of a row.
 *
 * @param form how its cells were kept apart
 * @param rows rows with at least one text, by number
 * @param remarks what could not be read as it stands, e.g. a formula without a value
 */
public record PastedTable(TableForm form, List<Row> rows, List<CellRemark> remarks) {
  public PastedTable {
    rows = List.copyOf(rows);
    remarks = List.copyOf(remarks);
  }

  /**
   * One row.
   *
   * @param number number as seen, from 1
   * @param cells texts from column A on, empty where there is none; the last one is not empty
   */
  public record Row(int number, List<String> cells) {
    public Row {
      cells = List.copyOf(cells);
    }

    /** The text in a column, empty where there is none. */
    public String text(int column) {
      return column < cells.size() ? cells.get(column) : "";
    }
  }

  /**
   * Reads a pasted text: columns kept apart by tabs, semicolons or commas, whichever fits the rows
   * best; cells in quotation marks may hold the delimiter and line breaks.
   */
  public static Reading read(String text) {
    return DelimitedReader.read(text);
  }

  /**
   * Reads a spreadsheet file (XLSX). Formulas count by the value that was saved with them; a value
   * merged over several rows holds for each of them.
   *
   * @param xlsx bytes of the file
   * @param sheet name of the sheet; empty takes the first one
   */
  public static Reading read(byte[] xlsx, Optional<String> sheet) {
    return XlsxReader.read(xlsx, sheet);
  }

  /** Number of columns. */
  public int width() {
    return rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
  }

  /** The row with this number. */
  public Optional<Row> row(int number) {
    return rows.stream().filter(row -> row.number() == number).findFirst();
  }

  /**
   * The table with the text of one cell corrected.
   *
   * @param row number of a row of the table
   * @param column column from 0, at most the last one there may be
   * @throws IllegalArgumentException when there is no such cell
   */
  public PastedTable with(int row, int column, String text) {
    if (row(row).isEmpty() || column < 0 || column >= Limits.COLUMNS) {
      throw new IllegalArgumentException("the table has no cell " + ref(row, Math.max(0, column)));
    }
    List<Row> corrected = new ArrayList<>();
    for (Row it : rows) {
      if (it.number() != row) {
        corrected.add(it);
        continue;
      }
      List<String> cells = new ArrayList<>(it.cells());
      while (cells.size() <= column) {
        cells.add("");
      }
      cells.set(column, CellText.clean(text));
      List<String> kept = trimmed(cells);
      if (!kept.isEmpty()) {
        corrected.add(new Row(row, kept));
      }
    }
    return new PastedTable(
        form,
        corrected,
        remarks.stream().filter(it -> it.row() != row || it.column() != column).toList());
  }

  /** A cell's name as seen, e.g. "C7" for row 7 and column 2. */
  public static String ref(int row, int column) {
    return letters(column) + row;
  }

  /** The letters of a column, e.g. "AB" for 27. */
  public static String letters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
      letters.insert(0, (char) ('A' + rest % 26));
    }
    return letters.toString();
  }

  static List<String> trimmed(List<String> cells) {
    int end = cells.size();
    while (end > 0 && cells.get(end - 1).isEmpty()) {
      end--;
    }
    return cells.subList(0, end);
  }
}
