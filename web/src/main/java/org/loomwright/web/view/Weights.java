package org.loomwright.web.view;

import java.util.Locale;
import org.loomwright.model.design.Verdict;
import org.loomwright.planner.difference.Change;
import org.loomwright.planner.impact.JobImpact;
import org.loomwright.planner.impact.ReleaseImpact;

/** Whether a change is for the better, by sign and word. */
public final class Weights {
  /** So many changes tell the story; the others are folded away. */
  public static final int FIRST = 8;

  private Weights() {}

  /** Sign and word. */
  public static String sign(Change change) {
    return switch (change.weight()) {
      case WORSE -> "▼ worse:";
      case BETTER -> "▲ better:";
      case NEUTRAL -> "● changed:";
    };
  }

  /** Sign of a verdict. */
  public static String sign(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> "✓";
      case MARGINAL -> "▲";
      case FAILS -> "✕";
    };
  }

  /** Class of a verdict. */
  public static String css(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT);
  }

  /** Verdict that a release amounts to: marginal where it holds on fewer builds than it did. */
  public static Verdict verdict(ReleaseImpact release) {
    return switch (release.standing()) {
      case STILL_PROVEN -> Verdict.HOLDS;
      case FEWER_BUILDS -> Verdict.MARGINAL;
      case FAILS, NOT_SHOWN, NOT_JUDGED -> Verdict.FAILS;
    };
  }

  /** Sign and word of a job. */
  public static String sign(JobImpact job) {
    return switch (job.touch()) {
      case SURELY -> "✕ concerned:";
      case PERHAPS -> "▲ perhaps:";
      case NOT -> "✓ not concerned:";
    };
  }

  /** Class of the line of a job. */
  public static String css(JobImpact job) {
    return switch (job.touch()) {
      case SURELY -> "worse";
      case PERHAPS -> "other";
      case NOT -> "better";
    };
  }

  /** Class of the line. */
  public static String css(Change change) {
    return switch (change.weight()) {
      case WORSE -> "worse";
      case BETTER -> "better";
      case NEUTRAL -> "other";
    };
  }
}
