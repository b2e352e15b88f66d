package org.loomwright.planner.proof;

import org.loomwright.model.design.Step;

/** A check made at each step, before what the step does is done. */
interface StepCheck {
  /**
   * @param step the step
   * @param here possible builds that come to it; not empty
   * @param progress how those builds stand
   */
  void at(Step step, Region here, Progress progress, Findings findings);
}
