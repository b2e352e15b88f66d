package org.loomwright.planner.impact;

import org.loomwright.model.job.Job;

/**
 * Whether a job is concerned when its release no longer holds on some builds.
 *
 * @param job the job
 * @param touch how surely it is concerned
 * @param words why, as a full sentence
 * @param todo what to do, as a full sentence; empty when it is not concerned
 */
public record JobImpact(Job job, Touch touch, String words, String todo) {
  /** How surely a job is concerned, the surest first. */
  public enum Touch {
    /** Every build that has its answers is concerned, or none has them any more. */
    SURELY,
    /** It depends on what was not looked at. */
    PERHAPS,
    /** No build that has its answers is concerned, or nothing was fitted. */
    NOT
  }

  /** Whether something has to be done. */
  public boolean isTouched() {
    return touch != Touch.NOT;
  }
}
