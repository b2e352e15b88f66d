package org.loomwright.papers.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.ValueStanding;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.papers.hand.GuidePrint;

/** The jobs of the demo are jobs that could be: they agree with the plans of its kits. */
class DemoJobsTest {
  @Test
  void thereIsOneOfEachState() {
    assertThat(DemoJobs.all())
        .extracting(Job::state)
        .containsExactlyInAnyOrder(JobState.SIGNED_OFF, JobState.UNDER_WAY, JobState.SURVEY);
  }

  @Test
  void whatWasDoneIsTheWayOfTheirAnswers() {
    for (Job job : DemoJobs.all()) {
      Fitted fitted = DemoJobs.fitted(job);
      assertThat(fitted.walk().isServed()).as(job.id()).isTrue();
      List<String> way = fitted.way().stream().map(Step::id).toList();
      assertThat(job.done()).as(job.id()).isEqualTo(way.subList(0, job.done().size()));
      job.deviations()
          .forEach(it -> assertThat(way).as(job.id()).containsAll(it.step().stream().toList()));
      job.photos().forEach(it -> assertThat(way).containsAll(it.step().stream().toList()));
      job.partNumber()
          .ifPresent(
              it -> assertThat(fitted.walk().fitting()).extracting(PartNumber::id).contains(it));
    }
  }

  @Test
  void theSignedOneIsComplete() {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    Fitted fitted = DemoJobs.fitted(job);
    assertThat(fitted.undecided()).isEmpty();
    assertThat(job.done()).hasSameSizeAs(fitted.way());
    List<Value> values = Value.of(fitted);
    assertThat(values)
        .filteredOn(it -> it.standing().filter(ValueStanding.OPEN::equals).isPresent())
        .isEmpty();
    assertThat(values)
        .filteredOn(it -> it.standing().filter(ValueStanding.OUTSIDE::equals).isPresent())
        .singleElement()
        .satisfies(it -> assertThat(it.name()).contains("left step ground"));
    assertThat(job.deviations()).hasSize(2).allMatch(it -> it.why().isPresent());
  }

  /**
   * So that the fit check of the demo counts its vehicle: a guide in other words is another guide.
   */
  @Test
  void theSignedOneNamesTheGuideItFollowed() {
    Job job = DemoJobs.job(DemoJobs.SIGNED);
    assertThat(job.guide())
        .as("guide in demo/van-0417.job.json; put the new one in when the guide was changed")
        .contains(GuidePrint.of(DemoJobs.plan(job).plan()));
  }

  @Test
  void theSurveyLeavesCasesOpen() {
    Fitted fitted = DemoJobs.fitted(DemoJobs.job(DemoJobs.SURVEY));
    assertThat(fitted.undecided()).contains("B").doesNotContain("C");
    assertThat(fitted.walk().decidedCases()).extracting(Case::id).contains("C2");
  }
}
