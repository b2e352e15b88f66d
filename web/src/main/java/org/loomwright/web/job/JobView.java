package org.loomwright.web.job;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.JobDesk;
import org.loomwright.web.shop.Shop;

/**
 * What the pages show of a job.
 *
 * @param job the job
 * @param vehicle name of its vehicle
 * @param kit name of its kit; its id when it is no longer on file
 * @param basedOn number of the job's newest revision; 0 where there are none
 * @param basis what it is worked by
 * @param work the job held against its guide; empty while there is no plan
 * @param photos its photos
 */
public record JobView(
    Job job,
    String vehicle,
    String kit,
    long basedOn,
    JobDesk.Basis basis,
    Optional<JobWork> work,
    List<Photo> photos) {
  /**
   * A photo.
   *
   * @param file name of its file
   * @param shows what it shows
   * @param step id of the step it was taken at; empty for none
   * @param source address of the picture; empty when there is none of this name
   */
  public record Photo(String file, String shows, String step, String source) {
    /** What is said in place of the picture. */
    public String words() {
      return shows.isEmpty() ? file : shows;
    }
  }

  /**
   * What to do next.
   *
   * @param words what
   * @param href where
   * @param why a sentence more
   */
  public record Next(String words, String href, String why) {}

  public JobView {
    photos = List.copyOf(photos);
  }

  /** Name of the vehicle of a job; its id when it is no longer on file. */
  public static String vehicle(Shop shop, Job job) {
    return shop.workspace().vehicles().stream()
        .filter(it -> it.id().equals(job.vehicle()))
        .map(it -> it.name())
        .findFirst()
        .orElse(job.vehicle());
  }

  /** Name of the kit of a job; its id when it is no longer on file. */
  public static String kit(Shop shop, Job job) {
    return shop.workspace().kits().stream()
        .filter(it -> it.id().equals(job.kit()))
        .map(it -> it.name())
        .findFirst()
        .orElse(job.kit());
  }

  /** Class of a state. */
  public static String css(JobState state) {
    return switch (state) {
      case SURVEY, UNDER_WAY -> "open-state";
      case SIGNED_OFF, GIVEN_UP -> "closed-state";
    };
  }

  /** Whether the plan is still being made. */
  public boolean isWaiting() {
    return basis instanceof JobDesk.Working;
  }

  /** What is done just now, or why there is no plan; empty when there is one. */
  public String trouble() {
    return basis instanceof JobDesk.Missing missing
        ? missing.why()
        : basis instanceof JobDesk.Working working ? working.words() : "";
  }

  /** Photos taken at a step. */
  public List<Photo> photos(String step) {
    return photos.stream().filter(it -> it.step().equals(step)).toList();
  }

  /** Part numbers this vehicle can need: those sure to fit, or all that may. */
  public List<PartNumber> numbers() {
    return work.map(JobWork::numbers).orElse(List.of());
  }

  /** Whether an answer still to come may ask for another part number. */
  public boolean isNumberOpen() {
    return work.filter(it -> it.walk().fitting().isEmpty()).isPresent() && numbers().size() > 1;
  }

  /** Whether the part number written down can't serve this vehicle. */
  public boolean isWrongNumber() {
    return work.flatMap(JobWork::wrongNumber).isPresent();
  }

  /** Cases that are sure. */
  public List<Case> cases() {
    return work.map(it -> it.walk().decidedCases()).orElse(List.of());
  }

  /** Cases of which an answer still to come decides. */
  public List<Case> openCases() {
    return work.map(
            it ->
                it.walk().cases().stream()
                    .filter(one -> !it.walk().decidedCases().contains(one))
                    .toList())
        .orElse(List.of());
  }

  /** Questions answered, and all on the way as far as it is known: "2 of 5". */
  public String answered() {
    return work.map(
            it -> {
              long done = it.walk().questions().stream().filter(it.walk()::isAnswered).count();
              return done + " of " + it.walk().questions().size();
            })
        .orElse("");
  }

  /** What to do next; empty while there is no plan and when the job is over. */
  public Optional<Next> next() {
    if (work.isEmpty() || job.isOver()) {
      return Optional.empty();
    }
    JobWork it = work.get();
    String survey = Href.job(job.id(), "survey");
    String steps = Href.job(job.id(), "steps");
    if (!it.walk().isPossible() || !it.walk().isServed()) {
      return Optional.of(new Next("Look at the answers again", survey, ""));
    }
    if (job.state() == JobState.SURVEY) {
      return it.walk().openQuestion().isPresent()
          ? Optional.of(
              new Next(
                  "Survey: answer the next question", survey, answered() + " answered so far."))
          : Optional.of(
              new Next("Begin fitting", survey + "#begin", "All questions are answered."));
    }
    if (it.wrongNumber().isPresent()) {
      return Optional.of(
          new Next(
              "Stop: another part number is needed",
              Href.job(job.id(), "number"),
              it.wrongNumber().get() + "."));
    }
    if (it.next().isPresent()) {
      return Optional.of(
          new Next(
              "Step " + it.next().get().number() + ": " + it.next().get().title(),
              steps,
              it.leftCount()
                  + (it.leftCount() == 1 ? " step" : " steps")
                  + " left on this way, as far as it is known."));
    }
    return it.against().isEmpty()
        ? Optional.of(new Next("Sign off", Href.job(job.id(), "sign"), "All is done."))
        : Optional.of(
            new Next("See what stands against the sign-off", Href.job(job.id(), "sign"), ""));
  }
}
