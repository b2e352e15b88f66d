package org.loomwright.papers.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.BandWords;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.Taken;

/**
 * A value of a job with what it had to be.
 *
 * @param reading id of the reading
 * @param name what was read
 * @param value what was read; empty when it was not taken
 * @param before the value it is compared with, taken at the start
 * @param wanted where it had to lie; empty where any value did
 * @param standing whether it does
 */
record Value(
    String reading,
    String name,
    String value,
    Optional<String> before,
    String wanted,
    Standing standing) {

  /** How a value stands against what is wanted. */
  enum Standing {
    HOLDS("holds"),
    OUTSIDE("OUTSIDE"),
    OPEN("not taken"),
    FREE("");

    private final String words;

    Standing(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /**
   * The values of a job in the order of its guide, those not taken too; last what the guide does
   * not know, such as numbers that answered a question.
   */
  static List<Value> of(Fitted fitted) {
    List<Value> values = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (Step step : fitted.way()) {
      for (Reading reading : step.readings()) {
        if (fitted.walk().holds(reading.when()) && seen.add(reading.id())) {
          values.add(of(reading, fitted));
        }
      }
    }
    for (Taken it : fitted.job().taken()) {
      if (seen.add(it.reading())) {
        values.add(
            new Value(
                it.reading(),
                it.name(),
                it.value(),
                Optional.empty(),
                it.wanted().orElse(""),
                Standing.FREE));
      }
    }
    return values;
  }

  private static Value of(Reading reading, Fitted fitted) {
    Optional<Taken> taken = fitted.job().taken(reading.id());
    return new Value(
        reading.id(),
        reading.name(),
        taken.map(Taken::value).orElse(""),
        reading.compareWith().flatMap(fitted.job()::taken).map(Taken::value),
        BandWords.wanted(reading).or(() -> taken.flatMap(Taken::wanted)).orElse(""),
        taken.map(it -> standing(reading, it.value())).orElse(Standing.OPEN));
  }

  private static Standing standing(Reading reading, String value) {
    if (reading.kind() == ReadingKind.WORKS) {
      return value.equals("yes") ? Standing.HOLDS : Standing.OUTSIDE;
    }
    if (reading.kind() == ReadingKind.WORDS || reading.band().isEmpty()) {
      return Standing.FREE;
    }
    try {
      double number = Double.parseDouble(value.split(" ", 2)[0]);
      return reading.band().get().holds(number) ? Standing.HOLDS : Standing.OUTSIDE;
    } catch (NumberFormatException e) {
      return Standing.OUTSIDE;
    }
  }
}
