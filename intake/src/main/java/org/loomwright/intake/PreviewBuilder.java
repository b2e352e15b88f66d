package org.loomwright.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/** Reads and judges all rows, and then the rows beside each other. */
final class PreviewBuilder {
  private final PastedTable table;
  private final ColumnGuess columns;
  private final Connector connector;
  private final Housing housing;
  private final Vehicle vehicle;
  private final Assumptions assumptions;
  private final FarEnd ends;
  private final List<PastedTable.Row> aside = new ArrayList<>();
  private final List<String> problems = new ArrayList<>();

  PreviewBuilder(
      PastedTable table,
      ColumnGuess columns,
      Connector connector,
      Housing housing,
      Vehicle vehicle,
      Assumptions assumptions) {
    this.table = table;
    this.columns = columns;
    this.connector = connector;
    this.housing = housing;
    this.vehicle = vehicle;
    this.assumptions = assumptions;
    this.ends = new FarEnd(vehicle);
  }

  Preview build() {
    if (columns.column(Meaning.CAVITY).isEmpty()) {
      problems.add("no column is the cavity number; say which one it is");
    }
    WholeTable.problems(vehicle, assumptions, ends).forEach(problems::add);
    List<PastedTable.Row> body = body();
    RowReader.Setting setting =
        new RowReader.Setting(
            columns, units(body), connector, housing, vehicle, ends, assumptions.housings());
    List<RowFacts> facts = body.stream().map(row -> RowReader.read(setting, row)).toList();
    Map<String, List<Integer>> rowsOf = new HashMap<>();
    facts.forEach(
        it ->
            it.cavity()
                .ifPresent(
                    cavity ->
                        rowsOf.computeIfAbsent(cavity, key -> new ArrayList<>()).add(it.number())));
    RowJudge judge = new RowJudge(connector, housing, vehicle, assumptions);
    List<Preview.Row> rows = new ArrayList<>();
    for (int i = 0; i < body.size(); i++) {
      RowFacts row = facts.get(i);
      List<CellRemark> more = new ArrayList<>(ofTable(row.number()));
      twice(row, rowsOf).ifPresent(more::add);
      rows.add(judge.judge(row, body.get(i).cells(), more, problems.isEmpty()));
    }
    return new Preview(vehicle, connector.id(), together(rows, facts, rowsOf), aside, problems);
  }

  /** The rows below the headers; a page of a long table may repeat them. */
  private List<PastedTable.Row> body() {
    Optional<PastedTable.Row> header = columns.headerRow().flatMap(table::row);
    List<PastedTable.Row> body = new ArrayList<>();
    for (PastedTable.Row row : table.rows()) {
      boolean above = header.isPresent() && row.number() <= header.get().number();
      boolean again = header.isPresent() && row.cells().equals(header.get().cells());
      (above || again ? aside : body).add(row);
    }
    return body;
  }

  private List<SizeUnit> units(List<PastedTable.Row> body) {
    return columns.columns().stream()
        .map(
            column ->
                SizeUnit.of(
                    column.header(), body.stream().map(row -> row.text(column.column())).toList()))
        .toList();
  }

  private List<CellRemark> ofTable(int row) {
    return table.remarks().stream().filter(it -> it.row() == row).toList();
  }

  private Optional<CellRemark> twice(RowFacts row, Map<String, List<Integer>> rowsOf) {
    List<Integer> all =
        row.cavity().map(it -> rowsOf.getOrDefault(it, List.of())).orElse(List.of());
    if (all.size() < 2) {
      return Optional.empty();
    }
    String others =
        Nearest.list(
            all.stream().filter(it -> it != row.number()).limit(99).map(String::valueOf).toList());
    return Optional.of(
        new CellRemark(
            row.number(),
            columns.column(Meaning.CAVITY).map(ColumnGuess.Column::column).orElse(-1),
            row.cavity().orElse(""),
            "cavity "
                + row.cavity().orElse("")
                + " stands in row "
                + others
                + " too; a cavity has one row: correct one of the numbers, or join the rows",
            true));
  }

  /** Finds rows that would undo or double each other. */
  private List<Preview.Row> together(
      List<Preview.Row> rows, List<RowFacts> facts, Map<String, List<Integer>> rowsOf) {
    Map<String, Integer> changed = new HashMap<>();
    Map<Set<Spot>, Integer> added = new LinkedHashMap<>();
    List<Preview.Row> judged = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Preview.Row row = rows.get(i);
      RowFacts now = facts.get(i);
      boolean sound = row.state() == Preview.State.NEW || row.state() == Preview.State.CHANGES;
      Optional<String> problem = Optional.empty();
      if (sound && row.outcome().orElseThrow() instanceof Outcome.OfCircuit it) {
        if (!it.isNew()) {
          Integer first = changed.putIfAbsent(it.circuit().id(), row.number());
          problem =
              Optional.ofNullable(first)
                  .map(
                      n ->
                          "row "
                              + n
                              + " changes the same circuit, '"
                              + it.circuit().name()
                              + "'; accept that row first, then paste again")
                  .or(() -> ownRow(it.circuit(), it.isNew(), now, rowsOf, added));
        } else {
          Integer first = added.putIfAbsent(ends(it.circuit()), row.number());
          problem =
              first != null
                  ? Optional.of(
                      "row "
                          + first
                          + " is the same wire, seen from its other end; leave one of them out")
                  : ownRow(it.circuit(), it.isNew(), now, rowsOf, added);
        }
      }
      judged.add(problem.map(message -> refused(row, message, now)).orElse(row));
    }
    return judged;
  }

  private Preview.Row refused(Preview.Row row, String message, RowFacts facts) {
    List<CellRemark> remarks = new ArrayList<>(row.remarks());
    remarks.add(new CellRemark(row.number(), -1, "", message, true));
    return new Preview.Row(
        row.number(),
        row.cells(),
        Preview.State.PROBLEM,
        RowJudge.kept(connector, facts),
        row.differences(),
        remarks);
  }

  /** A wire to a cavity of the same connector that has a row of its own says two things of it. */
  private Optional<String> ownRow(
      Circuit circuit,
      boolean isNew,
      RowFacts row,
      Map<String, List<Integer>> rowsOf,
      Map<Set<Spot>, Integer> added) {
    Set<Spot> already =
        vehicle
            .circuit(circuit.id())
            .filter(on -> !isNew)
            .map(PreviewBuilder::ends)
            .orElse(Set.of());
    for (Spot spot : ends(circuit)) {
      boolean far =
          spot instanceof Spot.OfCavity at
              && at.connector().equals(connector.id())
              && !Optional.of(at.cavity()).equals(row.cavity())
              && !already.contains(spot)
              && rowsOf.containsKey(at.cavity());
      if (far) {
        added.remove(ends(circuit));
        return Optional.of(
            "its other end, '"
                + spot.text()
                + "', has a row of its own; give a wire between two cavities in one row and clear"
                + " the other");
      }
    }
    return Optional.empty();
  }

  private static Set<Spot> ends(Circuit circuit) {
    Set<Spot> ends = new HashSet<>(circuit.to());
    ends.add(circuit.from());
    return ends;
  }
}
