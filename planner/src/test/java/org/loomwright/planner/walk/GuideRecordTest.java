package org.loomwright.planner.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.hand.GuideRecordMaker;
import org.loomwright.model.hand.GuideRecordTaker;
import org.loomwright.model.hand.JobParts;
import org.loomwright.model.hand.Taking;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.GuideRecord;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.Taken;
import org.loomwright.model.json.Fault;
import org.loomwright.model.json.GuideRecordText;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.Walker;
import org.loomwright.planner.plan.With;

/** What a guide in the hand wrote down, held against the guide it was made from. */
class GuideRecordTest {
  private static final String PRINT = "0123456789abcdef";
  private static final Instant BEGUN = Instant.parse("2026-11-26T09:12:00Z");
  private static final Instant ENDED = Instant.parse("2026-11-26T13:40:00Z");
  private static final Vehicle VAN = Demo.order(Demo.COMFORT).vehicle();
  private static final List<Map<String, String>> BUILDS = List.copyOf(AllBuilds.of(VAN));
  private static final Plan PLAN = withReadings(Demo.plan(Demo.COMFORT));

  /** The demo's plan with a value of each kind to be taken at its first measuring steps. */
  private static Plan withReadings(Plan plan) {
    List<Reading> readings =
        List.of(
            reading(
                "t/rest", ReadingKind.NUMBER, new Band(Optional.of(12.4), Optional.empty(), "V")),
            reading("t/works", ReadingKind.WORKS, null),
            reading("t/faults", ReadingKind.WORDS, null));
    List<Step> steps =
        plan.guide().steps().stream()
            .map(it -> it.id().equals("measure/rest") ? with(it, readings) : it)
            .toList();
    Guide guide = plan.guide();
    return new Plan(
        plan.kit(),
        plan.builds(),
        plan.gap(),
        plan.fit(),
        plan.ways(),
        plan.cases(),
        plan.unserved(),
        plan.design(),
        plan.harness(),
        plan.checks(),
        plan.protections(),
        plan.networks(),
        new Guide(
            guide.start(),
            steps,
            guide.edges(),
            guide.ends(),
            guide.tools(),
            guide.expectedMinutes(),
            guide.expectedQuestions()),
        plan.proof(),
        plan.notes());
  }

  private static Reading reading(
      String id, ReadingKind kind, @org.jspecify.annotations.Nullable Band band) {
    return new Reading(
        id,
        "value " + id,
        kind,
        Optional.ofNullable(band).map(Band::unit),
        Optional.ofNullable(band),
        Optional.empty(),
        Optional.empty(),
        Condition.always(),
        "",
        "stop",
        "by hand");
  }

  private static Step with(Step it, List<Reading> readings) {
    return With.changed(it, "readings", readings);
  }

  /** A job some way along, on some build of the demo's van. */
  private static Job random(Random random) {
    Map<String, String> build = BUILDS.get(random.nextInt(BUILDS.size()));
    List<Step> way = Walker.walk(PLAN.guide(), build);
    List<Step> done = way.subList(0, random.nextInt(way.size() + 1));
    Map<String, String> answers = new LinkedHashMap<>();
    List<Taken> taken = new ArrayList<>();
    for (Step step : done) {
      step.ask().ifPresent(it -> answers.put(it.trait(), String.valueOf(build.get(it.trait()))));
      if (step.id().equals("measure/rest")) {
        double volts = (1240 + random.nextInt(60)) / 100.0;
        taken.add(new Taken("t/rest", "value t/rest", volts + " V", Optional.of("12.4 V or more")));
        taken.add(
            new Taken(
                "t/works",
                "value t/works",
                random.nextBoolean() ? "yes" : "no",
                Optional.of("yes")));
        taken.add(new Taken("t/faults", "value t/faults", "no \"faults\" µ", Optional.empty()));
      }
    }
    List<Deviation> deviations = new ArrayList<>();
    if (random.nextBoolean()) {
      String step = way.get(random.nextInt(way.size())).id();
      deviations.add(
          new Deviation(Optional.of(step), "a grey plug", Optional.empty(), Optional.empty()));
    }
    boolean worked = done.stream().anyMatch(it -> it.kind() == StepKind.ACT);
    return new Job(
        "j1",
        "a job",
        "1",
        Demo.COMFORT,
        random.nextBoolean() ? Optional.of(3) : Optional.empty(),
        PLAN.kit().vehicle(),
        "plate ends in 17",
        Optional.empty(),
        "2026-11-26",
        "M. Orrin",
        worked ? JobState.UNDER_WAY : JobState.SURVEY,
        random.nextBoolean()
            ? Optional.of(PLAN.design().partNumbers().get(0).id())
            : Optional.empty(),
        random.nextBoolean() ? Optional.of("CC-0042") : Optional.empty(),
        Optional.of(PRINT),
        answers,
        done.stream().map(Step::id).toList(),
        taken,
        deviations,
        List.of(),
        Optional.empty());
  }

