package org.loomwright.planner.impact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.impact.JobImpact.Touch;
import org.loomwright.planner.impact.ReleaseImpact.Standing;
import org.loomwright.planner.plan.Demo;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Plants findings into the demo's van and reads what becomes of a release and of its jobs. */
class ReleaseImpactTest {
  /** Facts of the van that nobody knows yet; the guide may ask for them. */
  private static final List<String> UNKNOWN =
      Demo.order(Demo.COMFORT).vehicle().traits().stream()
          .map(Trait::id)
          .filter(it -> it.contains("/"))
          .toList();

  private static final Map<String, String> GLAZED = answers("body", "glazed");
  private static final Map<String, String> PANEL = answers("body", "panel");
  private static final Map<String, String> NOT_ASKED = answers("cool-box", "no");
  private static final Map<String, String> NEVER_BUILT =
      Map.of("body", "panel", "rear-feed", "no", "tow-prep", "yes");

  /** What was found on a van, with one thing more. */
  private static Map<String, String> answers(String trait, String value) {
    Map<String, String> answers = new TreeMap<>();
    for (String unknown : UNKNOWN) {
      answers.put(unknown, "no");
    }
    answers.putAll(
        Map.of("rear-feed", "yes", "tow-prep", "no", "step-before", "none", "floor-ground", "no"));
    answers.put(trait, value);
    return answers;
  }

  private static ReleaseImpact impact(Vehicle now) {
    return ReleaseImpact.of(
        new Released(2, Demo.order(Demo.COMFORT), Demo.plan(Demo.COMFORT)), now, () -> {});
  }

  private static Vehicle van(Consumer<ObjectNode> change) {
    // Jobs and batches of the demo speak of the van as it is.
    return Demo.copy()
        .without(".job.json")
        .without(".batch.json")
        .edit(Demo.VAN, change)
        .kit(Demo.COMFORT)
        .vehicle();
  }

  /** Section B turns out to be dead on vans with windows, whatever was known of its feed. */
  private static Vehicle deadOnGlazed() {
    return van(
        it ->
            Demo.find(
                    Demo.find(it.path("fuseBlocks"), "id", "rear-block").path("sections"),
                    "id",
                    "B")
                .put("fedWhen", "rear-feed = yes and body != glazed"));
  }

  private static Job job(String id, int release, JobState state, Map<String, String> answers) {
    return job(id, release, state, answers, List.of());
  }

