package org.loomwright.papers.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomwright.papers.job.JobPdf.asFitted;
import static org.loomwright.papers.job.JobPdf.pages;
import static org.loomwright.papers.job.JobPdf.sheet;
import static org.loomwright.papers.job.JobPdf.words;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.Job;
import org.loomwright.papers.hand.GuidePrint;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.walk.GuideWalk;

/** Papers say what is in the vehicle, whichever case it is and however far the work came. */
class JobCasesTest {
  /** On every case of both kits there is a paper, and no lead of another case in it. */
  @ParameterizedTest
  @ValueSource(strings = {DemoJobs.SURVEY, DemoJobs.UNDER_WAY})
  void everyCaseHasItsPapers(String id) throws IOException {
    Job job = DemoJobs.job(id);
    Names names = DemoJobs.plan(job);
    Set<String> seen = new TreeSet<>();
    for (Job other : oneOfEachCase(job)) {
      Fitted fitted = DemoJobs.fitted(other);
      assertThat(fitted.undecided()).as("%s", other.answers()).isEmpty();
      String words = words(asFitted(other));
      for (Lead lead : names.plan().design().leads()) {
        boolean here = fitted.leads().contains(lead);
        assertThat(words.contains(lead.label()))
            .as("%s %s", lead.label(), other.answers())
            .isEqualTo(here);
      }
      assertThat(pages(sheet(other))).isEqualTo(1);
      seen.addAll(fitted.cases());
    }
    assertThat(seen)
        .hasSizeGreaterThan(3)
        .containsExactlyInAnyOrderElementsOf(names.plan().cases().stream().map(Case::id).toList());
  }

  /** What the demo's equipment draws, added up by hand, on prewired vehicles too. */
  @ParameterizedTest
  @CsvSource({DemoJobs.SURVEY + ", 18.8", DemoJobs.UNDER_WAY + ", 31.4"})
  void theOwnerReadsTheWholeCurrent(String id, String mostA) throws IOException {
    for (Job it : oneOfEachCase(DemoJobs.job(id))) {
      assertThat(words(sheet(it)))
          .contains("With everything that was added switched on: " + mostA + " A at most");
    }
  }

  /** Nothing was done, so nothing is told as if it were there. */
  @ParameterizedTest
  @ValueSource(strings = {DemoJobs.SURVEY, DemoJobs.UNDER_WAY})
  void whatIsNotDoneIsMarkedWhereverItIsNamed(String id) throws IOException {
    int ends = 0;
    for (Job job : oneOfEachCase(DemoJobs.job(id))) {
      Fitted fitted = DemoJobs.fitted(job);
      String words = words(asFitted(job));
      for (Lead lead : fitted.leads()) {
        for (String end : List.of("a", "b")) {
          Optional<Landing> landing = fitted.landing(end.equals("a") ? lead.a() : lead.b());
          boolean listed =
              landing
                  .filter(
                      it ->
                          it instanceof Landing.OnGround
                              || it instanceof Landing.IntoCircuit
                              || it instanceof Landing.Parked)
                  .isPresent();
          if (listed && !fitted.isLanded(lead, end)) {
            assertThat(words).contains("NOT DONE: " + lead.label());
            ends++;
          }
        }
      }
      assertThat(words).doesNotContain("Parked ends: capped");
    }
    assertThat(ends).isGreaterThan(5);
  }

  /** A terminal that sits in a slot does not leave it because an answer was changed. */
  @Test
  void whatWasDoneOffTheWayIsStillThere() throws IOException {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    assertThat(DemoJobs.fitted(job).astray()).isEmpty();
    assertThat(words(asFitted(job))).doesNotContain("not called for");
    Step landed = landed(job, "F7");
    Job changed =
        oneOfEachCase(job).stream()
            .map(it -> DemoJobs.changed(job, it.answers()))
            .filter(it -> !DemoJobs.fitted(it).way().contains(landed))
            .findFirst()
            .orElseThrow();
    Fitted fitted = DemoJobs.fitted(changed);
    assertThat(fitted.astray())
        .contains("step " + landed.number() + ", " + landed.title())
        .doesNotHaveDuplicates();
    String words = words(asFitted(changed));
    assertThat(words)
        .contains("Done, but not called for by the answers")
        .contains("step " + landed.number() + ", " + landed.title())
        .contains("out of the rear fuse block, slot F7");
    assertThat(words(sheet(changed))).contains("Done, but not called for by the answers: step ");
    // All that was done comes out again, whatever the answers are.
    assertThat(fitted.takenBack()).isEqualTo(DemoJobs.fitted(job).takenBack());
  }

  private static Step landed(Job job, String slot) {
    return DemoJobs.fitted(job).acts().stream()
        .filter(
            it ->
                it.act()
                    .filter(
                        act ->
                            act instanceof Act.Land land
                                && land.landing() instanceof Landing.InSlot in
                                && in.slot().equals(slot))
                    .isPresent())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anotherGuideThanTheOneFollowedIsSaidOnBothPapers() throws IOException {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    String print = GuidePrint.of(DemoJobs.plan(job).plan());
    Job other = DemoJobs.by(job, Optional.of("0123456789abcdef"), Optional.empty());
    Job same = DemoJobs.by(job, Optional.of(print), Optional.empty());
    Job released = DemoJobs.by(job, Optional.empty(), Optional.of(1));
    Job none = DemoJobs.by(job, Optional.empty(), Optional.empty());
    for (boolean whole : new boolean[] {true, false}) {
      assertThat(words(whole ? asFitted(other) : sheet(other)))
          .contains(
              "Drawn from another guide than the one followed: fuses, wires and places may differ"
                  + " from what is in this vehicle.",
              "0123456789abcdef, this one is " + print);
      assertThat(words(whole ? asFitted(same) : sheet(same))).doesNotContain("rawn from");
      assertThat(words(whole ? asFitted(released) : sheet(released))).doesNotContain("rawn from");
      assertThat(words(whole ? asFitted(none) : sheet(none)))
          .contains("This job names neither a release nor a guide");
      assertThat(pages(sheet(other))).isEqualTo(1);
    }
  }

  /** Jobs with nothing done, so many that every case comes up in one of them. */
  private static List<Job> oneOfEachCase(Job job) {
    Names names = DemoJobs.plan(job);
    List<Job> jobs = new ArrayList<>();
    Set<String> seen = new TreeSet<>();
    for (Case it : names.plan().cases()) {
      if (!seen.contains(it.id())) {
        Job one = DemoJobs.with(job, answers(names, it), List.of());
        seen.addAll(DemoJobs.fitted(one).cases());
        jobs.add(one);
      }
    }
    return jobs;
  }

  /** Answers each question so that a case stays possible. */
  private static Map<String, String> answers(Names names, Case wanted) {
    Map<String, String> answers = new LinkedHashMap<>();
    for (GuideWalk walk = walk(names, answers);
        walk.openQuestion().isPresent();
        walk = walk(names, answers)) {
      String trait = walk.openQuestion().get().ask().orElseThrow().trait();
      Stream<String> possible = walk.possible(trait).stream();
      answers.put(
          trait,
          possible
              .filter(
                  it -> {
                    Map<String, String> tried = new LinkedHashMap<>(answers);
                    tried.put(trait, it);
                    return walk(names, tried).canHold(wanted.when());
                  })
              .findFirst()
              .orElseThrow());
    }
    return answers;
  }

  private static GuideWalk walk(Names names, Map<String, String> answers) {
    return GuideWalk.of(names.plan(), names.order().vehicle(), answers);
  }
}
