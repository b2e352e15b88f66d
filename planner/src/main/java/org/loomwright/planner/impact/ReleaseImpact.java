package org.loomwright.planner.impact;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.job.Job;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.proof.FailingBuilds;
import org.loomwright.planner.proof.Judged;
import org.loomwright.planner.proof.ProofMaker;

/**
 * What a release is worth on its vehicle as that is known now: its leads and its guide stay as they
 * went out, and the proof is made again.
 *
 * @param kit kit
 * @param number number of the release
 * @param standing how it stands
 * @param builds possible builds of the vehicle now
 * @param failing those on which it does not hold; zero when nothing is shown of any
 * @param failingWords the same in words; empty when there are none, or nothing is shown
 * @param examples smallest counterexamples
 * @param why why nothing can be shown, or it can't be judged; empty otherwise
 * @param judge says which jobs are concerned
 */
public record ReleaseImpact(
    String kit,
    long number,
    Standing standing,
    BigInteger builds,
    BigInteger failing,
    String failingWords,
    List<Counterexample> examples,
    String why,
    JobJudge judge) {
  public ReleaseImpact {
    examples = List.copyOf(examples);
  }

  /** How a release stands. */
  public enum Standing {
    /** It holds on every possible build. */
    STILL_PROVEN,
    /** It holds on some of them only. */
    FEWER_BUILDS,
    /** It holds on none. */
    FAILS,
    /** Its guide speaks of traits or things that the vehicle no longer has. */
    NOT_SHOWN,
    /** What it was made of can't be planned any more. */
    NOT_JUDGED
  }

  /**
   * Proves a release again.
   *
   * @param released the release
   * @param now its vehicle as known now, unknown facts already turned into traits
   * @param look is taken at each step of the proof; what it throws ends the work
   */
  public static ReleaseImpact of(Released released, Vehicle now, Runnable look) {
    KitOrder was = released.order();
    KitOrder order =
        new KitOrder(was.kit(), now, was.equipment(), was.parts(), was.rules(), was.pictures());
    Judged judged =
        ProofMaker.judge(
            order,
            released.plan().cases(),
            released.plan().design(),
            released.plan().guide(),
            look);
    Optional<FailingBuilds> failing = judged.failing();
    return new ReleaseImpact(
        was.kit().id(),
        released.number(),
        standing(judged),
        failing.map(FailingBuilds::possibleCount).orElse(BigInteger.ZERO),
        failing.map(FailingBuilds::count).orElse(BigInteger.ZERO),
        failing.filter(it -> !it.isEmpty()).map(FailingBuilds::words).orElse(""),
        judged.proof().counterexamples(),
        failing.isPresent() ? "" : judged.proof().obligations().get(0).detail(),
        JobJudge.Seeing.of(failing, now, released.plan().guide()));
  }

  /**
   * A release that can't be judged.
   *
   * @param why why what it was made of can't be planned any more, as a clause
   */
  public static ReleaseImpact unjudged(String kit, long number, String why) {
    return new ReleaseImpact(
        kit,
        number,
        Standing.NOT_JUDGED,
        BigInteger.ZERO,
        BigInteger.ZERO,
        "",
        List.of(),
        why,
        new JobJudge.Blind());
  }

  /**
   * What it means for jobs.
   *
   * @param all jobs of any kit
   * @return those with this release, those surely concerned first, else in the order given
   */
  public List<JobImpact> jobs(List<Job> all) {
    return all.stream()
        .filter(it -> it.kit().equals(kit))
        .filter(it -> it.release().filter(one -> one == number).isPresent())
        .map(judge::of)
        .sorted(Comparator.comparing(JobImpact::touch))
        .toList();
  }

  private static Standing standing(Judged judged) {
    if (judged.failing().isEmpty()) {
      return Standing.NOT_SHOWN;
    }
    FailingBuilds failing = judged.failing().get();
    return failing.isEmpty()
        ? Standing.STILL_PROVEN
        : failing.isAll() ? Standing.FAILS : Standing.FEWER_BUILDS;
  }

  /** How it stands, as one sentence without the kit. */
  public String words() {
    return switch (standing) {
      case STILL_PROVEN -> "still proven on all " + builds + " possible builds";
      case FEWER_BUILDS ->
          "proven no longer on " + failing + " of " + builds + " possible builds: " + failingWords;
      case FAILS -> "proven on no possible build any more";
      case NOT_SHOWN -> "nothing can be shown any more: " + why;
      case NOT_JUDGED -> "it can't be judged: " + why;
    };
  }

  /** What to do with kits of this release that are on the shelf, as a full sentence. */
  public String shelf() {
    return switch (standing) {
      case STILL_PROVEN -> "Nothing: sell them as before.";
      case FEWER_BUILDS ->
          "Sell them only where it is known that the vehicle is none of these builds: "
              + failingWords
              + ". Put the new guide in, or hold them back until there is one.";
      case FAILS, NOT_SHOWN -> "Hold them back until a new release is made, and rework them to it.";
      case NOT_JUDGED ->
          "Hold them back until somebody has looked through the papers of the release for what was"
              + " found, or until a new release is made.";
    };
  }
}
