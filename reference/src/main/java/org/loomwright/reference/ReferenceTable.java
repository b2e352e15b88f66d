package org.loomwright.reference;

import java.util.List;
import java.util.Map;

/**
 * A published table.
 *
 * @param name short name of the table
 * @param sources where its figures come from and with what caution, as comment lines of the file
 * @param header column names in file order
 * @param rows one entry per line, in file order
 */
public record ReferenceTable(
    String name, List<String> sources, List<String> header, List<Row> rows) {
  /** Copies the lists. */
  public ReferenceTable {
    sources = List.copyOf(sources);
    header = List.copyOf(header);
    rows = List.copyOf(rows);
  }

  /**
   * One line of a table.
   *
   * @param where table and line number, for messages
   * @param cells text by column name
   */
  public record Row(String where, Map<String, String> cells) {
    /** Copies the cells. */
    public Row {
      cells = Map.copyOf(cells);
    }

    /** Text of a column, possibly empty. */
    public String text(String column) {
      String cell = cells.get(column);
      if (cell == null) {
        throw new IllegalArgumentException(
            where + " has no column \"" + column + "\"; it has " + cells.keySet());
      }
      return cell;
    }

    /** Number of a column. */
    public double number(String column) {
      String cell = text(column);
      try {
        return Double.parseDouble(cell);
      } catch (NumberFormatException e) {
        throw new IllegalArgumentException(
            where + ", column \"" + column + "\": \"" + cell + "\" is not a number", e);
      }
    }

    /** Whether the cell of a column is empty. */
    public boolean blank(String column) {
      return text(column).isEmpty();
    }

    /**
     * Gauge of a column as a number: "0", "00", "000", "0000" give 0, -1, -2, -3; others their
     * number.
     */
    public int gauge(String column) {
      String cell = text(column);
      return cell.matches("0+") ? 1 - cell.length() : Integer.parseInt(cell);
    }
  }
}
