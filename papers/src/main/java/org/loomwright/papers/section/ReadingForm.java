package org.loomwright.papers.section;

import java.util.Optional;
import org.loomwright.model.design.BandWords;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.design.Step;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;

/**
 * The form in which a step's values are written down: a ruled blank for each, what it has to be,
 * and what to do when it is not.
 *
 * @param guide the guide
 */
record ReadingForm(Guide guide) {
  private static final double NUMBER_MM = 22;
  private static final double WORDS_MM = 44;

  /** Writes the form of a step. */
  void write(Step step, Html html) {
    html.open("table", "readings");
    String before = "";
    for (Reading reading : step.readings()) {
      html.open("tr", "").open("td", "what").words(Figures.capital(reading.name()));
      if (!reading.words().isEmpty()) {
        html.line("p", "only", "Only " + reading.words() + ".");
      }
      if (reading.kind() == ReadingKind.WORDS) {
        html.open("p", "lines").blank("", WORDS_MM).close("p");
        html.open("p", "lines").blank("", WORDS_MM).close("p");
      }
      html.close("td").open("td", "blanks");
      blanks(reading, html);
      html.close("td").open("td", "right");
      right(reading, !reading.outside().equals(before), html);
      before = reading.outside();
      html.close("td").close("tr");
    }
    html.close("table");
  }

  private static void blanks(Reading reading, Html html) {
    if (reading.kind() == ReadingKind.WORKS) {
      html.tickBox().words(" yes\u2003").tickBox().words(" no");
    } else if (reading.kind() == ReadingKind.NUMBER) {
      html.blank("", NUMBER_MM).words(reading.unit().orElse(""));
    }
  }

  private void right(Reading reading, boolean isNew, Html html) {
    boolean judged = reading.kind() == ReadingKind.NUMBER && BandWords.wanted(reading).isPresent();
    if (judged) {
      html.line("p", "band", Figures.capital(BandWords.wanted(reading).orElseThrow()));
    }
    reading
        .compareWith()
        .flatMap(this::takenAt)
        .ifPresent(number -> html.line("p", "band", "Compare with step\u00A0" + number + "."));
    if (!reading.outside().isEmpty()) {
      String or = reading.kind() == ReadingKind.WORKS ? "If not: " : judged ? "Outside: " : "";
      html.line("p", "", or + (isNew ? reading.outside() : "as above."));
    }
    if (!reading.source().isEmpty()) {
      html.line("p", "from", Figures.capital(reading.source()) + ".");
    }
  }

  private Optional<Integer> takenAt(String id) {
    return guide.steps().stream()
        .filter(step -> step.readings().stream().anyMatch(it -> it.id().equals(id)))
        .map(Step::number)
        .findFirst();
  }
}
