package org.loomwright.papers.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.BandWords;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.ValueStanding;
import org.loomwright.model.hand.GuideRecordTaker;
import org.loomwright.model.job.Taken;

/**
 * A value of a job with what it had to be.
 *
 * @param reading id of the reading
 * @param name what was read
 * @param value what was read; empty when it was not taken
 * @param before the value it is compared with, taken at the start
 * @param wanted where it had to lie; empty where any value did
 * @param standing how it stands; empty for what the way as answered does not ask for
 */
record Value(
    String reading,
    String name,
    String value,
    Optional<String> before,
    String wanted,
    Optional<ValueStanding> standing) {

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
                Optional.empty()));
      }
    }
    return values;
  }

  private static Value of(Reading reading, Fitted fitted) {
    Optional<Taken> taken = fitted.job().taken(reading.id());
    String value = taken.map(Taken::value).orElse("");
    Optional<String> before = reading.compareWith().flatMap(fitted.job()::taken).map(Taken::value);
    return new Value(
        reading.id(),
        reading.name(),
        value,
        before,
        BandWords.wanted(reading).or(() -> taken.flatMap(Taken::wanted)).orElse(""),
        Optional.of(ValueStanding.of(reading, value, before)));
  }

  /** How it stands, in words. */
  String words() {
    if (standing.isEmpty()) {
      return reading.startsWith(GuideRecordTaker.MEASURED)
          ? "answered a question"
          : "not asked for by the answers";
    }
    return switch (standing.get()) {
      case OPEN -> "not taken";
      case HOLDS -> "holds";
      case OUTSIDE -> "OUTSIDE";
      case TAKEN -> "";
      case NO_BEFORE -> "NOT COMPARED: the value before is missing";
    };
  }
}
