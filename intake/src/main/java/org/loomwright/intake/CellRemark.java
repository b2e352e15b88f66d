package org.loomwright.intake;

/**
 * Something to say about a cell.
 *
 * @param row row as the person sees it, from 1
 * @param column column from 0; -1 for the row as a whole
 * @param text what stands in the cell
 * @param message what is wrong and what would be right, or what was taken for granted
 * @param problem whether it keeps the row from being taken as it is
 */
public record CellRemark(int row, int column, String text, String message, boolean problem) {
  /** Where it is, e.g. "C7", or "row 7". */
  public String ref() {
    return column < 0 ? "row " + row : PastedTable.letters(column) + row;
  }

  /** All of it on one line, e.g. "C7: 'rde' is not a colour; did you mean 'red'?". */
  public String words() {
    return ref() + ": " + message;
  }
}
