package org.loomwright.model.hand;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.BandWords;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.GuideRecord;
import org.loomwright.model.job.Taken;
import org.loomwright.model.json.Fault;
import org.loomwright.model.json.GuideRecordText;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.json.Paths;

/** Holds the record of a guide against the plan the guide was made from. */
public final class GuideRecordTaker {
  /** Before the name of a trait: the id of the value that was measured to answer for it. */
  public static final String MEASURED = "answer/";

  /** What is noted of work that was stopped and says at no step why. */
  static final String STOPPED = "The work was stopped before the end of the guide.";

  private final GuideRecord record;
  private final Plan plan;
  private final Guide guide;
  private final List<Fault> faults = new ArrayList<>();
  private final Map<String, String> answers = new LinkedHashMap<>();

  private GuideRecordTaker(GuideRecord record, Plan plan) {
    this.record = record;
    this.plan = plan;
    this.guide = plan.guide();
  }

  /**
   * Takes a record apart.
   *
   * @param plan plan of the kit
   * @param print fingerprint of its guide
   */
  public static Taking take(GuideRecord record, Plan plan, String print) {
    return new GuideRecordTaker(record, plan).take(print);
  }

  private Taking take(String print) {
    String kit = plan.kit().id();
    if (!record.kit().equals(kit)) {
      fault(
          "kit",
          record.kit(),
          "this record is of kit '" + record.kit() + "', not of '" + kit + "'");
    } else if (!record.vehicle().equals(plan.kit().vehicle())) {
      fault(
          "vehicle",
          record.vehicle(),
          "kit '" + kit + "' is for vehicle '" + plan.kit().vehicle() + "', not for this one");
    } else if (!record.guide().equals(print)) {
      fault(
          "guide",
          record.guide(),
          "the record was made with another guide of kit '"
              + kit
              + "' (revision "
              + record.revision()
              + record.release().map(it -> ", release " + it).orElse("")
              + "); the one here has the fingerprint "
              + print
              + ". Choose the release the record was made with");
    }
    if (!faults.isEmpty()) {
      // Against another guide everything else would look wrong too.
      return new Taking.Bad(faults);
    }
    record.answers().forEach(this::answer);
    List<Taken> taken = new ArrayList<>();
    record.measured().forEach((trait, number) -> measured(trait, number).ifPresent(taken::add));
    record.taken().forEach((reading, value) -> taken(reading, value).ifPresent(taken::add));
    record.cases().forEach(this::isCase);
    partNumber();
    List<Step> done = done();
    List<Deviation> deviations = deviations();
    return faults.isEmpty()
        ? new Taking.Good(
            new JobParts(
                record,
                answers,
                done.stream().map(Step::id).toList(),
                taken,
                deviations,
                done.stream().anyMatch(it -> it.kind() == StepKind.ACT)))
        : new Taking.Bad(faults);
  }

  private void answer(String trait, String value) {
    String path = Paths.key("answers", trait);
    Optional<Step> step = asking(trait, path);
    if (step.isEmpty()) {
      return;
    }
    List<String> values = possible(trait).map(Answer::value).distinct().toList();
    if (values.contains(value)) {
      answers.put(trait, value);
    } else {
      fault(
          path,
          value,
          "'"
              + value
              + "' is no answer to '"
              + step.get().title()
              + "'"
              + Nearest.hint(value, "the answers are", values));
    }
  }

  private Optional<Taken> measured(String trait, String number) {
    String path = Paths.key("measured", trait);
    Optional<Step> step = asking(trait, path);
    if (step.isEmpty()) {
      return Optional.empty();
    }
    Optional<Answer> answer =
        possible(trait).filter(it -> it.value().equals(record.answers().get(trait))).findFirst();
    if (answer.isEmpty()) {
      fault(
          path, number, "a number was measured for '" + trait + "', but there is no answer to it");
      return Optional.empty();
    }
    Optional<String> band = answer.get().band().map(Band::words);
    if (answer.get().band().filter(it -> !it.holds(Double.parseDouble(number))).isPresent()) {
      fault(
          path,
          number,
          "with "
              + number
              + " the answer to '"
              + step.get().title()
              + "' can't be '"
              + answer.get().words()
              + "', which is "
              + band.orElse(""));
    }
    String unit = answer.get().band().map(it -> " " + it.unit()).orElse("");
    return Optional.of(new Taken(MEASURED + trait, step.get().title(), number + unit, band));
  }

