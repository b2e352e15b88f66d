package org.loomwright.web.paste;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.intake.Accepted;
import org.loomwright.intake.Assumptions;
import org.loomwright.intake.ColumnGuess;
import org.loomwright.intake.Meaning;
import org.loomwright.intake.PastedTable;
import org.loomwright.intake.Preview;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.ConditionException;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.evidence.How;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A pasted table beside what is on file, and what would come of it.
 *
 * @param form what was said
 * @param columns what the columns mean
 * @param preview every row judged
 * @param taken rows that would be taken
 * @param accepted what would come of them
 * @param wrong what is wrong with fields of the form, by their name
 */
public record PasteJudge(
    PasteForm form,
    ColumnGuess columns,
    Preview preview,
    List<Integer> taken,
    Accepted accepted,
    Map<String, String> wrong) {
  public PasteJudge {
    taken = List.copyOf(taken);
    wrong = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(wrong));
  }

  /**
   * Where a table is pasted.
   *
   * @param vehicle vehicle as of the revision the form is based on
   * @param connector its connector
   * @param housing housing of that
   * @param housings housings that rows may name as ends
   */
  public record Target(
      Vehicle vehicle, Connector connector, Housing housing, List<Housing> housings) {
    public Target {
      housings = List.copyOf(housings);
    }
  }

  /**
   * Judges a form.
   *
   * @param who name the person signed with last; empty for none
   * @param today the day it is
   */
  public static PasteJudge of(PasteForm form, Target target, String who, LocalDate today) {
    Map<String, String> wrong = new LinkedHashMap<>();
    PastedTable table = form.table();
    ColumnGuess columns = columns(form, target, wrong);
    Assumptions assumptions = assumptions(form, target, wrong);
    Evidence evidence = evidence(form, who, today, wrong);
    Preview preview =
        Preview.of(
            table, columns, target.connector(), target.housing(), target.vehicle(), assumptions);
    List<Integer> taken = form.ticks().taken(preview);
    return new PasteJudge(
        form, columns, preview, taken, Accepted.of(preview, taken, evidence), wrong);
  }

  private static ColumnGuess columns(PasteForm form, Target target, Map<String, String> wrong) {
    PastedTable original = form.original();
    ColumnGuess guess = ColumnGuess.of(original, target.housing(), target.vehicle());
    if (form.header().isPresent()) {
      String typed = form.header().get();
      Optional<Integer> row =
          typed.matches("\\d{1,8}") ? Optional.of(Integer.valueOf(typed)) : Optional.empty();
      if (!typed.isEmpty() && row.flatMap(original::row).isEmpty()) {
        wrong.put(
            "header",
            "the table has no row '" + typed + "'; write its number, or nothing for no headers");
      } else if (!row.equals(guess.headerRow())) {
        guess = guess.withHeader(original, row);
      }
    }
    // First what was said before, then what was changed now, so that the newest word counts.
    for (boolean isNew : new boolean[] {false, true}) {
      for (boolean repeatable : new boolean[] {false, true}) {
        for (ColumnGuess.Column column : guess.columns()) {
          Meaning said = form.meanings().getOrDefault(column.column(), column.meaning());
          boolean changed = said != form.shown().getOrDefault(column.column(), said);
          if (changed == isNew
              && said.isRepeatable() == repeatable
              && said != guess.columns().get(column.column()).meaning()) {
            guess = guess.with(column.column(), said);
          }
        }
      }
    }
    return guess;
  }

  private static Assumptions assumptions(PasteForm form, Target target, Map<String, String> wrong) {
    Condition present = Condition.always();
    String typed = form.word(PasteForm.PRESENT, "always");
    try {
      present = Condition.of(typed.isEmpty() ? "always" : typed);
      if (present.isUnknown()) {
        present = Condition.always();
        wrong.put(
            PasteForm.PRESENT,
            "write 'always', 'never' or a condition; nothing could ask for 'unknown'");
      }
    } catch (ConditionException e) {
      wrong.put(PasteForm.PRESENT, String.valueOf(e.getMessage()));
    }
    Optional<Spot> far = Optional.empty();
    String end = form.word(PasteForm.FAR, "");
    if (!end.isEmpty()) {
      try {
        far = Optional.of(Spot.of(end));
      } catch (IllegalArgumentException e) {
        wrong.put(PasteForm.FAR, String.valueOf(e.getMessage()));
      }
    }
    return new Assumptions(present, far, target.housings());
  }

  private static Evidence evidence(
      PasteForm form, String who, LocalDate today, Map<String, String> wrong) {
    How how = form.word(PasteForm.HOW, "drawing").equals("told") ? How.TOLD : How.DRAWING;
    String by = form.word(PasteForm.BY, "").isEmpty() ? who : form.word(PasteForm.BY, "");
    String when = form.word(PasteForm.WHEN, today.toString());
    try {
      if (!when.isEmpty() && LocalDate.parse(when).isAfter(today)) {
        wrong.put(PasteForm.WHEN, "this day is still to come; write the day it was found");
      }
    } catch (DateTimeException e) {
      wrong.put(PasteForm.WHEN, "'" + when + "' is no day; write e.g. " + today);
    }
    return new Evidence(
        how,
        some(wrong.containsKey(PasteForm.WHEN) ? "" : when),
        some(by),
        some(form.word(PasteForm.NOTE, "")),
        Optional.empty());
  }

  private static Optional<String> some(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }
}
