package org.loomwright.papers.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Plan;

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

  /** The list: failing, marginal, holding; within each the smallest margin first. */
  public static List<CheckRow> of(Plan plan) {
    Map<List<Object>, List<Check>> alike = new LinkedHashMap<>();
    plan.checks().stream()
        .sorted(
            Comparator.comparing(Check::verdict)
                .reversed()
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
