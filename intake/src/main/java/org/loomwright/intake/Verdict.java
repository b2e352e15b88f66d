package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A row while it is judged. */
final class Verdict {
  final RowFacts row;
  final List<CellRemark> remarks = new ArrayList<>();
  final List<Difference> differences = new ArrayList<>();
  Preview.State state = Preview.State.PROBLEM;
  private final List<String> cells;
  private Optional<Outcome> outcome = Optional.empty();

  Verdict(RowFacts row, List<String> cells) {
    this.row = row;
    this.cells = cells;
  }

  void remark(String message) {
    remarks.add(new CellRemark(row.number(), -1, "", message, false));
  }

  void problem(String message) {
    remarks.add(new CellRemark(row.number(), -1, "", message, true));
  }

  boolean isProblem() {
    return remarks.stream().anyMatch(CellRemark::problem);
  }

  void differs(String what, Optional<String> onFile, String pasted) {
    differences.add(new Difference(what, onFile.orElse("none"), pasted));
  }

  void outcome(Preview.State how, Outcome what) {
    state = how;
    outcome = Optional.of(what);
  }

  Preview.Row row() {
    return new Preview.Row(row.number(), cells, state, outcome, differences, remarks);
  }

  Preview.Row problem(Optional<Outcome> kept) {
    return new Preview.Row(row.number(), cells, Preview.State.PROBLEM, kept, differences, remarks);
  }
}
