package org.loomwright.web.paste;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.intake.Accepted;
import org.loomwright.intake.ColumnGuess;
import org.loomwright.intake.Difference;
import org.loomwright.intake.Meaning;
import org.loomwright.intake.PastedTable;
import org.loomwright.intake.Preview;

/**
 * What the page of a preview shows.
 *
 * @param judged what was said and what comes of it
 * @param columns columns of the table
 * @param rows all rows of the table, those passed over too
 * @param counts how many rows are what, e.g. "9 new, 2 change, 1 has a problem"
 */
public record PasteView(PasteJudge judged, List<Column> columns, List<Row> rows, String counts) {
  public PasteView {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * A column.
   *
   * @param letter its letter
   * @param at its number from 0
   * @param header its header; empty for none
   * @param meaning what it says
   * @param sure how sure that is and why
   */
  public record Column(String letter, int at, String header, Meaning meaning, String sure) {}

  /** How a row stands, for people who see colours and for those who don't. */
  public enum State {
    NEW("+", "new"),
    SAME("=", "same as on file"),
    CHANGES("≠", "changes"),
    PROBLEM("!", "problem"),
    ASIDE("–", "passed over");

    private final String sign;
    private final String words;

    State(String sign, String words) {
      this.sign = sign;
      this.words = words;
    }

    /** A sign. */
    public String sign() {
      return sign;
    }

    /** The same in words. */
    public String words() {
      return words;
    }

    /** Class of the style sheet. */
    public String css() {
      return "is-" + name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /**
   * A row.
   *
   * @param number its number in the table
   * @param state how it stands to what is on file
   * @param canTake whether there is something to take
   * @param taken whether it is taken
   * @param becomes what there is to take, or why there is nothing
   * @param differences what is on file otherwise
   * @param remarks what is said of the row as a whole
   * @param cells its cells
   */
  public record Row(
      int number,
      State state,
      boolean canTake,
      boolean taken,
      String becomes,
      List<Difference> differences,
      List<PasteCells.Remark> remarks,
      List<PasteCells.Shown> cells) {
    public Row {
      differences = List.copyOf(differences);
      remarks = List.copyOf(remarks);
      cells = List.copyOf(cells);
    }
  }

  /** Of what comes of a form. */
  public static PasteView of(PasteJudge judged) {
    Map<Integer, Preview.Row> previewed = new LinkedHashMap<>();
    judged.preview().rows().forEach(it -> previewed.put(it.number(), it));
    PasteCells cells = new PasteCells(judged);
    Set<Integer> there =
        judged.form().table().rows().stream()
            .map(PastedTable.Row::number)
            .collect(Collectors.toSet());
    List<Row> rows = new ArrayList<>();
    for (PastedTable.Row row : judged.form().original().rows()) {
      Preview.Row seen = previewed.get(row.number());
      rows.add(seen == null ? aside(judged, row, cells, there) : row(judged, seen, row, cells));
    }
    return new PasteView(
        judged,
        judged.columns().columns().stream().map(PasteView::column).toList(),
        rows,
        counts(rows));
  }

  private static Row aside(
      PasteJudge judged, PastedTable.Row row, PasteCells cells, Set<Integer> there) {
    boolean cleared = !there.contains(row.number());
    boolean headers = judged.columns().headerRow().equals(java.util.Optional.of(row.number()));
    return new Row(
        row.number(),
        State.ASIDE,
        false,
        false,
        cleared
            ? "You cleared it."
            : headers ? "The headers." : "Above the headers, or the headers again.",
        List.of(),
        List.of(),
        cells.of(row, List.of()));
  }

  private static Row row(
      PasteJudge judged, Preview.Row seen, PastedTable.Row row, PasteCells cells) {
    State state = State.valueOf(seen.state().name());
    boolean canTake = seen.outcome().isPresent();
    String becomes =
        switch (state) {
          case PROBLEM ->
              canTake
                  ? "If taken, its texts are kept as a note of the cavity."
                  : "Can't be taken until it is put right.";
          case SAME -> "Nothing to do.";
          default -> "";
        };
    return new Row(
        seen.number(),
        state,
        canTake,
        judged.taken().contains(seen.number()),
        becomes,
        seen.differences(),
        PasteCells.remarks(seen, -1),
        cells.of(row, seen.remarks()));
  }

  private static Column column(ColumnGuess.Column it) {
    String sure =
        it.confidence() >= 1
            ? ""
            : (it.confidence() >= 0.8 ? "Sure" : it.confidence() >= 0.5 ? "Fairly sure" : "A guess")
                + " ("
                + Math.round(100 * it.confidence())
                + " %): ";
    return new Column(
        PastedTable.letters(it.column()),
        it.column(),
        it.header(),
        it.meaning(),
        sure.isEmpty() ? capital(it.reason()) : sure + it.reason());
  }

  private static String capital(String words) {
    return words.isEmpty()
        ? ""
        : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }

  private static String counts(List<Row> rows) {
    return Stream.of(State.values())
        .map(state -> count(state, rows.stream().filter(it -> it.state() == state).count()))
        .filter(it -> !it.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static String count(State state, long n) {
    if (n == 0) {
      return "";
    }
    return n
        + switch (state) {
          case NEW -> " new";
          case SAME -> n == 1 ? " is on file already" : " are on file already";
          case CHANGES -> n == 1 ? " changes what is on file" : " change what is on file";
          case PROBLEM -> n == 1 ? " has a problem" : " have a problem";
          case ASIDE -> " passed over";
        };
  }

  /** What accepting does, in the order of the rows. */
  public List<Accepted.Change> changes() {
    return judged.accepted().changes();
  }

  /** Rows that are ticked, for a field of the form. */
  public String ticked() {
    return judged.taken().stream().map(String::valueOf).collect(Collectors.joining(" "));
  }

  /** Number of the row with the headers as in its field. */
  public String header() {
    return judged
        .form()
        .header()
        .filter(it -> judged.wrong().containsKey("header"))
        .orElseGet(() -> judged.columns().headerRow().map(String::valueOf).orElse(""));
  }

  /** What is wrong with a field; empty for nothing. */
  public String wrong(String field) {
    return judged.wrong().getOrDefault(field, "");
  }
}