  private Optional<Taken> taken(String id, String value) {
    String path = Paths.key("taken", id);
    Optional<Reading> reading = reading(id);
    if (reading.isEmpty()) {
      fault(path, id, "the guide takes no value '" + id + "'" + hint(id, "it takes", readingIds()));
      return Optional.empty();
    }
    Reading it = reading.get();
    if (it.kind() == ReadingKind.NUMBER && !GuideRecordText.isNumber(value)) {
      fault(path, value, GuideRecordText.noNumber(value));
    } else if (it.kind() == ReadingKind.WORKS && !value.equals("yes") && !value.equals("no")) {
      fault(path, value, "'" + value + "' does not say whether it works; write 'yes' or 'no'");
    }
    String unit = it.unit().map(word -> " " + word).orElse("");
    return Optional.of(new Taken(it.id(), it.name(), value + unit, BandWords.wanted(it)));
  }

  /** The reading as this vehicle needs it, where the guide has one for each of several builds. */
  private Optional<Reading> reading(String id) {
    List<Reading> all =
        guide.steps().stream()
            .flatMap(it -> it.readings().stream())
            .filter(it -> it.id().equals(id))
            .toList();
    return all.stream()
        .filter(it -> answers.keySet().containsAll(it.when().traits()))
        .filter(it -> it.when().holds(answers))
        .findFirst()
        .or(() -> all.stream().findFirst());
  }

  private void isCase(String id) {
    Optional<Case> found = plan.cases().stream().filter(it -> it.id().equals(id)).findFirst();
    if (found.isEmpty()) {
      List<String> ids = plan.cases().stream().map(Case::id).toList();
      fault("cases", id, "the kit has no case '" + id + "'" + hint(id, "the cases are", ids));
    } else if (answers.keySet().containsAll(found.get().when().traits())
        && !found.get().when().holds(answers)) {
      fault(
          "cases",
          id,
          "by the answers this vehicle is not of case '" + id + "': " + found.get().words());
    }
  }

  private void partNumber() {
    List<String> ids = plan.design().partNumbers().stream().map(it -> it.id()).toList();
    record
        .partNumber()
        .filter(it -> !ids.contains(it))
        .ifPresent(
            it ->
                fault(
                    "partNumber",
                    it,
                    "the kit has no part number '" + it + "'" + hint(it, "they are", ids)));
  }

  private List<Step> done() {
    List<Step> done = new ArrayList<>();
    record.steps().forEach(number -> step("steps", number).ifPresent(done::add));
    return done;
  }

  private List<Deviation> deviations() {
    List<Deviation> deviations = new ArrayList<>();
    for (int i = 0; i < record.odd().size(); i++) {
      GuideRecord.Odd odd = record.odd().get(i);
      step(Paths.item("odd", i) + ".step", odd.step())
          .ifPresent(
              it ->
                  deviations.add(
                      new Deviation(
                          Optional.of(it.id()), odd.words(), Optional.empty(), Optional.empty())));
    }
    if (record.state() == GuideRecord.State.STOPPED && deviations.isEmpty()) {
      deviations.add(new Deviation(Optional.empty(), STOPPED, Optional.empty(), Optional.empty()));
    }
    return deviations;
  }

  private Optional<Step> step(String path, int number) {
    Optional<Step> step = guide.steps().stream().filter(it -> it.number() == number).findFirst();
    if (step.isEmpty()) {
      fault(
          path,
          "" + number,
          "the guide has no step "
              + number
              + "; its steps are numbered to "
              + guide.steps().stream().mapToInt(Step::number).max().orElse(0));
    }
    return step;
  }

  private Optional<Step> asking(String trait, String path) {
    Optional<Step> step =
        guide.steps().stream()
            .filter(it -> it.ask().filter(ask -> ask.trait().equals(trait)).isPresent())
            .findFirst();
    if (step.isEmpty()) {
      List<String> traits =
          guide.steps().stream()
              .flatMap(it -> it.ask().stream())
              .map(it -> it.trait())
              .distinct()
              .toList();
      fault(
          path,
          trait,
          "the guide does not ask for '" + trait + "'" + hint(trait, "it asks for", traits));
    }
    return step;
  }

  private Stream<Answer> possible(String trait) {
    return guide.steps().stream()
        .flatMap(it -> it.ask().stream())
        .filter(it -> it.trait().equals(trait))
        .flatMap(it -> it.answers().stream());
  }

  private List<String> readingIds() {
    return guide.steps().stream()
        .flatMap(it -> it.readings().stream())
        .map(Reading::id)
        .distinct()
        .toList();
  }

  private static String hint(String word, String heading, Collection<String> words) {
    return Nearest.hint(word, heading, words);
  }

  private void fault(String path, String value, String message) {
    faults.add(new Fault(path, value, message));
  }
}
