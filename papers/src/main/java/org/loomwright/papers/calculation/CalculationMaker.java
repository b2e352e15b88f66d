package org.loomwright.papers.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Lead;
import org.loomwright.papers.words.CheckRow;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;
import org.loomwright.papers.words.NoteList;

/** Orders the checks of a plan by what they are on, leads first, and unfolds each. */
public final class CalculationMaker {
  private static final String LEAD = "lead ";

  private CalculationMaker() {}

  /** The calculation report of a plan. */
  public static Calculation of(Names names) {
    Map<String, List<Check>> bySubject = new LinkedHashMap<>();
    for (Lead lead : names.plan().design().leads()) {
      bySubject.put(LEAD + lead.id(), new ArrayList<>());
    }
    for (Check check : names.plan().checks()) {
      bySubject.computeIfAbsent(check.subject(), it -> new ArrayList<>()).add(check);
    }
    Map<Check, Integer> numbers = numbers(names);
    NoteList sources = new NoteList();
    List<Calculation.Subject> subjects = new ArrayList<>();
    bySubject.forEach(
        (subject, checks) -> {
          if (!checks.isEmpty()) {
            SubjectMaker maker = new SubjectMaker(checks, numbers, sources);
            subjects.add(maker.make(lead(names, subject), title(names, subject)));
          }
        });
    return new Calculation(subjects, sources.lines());
  }

  private static Map<Check, Integer> numbers(Names names) {
    Map<Check, Integer> numbers = new LinkedHashMap<>();
    for (CheckRow row : CheckRow.of(names.plan())) {
      row.checks().forEach(it -> numbers.put(it, row.number()));
    }
    return numbers;
  }

  private static String lead(Names names, String subject) {
    return names.plan().design().leads().stream()
        .map(Lead::id)
        .filter(it -> subject.equals(LEAD + it))
        .findFirst()
        .orElse("");
  }

  private static String title(Names names, String subject) {
    return Figures.capital(names.prose(subject));
  }
}
