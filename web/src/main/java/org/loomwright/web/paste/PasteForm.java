package org.loomwright.web.paste;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.loomwright.intake.Book;
import org.loomwright.intake.CarriedTable;
import org.loomwright.intake.Meaning;
import org.loomwright.intake.PastedTable;
import org.loomwright.intake.Reading;

/**
 * All that a person has said of a pasted table so far. It travels with the form, so nothing is kept
 * on the side of the program.
 *
 * @param sheets tables; one for pasted text, one for each sheet of a file
 * @param at which of them is meant
 * @param basedOn revision of the vehicle the preview is made against
 * @param meanings what columns are said to mean; empty before the first preview
 * @param shown what the columns meant when the form was made
 * @param header number of the row with the headers as typed; absent before the first preview
 * @param cells corrected texts of cells
 * @param ticks rows taken or left
 * @param words other fields by name
 */
public record PasteForm(
    List<Book.Sheet> sheets,
    int at,
    long basedOn,
    Map<Integer, Meaning> meanings,
    Map<Integer, Meaning> shown,
    Optional<String> header,
    Map<Cell, String> cells,
    Ticks ticks,
    Map<String, String> words) {
  /** Field: builds that have these wires. */
  public static final String PRESENT = "present";

  /** Field: where wires go of which the table says nothing. */
  public static final String FAR = "far";

  /** Field: how the table is known. */
  public static final String HOW = "how";

  /** Field: whose find it is. */
  public static final String BY = "by";

  /** Field: the day of it. */
  public static final String WHEN = "when";

  /** Field: what the table is from. */
  public static final String NOTE = "note";

  private static final List<String> WORDS = List.of(PRESENT, FAR, HOW, BY, WHEN, NOTE);
  private static final Pattern CELL = Pattern.compile("c-(\\d{1,9})-(\\d{1,3})");
  private static final Pattern COLUMN = Pattern.compile("m(\\d{1,3})");
  private static final Pattern NUMBER = Pattern.compile("\\d{1,3}");

  public PasteForm {
    sheets = List.copyOf(sheets);
    meanings = Map.copyOf(meanings);
    shown = Map.copyOf(shown);
    cells = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    words = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(words));
  }

  /**
   * A cell of the table.
   *
   * @param row number of its row
   * @param column its column from 0
   */
  public record Cell(int row, int column) {
    /** Name of its field. */
    public String field() {
      return "c-" + row + "-" + column;
    }
  }

  /** A table that was just read. */
  public static PasteForm first(List<Book.Sheet> sheets, long basedOn) {
    return new PasteForm(
        sheets, 0, basedOn, Map.of(), Map.of(), Optional.empty(), Map.of(), Ticks.none(), Map.of());
  }

  /**
   * What a form says; empty when the tables in it are damaged.
   *
   * @param fields its fields by name
   */
  public static Optional<PasteForm> of(Map<String, List<String>> fields, long basedOn) {
    List<String> tables = fields.getOrDefault("table", List.of());
    List<String> names = fields.getOrDefault("table-name", List.of());
    if (tables.isEmpty() || tables.size() != names.size() || tables.size() > Book.MOST_SHEETS) {
      return Optional.empty();
    }
    List<Book.Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < tables.size(); i++) {
      if (!(CarriedTable.read(tables.get(i)) instanceof Reading.Good good)) {
        return Optional.empty();
      }
      sheets.add(new Book.Sheet(names.get(i), good.table()));
    }
    int at = Math.min(number(one(fields, "sheet")), sheets.size() - 1);
    boolean other = at != number(one(fields, "sheet-shown"));
    Map<String, String> words = new LinkedHashMap<>();
    WORDS.stream()
        .filter(fields::containsKey)
        .forEach(it -> words.put(it, one(fields, it).strip()));
    if (other) {
      // What was said of the columns and rows of one sheet says nothing of another.
      return Optional.of(
          new PasteForm(
              sheets,
              at,
              basedOn,
              Map.of(),
              Map.of(),
              Optional.empty(),
              Map.of(),
              Ticks.none(),
              words));
    }
    return Optional.of(
        new PasteForm(
            sheets,
            at,
            basedOn,
            meanings(fields, "m"),
            meanings(fields, "w"),
            fields.containsKey("header")
                ? Optional.of(one(fields, "header").strip())
                : Optional.empty(),
            cells(fields, sheets.get(at).table()),
            Ticks.of(
                one(fields, "chosen"),
                one(fields, "ticked"),
                fields.getOrDefault("take", List.of())),
            words));
  }

  private static String one(Map<String, List<String>> fields, String name) {
    return fields.getOrDefault(name, List.of()).stream().findFirst().orElse("");
  }

  private static int number(String text) {
    return NUMBER.matcher(text).matches() ? Integer.parseInt(text) : 0;
  }

  private static Map<Integer, Meaning> meanings(Map<String, List<String>> fields, String prefix) {
    Map<Integer, Meaning> meanings = new TreeMap<>();
    for (String name : fields.keySet()) {
      Matcher column = COLUMN.matcher(name.replaceFirst("^" + prefix, "m"));
      if (name.startsWith(prefix) && column.matches()) {
        Stream.of(Meaning.values())
            .filter(it -> it.name().equals(one(fields, name)))
            .findFirst()
            .ifPresent(it -> meanings.put(Integer.valueOf(column.group(1)), it));
      }
    }
    return meanings;
  }

  /** Cells whose text is another one than in the table. */
  private static Map<Cell, String> cells(Map<String, List<String>> fields, PastedTable table) {
    Map<Integer, PastedTable.Row> rows = new TreeMap<>();
    table.rows().forEach(it -> rows.put(it.number(), it));
    int width = table.width();
    Map<Cell, String> cells = new LinkedHashMap<>();
    for (String name : fields.keySet()) {
      Matcher it = CELL.matcher(name);
      if (it.matches()) {
        Cell cell = new Cell(Integer.parseInt(it.group(1)), Integer.parseInt(it.group(2)));
        PastedTable.Row row = rows.get(cell.row());
        String text = one(fields, name);
        if (row != null
            && cell.column() < width
            && !line(text).equals(line(row.text(cell.column())))) {
          cells.put(cell, text);
        }
      }
    }
    return cells;
  }

  /** As a field of one line holds it. */
  static String line(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  /** The table as it was read. */
  public PastedTable original() {
    return sheets.get(at).table();
  }

  /** The table with all corrections. */
  public PastedTable table() {
    PastedTable table = original();
    // Texts first, so that no row is gone before all that stands in it is known.
    for (boolean empty : new boolean[] {false, true}) {
      for (Map.Entry<Cell, String> it : cells.entrySet()) {
        Cell cell = it.getKey();
        if (it.getValue().isBlank() == empty && table.row(cell.row()).isPresent()) {
          table = table.with(cell.row(), cell.column(), it.getValue());
        }
      }
    }
    return table;
  }

  /** A field, or what stands in it before anyone typed. */
  public String word(String name, String usual) {
    return words.getOrDefault(name, usual);
  }
}
