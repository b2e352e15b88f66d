package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;

/**
 * A table as one text that keeps everything of it, so that it can travel with a form and come back
 * the same: a line for how its cells were kept apart, a line for each row with its number, a line
 * for each remark. Cells are kept apart by tabs; tabs, line breaks and strokes in them are written
 * as {@code \t}, {@code \n}, {@code \r} and {@code \\}.
 */
public final class CarriedTable {
  /** Longest text, characters: what a pasted text may have, and the numbers of its rows. */
  public static final int LONGEST = Limits.CHARACTERS + 200_000;

  private static final String ROW = "r";
  private static final String REMARK = "m";
  private static final String BROKEN =
      "the table came back damaged; go back to the first step and paste it again";

  private CarriedTable() {}

  /** The text of a table. */
  public static String write(PastedTable table) {
    StringBuilder out = new StringBuilder(table.form().name()).append('\n');
    for (PastedTable.Row row : table.rows()) {
      out.append(ROW).append('\t').append(row.number());
      row.cells().forEach(cell -> out.append('\t').append(escaped(cell)));
      out.append('\n');
    }
    for (CellRemark it : table.remarks()) {
      out.append(REMARK).append('\t').append(it.row()).append('\t').append(it.column());
      out.append('\t').append(escaped(it.text())).append('\t').append(it.problem());
      out.append('\t').append(escaped(it.message())).append('\n');
    }
    return out.toString();
  }

  /**
   * The table of a text. Nothing is taken on trust: it keeps within what is read of any table.
   *
   * @param text text as written, its lines ended in whatever way
   */
  public static Reading read(String text) {
    if (text.length() > LONGEST) {
      return new Reading.Bad(
          "the table is too large to be looked at here; paste only the rows of one connector");
    }
    String[] lines = text.split("\r?\n", -1);
    List<PastedTable.Row> rows = new ArrayList<>();
    List<CellRemark> remarks = new ArrayList<>();
    int cellCount = 0;
    try {
      TableForm form = TableForm.valueOf(lines[0]);
      for (String line : List.of(lines).subList(1, lines.length)) {
        String[] parts = line.split("\t", -1);
        if (parts[0].equals(REMARK) && parts.length == 6) {
          remarks.add(remark(parts));
        } else if (parts[0].equals(ROW) && parts.length > 2) {
          PastedTable.Row row = row(parts, rows);
          cellCount += row.cells().size();
          rows.add(row);
        } else if (!line.isEmpty()) {
          return new Reading.Bad(BROKEN);
        }
      }
      return DelimitedReader.checked(new PastedTable(form, rows, remarks), cellCount);
    } catch (IllegalArgumentException e) {
      return new Reading.Bad(BROKEN);
    }
  }

  private static PastedTable.Row row(String[] parts, List<PastedTable.Row> before) {
    int number = Integer.parseInt(parts[1]);
    int last = before.isEmpty() ? 0 : before.get(before.size() - 1).number();
    List<String> cells = new ArrayList<>();
    for (String part : List.of(parts).subList(2, parts.length)) {
      cells.add(CellText.clean(plain(part)));
    }
    boolean tooLong = cells.stream().anyMatch(it -> it.length() > Limits.CELL);
    List<String> kept = PastedTable.trimmed(cells);
    if (number <= last || kept.isEmpty() || kept.size() > Limits.COLUMNS || tooLong) {
      throw new IllegalArgumentException("row " + number);
    }
    return new PastedTable.Row(number, kept);
  }

  private static CellRemark remark(String[] parts) {
    return new CellRemark(
        Integer.parseInt(parts[1]),
        Integer.parseInt(parts[2]),
        plain(parts[3]),
        plain(parts[5]),
        Boolean.parseBoolean(parts[4]));
  }

  private static String escaped(String cell) {
    return cell.replace("\\", "\\\\")
        .replace("\t", "\\t")
        .replace("\n", "\\n")
        .replace("\r", "\\r");
  }

  private static String plain(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != '\\') {
        out.append(c);
        continue;
      }
      i++;
      char escaped = i < text.length() ? text.charAt(i) : '?';
      switch (escaped) {
        case '\\' -> out.append('\\');
        case 't' -> out.append('\t');
        case 'n' -> out.append('\n');
        case 'r' -> out.append('\r');
        default -> throw new IllegalArgumentException("\\" + escaped);
      }
    }
    return out.toString();
  }
}
