package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.TraceLine;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;

/** Gathers the checks of a kit under one marginal band. */
final class Checklist {
  private final double band;
  private final List<Check> checks = new ArrayList<>();

  Checklist(double band) {
    this.band = band;
  }

  List<Check> checks() {
    return checks;
  }

  void add(
      String id,
      String name,
      String subject,
      List<String> cases,
      double figure,
      double limit,
      boolean atMost,
      String unit,
      String source,
      List<TraceLine> trace) {
    List<TraceLine> whole = whole(trace, name, figure, limit, atMost, unit, source);
    checks.add(
        Check.of(id, name, subject, cases, figure, limit, atMost, unit, band, source, whole));
  }

  // Ratings come in steps: a rating equal to its limit keeps it fully.
  void addRating(
      String id,
      String name,
      String subject,
      List<String> cases,
      double figure,
      double limit,
      boolean atMost,
      String unit,
      String source,
      List<TraceLine> trace) {
    List<TraceLine> whole = whole(trace, name, figure, limit, atMost, unit, source);
    checks.add(Check.of(id, name, subject, cases, figure, limit, atMost, unit, 0, source, whole));
  }

  /** A check of the sums as it stands, near to its limit marginal. */
  void add(
      String id,
      String subject,
      List<String> cases,
      org.loomwright.physics.Check check,
      List<TraceLine> trace) {
    add(
        id,
        check.name(),
        subject,
        cases,
        check.value(),
        check.limit(),
        atMost(check),
        check.unit(),
        source(check),
        trace);
  }

  /** A check of the sums that compares ratings or sizes as they stand. */
  void addRating(
      String id,
      String subject,
      List<String> cases,
      org.loomwright.physics.Check check,
      List<TraceLine> trace) {
    addRating(
        id,
        check.name(),
        subject,
        cases,
        check.value(),
        check.limit(),
        atMost(check),
        check.unit(),
        source(check),
        trace);
  }

  private static boolean atMost(org.loomwright.physics.Check check) {
    return check.value() <= check.limit() == check.margin() >= 0;
  }

  private static String source(org.loomwright.physics.Check check) {
    return check.rule() + "; " + check.source();
  }

  // Nobody can say that it is safe, so it fails by name.
  void addOutside(String id, String subject, List<String> cases, SumException outsideTheSums) {
    String why = outsideTheSums.getMessage();
    add(
        id,
        "within what the sums can judge",
        subject,
        cases,
        0,
        1,
        false,
        "",
        why == null ? "" : why,
        List.of());
  }

  /** A trace with lines for figure and limit, where it has none of that value. */
  private static List<TraceLine> whole(
      List<TraceLine> trace,
      String name,
      double figure,
      double limit,
      boolean atMost,
      String unit,
      String source) {
    List<TraceLine> whole = new ArrayList<>(trace);
    if (lacks(trace, figure, unit)) {
      whole.add(new TraceLine(name, "given", figure, unit, "the plan"));
    }
    if (lacks(trace, limit, unit)) {
      int rule = source.indexOf("; ");
      whole.add(
          new TraceLine(
              (atMost ? "most allowed: " : "least allowed: ") + name,
              "given",
              limit,
              unit,
              rule < 0 ? source : source.substring(rule + 2)));
    }
    return whole.size() == trace.size() ? trace : whole;
  }

  private static boolean lacks(List<TraceLine> trace, double value, String unit) {
    return trace.stream().noneMatch(it -> it.value() == value && it.unit().equals(unit));
  }

  /** The trace of a sum as the design keeps it. */
  static List<TraceLine> lines(Trace trace) {
    return trace.lines().stream()
        .map(it -> new TraceLine(it.what(), it.formula(), it.value(), it.unit(), it.source()))
        .toList();
  }
}
