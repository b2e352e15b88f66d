package org.loomwright.web.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.intake.CellRemark;
import org.loomwright.intake.ColumnGuess;
import org.loomwright.intake.Meaning;
import org.loomwright.intake.PastedTable;
import org.loomwright.intake.Preview;

/** Cells of a preview: which can be edited, and what is said at each. */
public final class PasteCells {
  private final PasteJudge judged;

  PasteCells(PasteJudge judged) {
    this.judged = judged;
  }

  /**
   * Something said at a cell or row.
   *
   * @param id name in the page
   * @param problem whether it has to be put right
   * @param words what is said
   */
  public record Remark(String id, boolean problem, String words) {
    /** A sign beside the words. */
    public String sign() {
      return problem ? "!" : "i";
    }
  }

  /**
   * A cell.
   *
   * @param field name of its field
   * @param label what it is, e.g. "C7, wire colour"
   * @param heading what stands above it where the table is shown as cards
   * @param text its text as it counts
   * @param original its text as pasted, where that is another one; empty where it is not
   * @param edited whether it can be edited here
   * @param corrected whether it was edited
   * @param remarks what is said of it
   */
  public record Shown(
      String field,
      String label,
      String heading,
      String text,
      String original,
      boolean edited,
      boolean corrected,
      List<Remark> remarks) {
    public Shown {
      remarks = List.copyOf(remarks);
    }

    /** Names of the remarks, for a reader of the screen; null where there is none. */
    public @org.jspecify.annotations.Nullable String describedBy() {
      return remarks.isEmpty()
          ? null
          : remarks.stream().map(Remark::id).collect(Collectors.joining(" "));
    }

    /** Whether it has to be put right. */
    public boolean isWrong() {
      return remarks.stream().anyMatch(Remark::problem);
    }
  }

  /** The remarks at a column of a row; -1 for the row as a whole. */
  static List<Remark> remarks(Preview.Row row, int column) {
    return remarks(row.number(), row.remarks(), column);
  }

  private static List<Remark> remarks(int row, List<CellRemark> all, int column) {
    List<Remark> remarks = new ArrayList<>();
    for (CellRemark it : all) {
      if (it.column() == column) {
        remarks.add(
            new Remark(
                "s-" + row + "-" + (column < 0 ? "row" : column) + "-" + remarks.size(),
                it.problem(),
                it.message()));
      }
    }
    return remarks;
  }

  /** The cells of a row. */
  List<Shown> of(PastedTable.Row row, List<CellRemark> remarks) {
    boolean whole = remarks.stream().anyMatch(it -> it.problem() && it.column() < 0);
    List<Shown> cells = new ArrayList<>();
    for (ColumnGuess.Column column : judged.columns().columns()) {
      PasteForm.Cell cell = new PasteForm.Cell(row.number(), column.column());
      String original = row.text(column.column());
      String corrected = judged.form().cells().get(cell);
      List<Remark> said = remarks(row.number(), remarks, column.column());
      // A row that is wrong as a whole can be put right at any cell that counts.
      boolean wrong = said.stream().anyMatch(Remark::problem);
      boolean edited = corrected != null || wrong || whole && column.meaning() != Meaning.LEFT_OUT;
      String text = corrected == null ? original : corrected;
      cells.add(
          new Shown(
              cell.field(),
              PastedTable.ref(row.number(), column.column()) + ", " + column.meaning().words(),
              column.header().isEmpty() ? column.meaning().words() : column.header(),
              edited ? PasteForm.line(text) : text,
              corrected == null ? "" : PasteForm.line(original),
              edited,
              corrected != null,
              said));
    }
    return cells;
  }
}