  /** Nothing done yet. */
  private static Job fresh(Job job) {
    return new Job(
        job.id(),
        job.name(),
        job.revision(),
        job.kit(),
        Optional.empty(),
        job.vehicle(),
        job.vehicleNote(),
        job.owner(),
        job.when(),
        job.by(),
        JobState.SURVEY,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  private static GuideRecord record(Job job) {
    List<String> cases =
        GuideWalk.of(PLAN, VAN, job.answers()).decidedCases().stream().map(Case::id).toList();
    return GuideRecordMaker.of(job, PLAN, PRINT, cases, BEGUN, ENDED);
  }

  private static GuideRecord again(GuideRecord record) {
    GuideRecordText.Result read = GuideRecordText.read(GuideRecordText.write(record));
    assertThat(read).isEqualTo(new GuideRecordText.Good(record));
    return record;
  }

  /** A job written down as the guide does, read back and taken in, is the same job. */
  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void whatComesBackIsWhatWasDone(@ForAll long seed) {
    Job job = random(new Random(seed));
    Taking taking = GuideRecordTaker.take(again(record(job)), PLAN, PRINT);
    assertThat(taking).as("seed %s", seed).isInstanceOf(Taking.Good.class);
    JobParts parts = ((Taking.Good) taking).parts();
    assertThat(parts.against(fresh(job))).isEmpty();
    for (JobParts.Counts counts : JobParts.Counts.values()) {
      assertThat(parts.onto(fresh(job), counts)).isEqualTo(job);
      assertThat(parts.onto(job, counts)).as("taken in twice").isEqualTo(job);
    }
  }

  /**
   * Of two records of the same work, taken in one after the other, either the later replaces the
   * earlier, or it only adds; and then nothing is lost, whatever their order.
   */
  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void aSecondRecordReplacesOrAdds(@ForAll long seed) {
    Random random = new Random(seed);
    Job earlier = random(random);
    Job later = random(random);
    JobParts parts = ((Taking.Good) GuideRecordTaker.take(record(later), PLAN, PRINT)).parts();
    Job replaced = parts.onto(earlier, JobParts.Counts.RECORD);
    Job added = parts.onto(earlier, JobParts.Counts.JOB);
    assertThat(replaced.answers()).as("seed %s", seed).isEqualTo(later.answers());
    assertThat(replaced.done()).containsExactlyInAnyOrderElementsOf(later.done());
    assertThat(replaced.taken()).containsExactlyInAnyOrderElementsOf(later.taken());
    assertThat(replaced.deviations()).containsExactlyInAnyOrderElementsOf(later.deviations());
    assertThat(added.answers()).containsAllEntriesOf(earlier.answers());
    assertThat(added.answers().keySet()).containsAll(later.answers().keySet());
    assertThat(added.done()).containsAll(earlier.done()).containsAll(later.done());
    assertThat(added.taken()).containsAll(earlier.taken());
    assertThat(added.deviations())
        .containsAll(earlier.deviations())
        .containsAll(later.deviations());
    assertThat(parts.isBehind(earlier))
        .isEqualTo(
            !earlier.done().equals(later.done()) && earlier.done().containsAll(later.done()));
  }

  private static final String TEXT = GuideRecordText.write(record(random(new Random(8))));

  private static List<Fault> faults(String text) {
    GuideRecordText.Result read = GuideRecordText.read(text);
    assertThat(read).isInstanceOf(GuideRecordText.Good.class);
    return GuideRecordTaker.take(((GuideRecordText.Good) read).record(), PLAN, PRINT)
            instanceof Taking.Bad bad
        ? bad.faults()
        : List.of();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "kit":"crew-comfort" | "kit":"trailer" | kit | this record is of kit 'trailer', not of 'crew-comfort'
          "vehicle":"packer" | "vehicle":"lorry" | vehicle | kit 'crew-comfort' is for vehicle 'packer'
          0123456789abcdef | 0123456789abcdee | guide | was made with another guide
          "answers":. | "answers":{"step":"none", | answers.step | the guide does not ask for 'step'
          "step-before":"[a-z]*" | "step-before":"both" | answers.step-before | 'both' is no answer to
          "t/rest":" | "t/rest":"x | taken["t/rest"] | is no number; write digits
          "t/works":" | "t/works":"x | taken["t/works"] | write 'yes' or 'no'
          "t/faults" | "t/fault" | taken["t/fault"] | the guide takes no value 't/fault'; did you mean 't/faults'?
          "cases":.[^]]*. | "cases":["A9"] | cases | the kit has no case 'A9'
          "cases":.[^]]*. | "cases":["C1","C3"] | cases | by the answers this vehicle is not of case
          "steps":"[^"]*" | "steps":"900" | steps | the guide has no step 900
          "odd":.[^]]*. | "odd":[{"step":900,"words":"b"}] | odd[0].step | the guide has no step 900
          "taken":. | "measured":{"rear-fed":"12"},"taken":{ | measured.rear-fed | did you mean 'rear-feed'?
          """)
  void whatDoesNotBelongToTheGuideIsSaid(String old, String now, String path, String words) {
    assertThat(TEXT).containsPattern(old);
    assertThat(faults(TEXT)).isEmpty();
    List<Fault> faults = faults(TEXT.replaceFirst(old, now));
    assertThat(faults).isNotEmpty();
    assertThat(faults.get(0).path()).isEqualTo(path);
    assertThat(faults.get(0).message()).contains(words);
  }

  @Test
  void aJobTakesInOnlyWhatIsItsOwn() {
    Job job = random(new Random(8));
    Taking taking = GuideRecordTaker.take(record(job), PLAN, PRINT);
    JobParts parts = ((Taking.Good) taking).parts();
    Job other =
        new Job(
            "j2",
            "another",
            "1",
            "trailer",
            Optional.of(9),
            "lorry",
            "x",
            Optional.empty(),
            "2026-11-26",
            "M. Orrin",
            JobState.GIVEN_UP,
            Optional.of("P-9"),
            Optional.of("S-9"),
            Optional.empty(),
            Map.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty());
    assertThat(parts.against(other))
        .extracting(Fault::path)
        .contains("", "kit", "vehicle")
        .isSubsetOf("", "kit", "vehicle", "release", "serial", "partNumber");
  }

  @Test
  void workThatWasStoppedNeedsAReason() {
    Job job = random(new Random(8));
    GuideRecord record = record(job);
    String text =
        GuideRecordText.write(record)
            .replace("\"under way\"", "\"stopped\"")
            .replaceFirst("\"begun\":\"[^\"]*\"", "$0,\"ended\":\"2026-11-26T18:00:00Z\"")
            .replaceFirst("\"odd\":\\[.*\\]", "\"odd\":[]");
    GuideRecordText.Result read = GuideRecordText.read(text);
    Taking taking = GuideRecordTaker.take(((GuideRecordText.Good) read).record(), PLAN, PRINT);
    assertThat(((Taking.Good) taking).parts().deviations())
        .singleElement()
        .satisfies(it -> assertThat(it.was()).contains("stopped before the end"))
        .satisfies(it -> assertThat(it.why()).isEmpty());
  }
}
