package org.loomwright.papers.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;

/**
 * One line of the printed list of checks: checks of one name with the same limit, figure and
 * source.
 *
 * @param number printed number, from 1
 * @param checks the checks it stands for, at least one
 */
public record CheckRow(int number, List<Check> checks) {
  private static final String LEAD = "lead ";

  public CheckRow {
    checks = List.copyOf(checks);
  }

  /** Sorts of checks, by the first part of their ids, that compare ratings, sizes and counts. */
  private static final Set<String> FITS =
      Set.of(
          "apart",
          "fit",
          "fuse limit",
          "least area",
          "network",
          "section for the fuse",
          "selectivity",
          "slot",
          "splice",
          "stud");

  /**
   * The list: failing, marginal, holding; of the holding ones those that compare ratings, sizes and
   * counts last; within each the smallest margin first.
   */
  public static List<CheckRow> of(Plan plan) {
    Map<List<Object>, List<Check>> alike = new LinkedHashMap<>();
    plan.checks().stream()
        .sorted(
            Comparator.comparing(Check::verdict)
                .reversed()
                .thenComparing(CheckRow::quiet)
                .thenComparingDouble(Check::margin)
                .thenComparing(Check::id))
        .forEach(
            it ->
                alike
                    .computeIfAbsent(
                        List.of(
                            it.name(),
                            it.source(),
                            it.verdict(),
                            Figures.figureBeside(it.figure(), it.limit(), it.unit()),
                            Figures.figureBeside(it.limit(), it.figure(), it.unit()),
                            it.cases()),
                        key -> new ArrayList<>())
                    .add(it));
    List<CheckRow> rows = new ArrayList<>();
    alike.values().forEach(checks -> rows.add(new CheckRow(rows.size() + 1, checks)));
    return List.copyOf(rows);
  }

  /** The check that stands for all of the line. */
  public Check first() {
    return checks.get(0);
  }

  /** Whether the line holds and compares ratings, sizes or counts that come in steps. */
  public boolean quiet() {
    return quiet(first());
  }

  private static boolean quiet(Check check) {
    int slash = check.id().indexOf('/');
    return check.verdict() == Verdict.HOLDS
        && FITS.contains(slash < 0 ? check.id() : check.id().substring(0, slash));
  }

  /** What the checks of the line are on, in words. */
  public String subjects(Names names) {
    List<String> subjects =
        checks.stream().map(it -> names.prose(names.brief(it.subject()))).distinct().toList();
    if (subjects.size() > 1 && subjects.stream().allMatch(it -> it.startsWith(LEAD))) {
      return "leads "
          + subjects.stream()
              .map(it -> it.substring(LEAD.length()))
              .collect(Collectors.joining(", "));
    }
    return String.join("; ", subjects);
  }
}
