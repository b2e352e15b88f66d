package org.loomwright.web.job;

import java.math.BigDecimal;
import java.util.Optional;
import org.loomwright.model.design.BandWords;
import org.loomwright.model.design.MeterNumber;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.ValueStanding;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.Taken;
import org.loomwright.papers.words.Figures;

/**
 * A value that the way of a job asks for.
 *
 * @param step step that asks for it
 * @param reading what is asked for
 * @param unit unit a number is typed in; empty for none
 * @param wanted where it has to lie, in words; empty where any value will do
 * @param value what was written down; empty when it was not taken yet
 * @param before name and value of the reading it is compared with
 * @param standing how it stands
 * @param settled whether it is noted, with a reason, that it is just so
 */
public record Value(
    Step step,
    Reading reading,
    String unit,
    String wanted,
    String value,
    Optional<Taken> before,
    Standing standing,
    boolean settled) {

  /** How a value stands. */
  public enum Standing {
    /** Not taken yet. */
    MISSING("not taken yet", "open"),
    /** Lies where it has to. */
    HOLDS("✓ holds", "holds"),
    /** Does not. */
    OUTSIDE("✕ outside", "fails"),
    /** Taken; any value will do. */
    TAKEN("✓ taken", "holds"),
    /** Has to be compared with a value that was not taken. */
    NO_BEFORE("✕ the value before the work is missing", "fails");

    private final String words;
    private final String css;

    Standing(String words, String css) {
      this.words = words;
      this.css = css;
    }

    /** Sign and word. */
    public String words() {
      return words;
    }

    /** Class. */
    public String css() {
      return css;
    }
  }

  static Value of(Job job, Step step, Reading reading) {
    Optional<Taken> taken = job.taken(reading.id());
    String value = taken.map(Taken::value).orElse("");
    Optional<Taken> before = reading.compareWith().flatMap(job::taken);
    return new Value(
        step,
        reading,
        reading.unit().orElse(""),
        BandWords.wanted(reading).orElse(""),
        value,
        before,
        standing(ValueStanding.of(reading, value, before.map(Taken::value))),
        isSettled(job, step, note(reading, value)));
  }

  private static Standing standing(ValueStanding standing) {
    return switch (standing) {
      case OPEN -> Standing.MISSING;
      case HOLDS -> Standing.HOLDS;
      case OUTSIDE -> Standing.OUTSIDE;
      case TAKEN -> Standing.TAKEN;
      case NO_BEFORE -> Standing.NO_BEFORE;
    };
  }

  private static boolean isSettled(Job job, Step step, String note) {
    return job.deviations().stream()
        .anyMatch(
            it ->
                it.step().filter(step.id()::equals).isPresent()
                    && it.was().equals(note)
                    && it.why().isPresent());
  }

  private static String note(Reading reading, String value) {
    return reading.name() + ": " + (value.isBlank() ? "not taken" : value);
  }

  /** What a note says of it that gives the reason why it may stay as it is. */
  public String note() {
    return note(reading, value);
  }

  /** Whether it stands against the sign-off. */
  public boolean isOpen() {
    return !settled && standing != Standing.HOLDS && standing != Standing.TAKEN;
  }

  /** What is read. */
  public String title() {
    return Figures.capital(reading.name());
  }

  /** What is read, and in which unit. */
  public String label() {
    return unit.isEmpty() ? title() : title() + ", in " + unit;
  }

  /**
   * How far it is from the value taken before, such as "3 mA more"; empty where that is no number.
   */
  public String difference() {
    Optional<MeterNumber> now = MeterNumber.kept(value);
    Optional<MeterNumber> then =
        before
            .flatMap(it -> MeterNumber.kept(it.value()))
            .flatMap(it -> now.flatMap(number -> it.in(number.unit())));
    if (now.isEmpty() || then.isEmpty()) {
      return "";
    }
    BigDecimal more = now.get().exact().subtract(then.get().exact());
    MeterNumber size = new MeterNumber(more.abs(), now.get().unit());
    return more.signum() == 0
        ? "no difference"
        : size.words() + (more.signum() > 0 ? " more" : " less");
  }

  /** Name of its field in forms. */
  public String field() {
    return "value." + reading.id();
  }
}