  private static Job job(
      String id, int release, JobState state, Map<String, String> answers, List<String> done) {
    return new Job(
        id,
        id,
        "1",
        Demo.COMFORT,
        Optional.of(release),
        "van",
        "0042",
        Optional.empty(),
        "2026-03-04",
        "T. Halvard",
        state,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        answers,
        done,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  @Test
  void aReleaseOnTheVehicleItWasMadeForIsStillProven() {
    ReleaseImpact same = impact(Demo.order(Demo.COMFORT).vehicle());
    List<JobImpact> jobs =
        same.jobs(
            List.of(
                job("fitted", 2, JobState.SIGNED_OFF, GLAZED),
                job("of-another-release", 1, JobState.SIGNED_OFF, GLAZED)));
    assertThat(same.standing()).isEqualTo(Standing.STILL_PROVEN);
    assertThat(same.examples()).isEmpty();
    assertThat(same.builds()).isEqualTo(Demo.plan(Demo.COMFORT).builds().possible());
    assertThat(same.words()).startsWith("still proven on all ");
    assertThat(same.shelf()).startsWith("Nothing");
    assertThat(jobs).extracting(it -> it.job().id()).containsExactly("fitted");
    assertThat(jobs).noneMatch(JobImpact::isTouched);
  }

  @Test
  void aFeedThatIsDeadOnSomeVansConcernsExactlyTheirJobs() {
    Job other =
        new Job(
            "another-kit",
            "",
            "1",
            Demo.TRAILER,
            Optional.of(2),
            "van",
            "",
            Optional.empty(),
            "2026-03-04",
            "",
            JobState.SIGNED_OFF,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            GLAZED,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty());
    ReleaseImpact worse = impact(deadOnGlazed());
    List<JobImpact> jobs =
        worse.jobs(
            List.of(
                job("panel", 2, JobState.SIGNED_OFF, PANEL),
                job("not-asked", 2, JobState.SIGNED_OFF, NOT_ASKED),
                job("glazed", 2, JobState.SIGNED_OFF, GLAZED),
                job("glazed-under-way", 2, JobState.UNDER_WAY, GLAZED),
                job("glazed-survey", 2, JobState.SURVEY, GLAZED),
                job("glazed-older-release", 1, JobState.SIGNED_OFF, GLAZED),
                job("never-built", 2, JobState.SIGNED_OFF, NEVER_BUILT),
                other));
    assertThat(worse.standing()).isEqualTo(Standing.FEWER_BUILDS);
    assertThat(worse.failing()).isPositive().isLessThan(worse.builds());
    assertThat(worse.examples()).isNotEmpty();
    assertThat(worse.words()).contains(" of ").contains("with windows in the load space");
    assertThat(worse.shelf()).contains("with windows in the load space");
    assertThat(jobs)
        .extracting(it -> it.job().id() + " " + it.touch())
        .containsExactly(
            "glazed SURELY",
            "glazed-under-way SURELY",
            "glazed-survey SURELY",
            "never-built SURELY",
            "not-asked PERHAPS",
            "panel NOT");
    assertThat(jobs)
        .filteredOn(it -> it.job().id().equals("not-asked"))
        .singleElement()
        .satisfies(
            it -> {
              assertThat(it.words()).isEqualTo("It was not looked at: body.");
              assertThat(it.todo()).startsWith("Find that out first. If it is concerned: call");
            });
    assertThat(jobs.get(0).todo()).startsWith("Call the owner in");
    assertThat(jobs.get(1).todo()).startsWith("Stop the work");
    assertThat(jobs.get(2).todo()).startsWith("Plan it anew");
    assertThat(jobs.get(3).words()).contains("fit no build");
  }

  @Test
  void aNewTraitLeavesJobsOpenThatWereNotAskedForIt() {
    Vehicle now =
        van(
            it -> {
              ObjectNode trait = Demo.find(it.path("traits"), "id", "cool-box").deepCopy();
              trait.put("id", "late-block").put("name", "late fuse block");
              ((ArrayNode) it.path("traits")).add(trait);
              Demo.find(
                      Demo.find(it.path("fuseBlocks"), "id", "rear-block").path("sections"),
                      "id",
                      "B")
                  .put("fedWhen", "rear-feed = yes and late-block = no");
            });
    ReleaseImpact worse = impact(now);
    List<JobImpact> jobs = worse.jobs(List.of(job("panel", 2, JobState.SIGNED_OFF, PANEL)));
    assertThat(worse.standing()).isEqualTo(Standing.FEWER_BUILDS);
    assertThat(jobs)
        .singleElement()
        .satisfies(
            it -> {
              assertThat(it.touch()).isEqualTo(Touch.PERHAPS);
              assertThat(it.words()).isEqualTo("It was not looked at: late fuse block.");
            });
  }

  @Test
  void aTraitThatIsGoneLeavesNothingToShow() {
    // The trailer kit's guide asks for it; the van's facts no longer speak of it.
    Vehicle now =
        van(
            it -> {
              ObjectNode trait = Demo.find(it.path("traits"), "id", "rear-feed");
              trait.put("id", "rear-supply");
              String text = it.toString().replace("rear-feed", "rear-supply");
              it.setAll((ObjectNode) JsonMapper.builder().build().readTree(text));
            });
    ReleaseImpact gone = impact(now);
    List<JobImpact> jobs = gone.jobs(List.of(job("panel", 2, JobState.UNDER_WAY, PANEL)));
    assertThat(gone.standing()).isIn(Standing.NOT_SHOWN, Standing.FAILS);
    assertThat(jobs).allMatch(JobImpact::isTouched);
    assertThat(gone.shelf()).startsWith("Hold them back");
  }

  /**
   * Opening a cover or answering a question leaves the vehicle as it was; laying a lead does not.
   */
  @Test
  void aJobGivenUpBeforeAnythingWasFittedHasNothingToBeDone() {
    List<Job> given =
        List.of(
            job("nothing", 2, JobState.GIVEN_UP, GLAZED),
            job(
                "opened",
                2,
                JobState.GIVEN_UP,
                GLAZED,
                List.of("caution/general", "act/isolate", "open/floor-cover")),
            job("laid", 2, JobState.GIVEN_UP, GLAZED, List.of("act/isolate", "lay/L1")));
    assertThat(impact(deadOnGlazed()).jobs(given))
        .extracting(it -> it.job().id() + " " + it.touch() + " " + it.todo().split(" ")[0])
        .containsExactly("laid SURELY Call", "nothing NOT ", "opened NOT ");
    assertThat(ReleaseImpact.unjudged(Demo.COMFORT, 2, "why").jobs(given))
        .extracting(it -> it.job().id() + " " + it.touch() + " " + it.todo().split(" ")[0])
        .containsExactly("opened PERHAPS Look", "laid PERHAPS Look", "nothing NOT ");
  }

  @Test
  void aReleaseThatCantBeJudgedSaysWhyAndWhatToDo() {
    ReleaseImpact blind = ReleaseImpact.unjudged(Demo.COMFORT, 2, "a photo is gone");
    assertThat(blind.words()).isEqualTo("it can't be judged: a photo is gone");
    assertThat(blind.shelf()).startsWith("Hold them back");
    assertThat(blind.jobs(List.of(job("survey", 2, JobState.SURVEY, PANEL))))
        .singleElement()
        .satisfies(it -> assertThat(it.todo()).startsWith("Plan it anew"));
  }
}
