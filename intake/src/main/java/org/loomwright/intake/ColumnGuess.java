package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Vehicle;

/**
 * What the columns of a pasted table mean, guessed or as a person said.
 *
 * @param headerRow number of the row with the headers; empty when there is none
 * @param columns one for each column of the table, from A on
 */
public record ColumnGuess(Optional<Integer> headerRow, List<Column> columns) {
  public ColumnGuess {
    columns = List.copyOf(columns);
  }

  /**
   * One column.
   *
   * @param column column from 0
   * @param header its header, empty when it has none
   * @param meaning what it says
   * @param confidence how sure that is, 0 to 1
   * @param reason why, in words
   */
  public record Column(
      int column, String header, Meaning meaning, double confidence, String reason) {}

  /** Guesses by the words of a header row and by what the cells can be read as. */
  public static ColumnGuess of(PastedTable table, Housing housing, Vehicle vehicle) {
    return ColumnGuesser.guess(table, new ColumnContents(housing, vehicle), housing);
  }

  /** The first column with this meaning. */
  public Optional<Column> column(Meaning meaning) {
    return columns.stream().filter(it -> it.meaning() == meaning).findFirst();
  }

  /**
   * Corrected by a person. Where a meaning can stand only once, the column that had it becomes a
   * note.
   *
   * @param column column from 0
   * @throws IllegalArgumentException when there is no such column
   */
  public ColumnGuess with(int column, Meaning meaning) {
    if (column < 0 || column >= columns.size()) {
      throw new IllegalArgumentException(
          "there is no column " + column + "; the table has " + columns.size());
    }
    List<Column> corrected = new ArrayList<>();
    for (Column it : columns) {
      if (it.column() == column) {
        corrected.add(new Column(column, it.header(), meaning, 1, "you said so"));
      } else if (it.meaning() == meaning && !meaning.isRepeatable()) {
        corrected.add(
            new Column(
                it.column(),
                it.header(),
                Meaning.NOTE,
                1,
                "you said that another column is the " + meaning.words()));
      } else {
        corrected.add(it);
      }
    }
    return new ColumnGuess(headerRow, corrected);
  }

  /**
   * Corrected by a person: another row holds the headers, or none does. The meanings stay.
   *
   * @param row number of a row
   */
  public ColumnGuess withHeader(PastedTable table, Optional<Integer> row) {
    Optional<PastedTable.Row> header = row.flatMap(table::row);
    return new ColumnGuess(
        header.map(PastedTable.Row::number),
        columns.stream()
            .map(
                it ->
                    new Column(
                        it.column(),
                        header.map(found -> found.text(it.column())).orElse(""),
                        it.meaning(),
                        it.confidence(),
                        it.reason()))
            .toList());
  }
}
