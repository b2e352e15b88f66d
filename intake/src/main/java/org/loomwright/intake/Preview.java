package org.loomwright.intake;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Vehicle;

/**
 * What a pasted table would become, row by row, before anything is changed.
 *
 * @param vehicle the vehicle as on file
 * @param connector id of the connector whose cavities the table lists
 * @param rows rows of the table below its headers
 * @param aside rows that are no row of a cavity: titles and headers
 * @param problems what concerns the table as a whole
 */
public record Preview(
    Vehicle vehicle,
    String connector,
    List<Row> rows,
    List<PastedTable.Row> aside,
    List<String> problems) {
  public Preview {
    rows = List.copyOf(rows);
    aside = List.copyOf(aside);
    problems = List.copyOf(problems);
  }

  /** How a row stands to what is on file. */
  public enum State {
    /** Nothing of it is on file. */
    NEW,
    /** All of it is on file. */
    SAME,
    /** Something else, or less, is on file. */
    CHANGES,
    /** Something about it is wrong; where it has an outcome, that keeps its texts as a note. */
    PROBLEM
  }

  /**
   * One row.
   *
   * @param number number in the table
   * @param cells its texts
   * @param state how it stands to what is on file
   * @param outcome what it becomes when accepted; empty when there is nothing to do or nowhere to
   *     put it
   * @param differences what is on file otherwise
   * @param remarks what is wrong or was taken for granted, each at its cell
   */
  public record Row(
      int number,
      List<String> cells,
      State state,
      Optional<Outcome> outcome,
      List<Difference> differences,
      List<CellRemark> remarks) {
    public Row {
      cells = List.copyOf(cells);
      differences = List.copyOf(differences);
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * Judges a table under the usual assumptions.
   *
   * @param table the table
   * @param columns what its columns mean
   * @param connector connector whose cavities it lists
   * @param housing housing of that connector
   * @param vehicle vehicle with that connector
   * @throws IllegalArgumentException when the vehicle has no such connector, the housing is not
   *     that of the connector, or the columns are not those of the table
   */
  public static Preview of(
      PastedTable table,
      ColumnGuess columns,
      Connector connector,
      Housing housing,
      Vehicle vehicle) {
    return of(table, columns, connector, housing, vehicle, Assumptions.usual());
  }

  /** The same with what a person said beside the table. */
  public static Preview of(
      PastedTable table,
      ColumnGuess columns,
      Connector connector,
      Housing housing,
      Vehicle vehicle,
      Assumptions assumptions) {
    if (!vehicle.connectors().contains(connector)) {
      throw new IllegalArgumentException(
          "vehicle '" + vehicle.id() + "' has no such connector '" + connector.id() + "'");
    }
    if (!housing.id().equals(connector.housing())) {
      throw new IllegalArgumentException(
          "connector '"
              + connector.id()
              + "' has the housing '"
              + connector.housing()
              + "', not '"
              + housing.id()
              + "'");
    }
    if (columns.columns().size() < table.width()) {
      throw new IllegalArgumentException(
          "the table has "
              + table.width()
              + " columns; meanings are given for "
              + columns.columns().size());
    }
    return new PreviewBuilder(table, columns, connector, housing, vehicle, assumptions).build();
  }

  /** Rows that are taken unless a person says otherwise: those that are new or change something. */
  public List<Integer> acceptable() {
    return rows.stream()
        .filter(it -> it.state() == State.NEW || it.state() == State.CHANGES)
        .map(Row::number)
        .toList();
  }
}
