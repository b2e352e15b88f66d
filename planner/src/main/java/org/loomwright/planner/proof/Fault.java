package org.loomwright.planner.proof;

import java.util.Optional;
import org.loomwright.model.design.Step;

/**
 * Something that could not be shown.
 *
 * @param claim what it goes against
 * @param builds possible builds on which it goes wrong; not empty
 * @param step step at which it does
 * @param what what goes wrong, with the figure
 */
record Fault(Claim claim, Region builds, Optional<Step> step, String what) {
  /** The step as a reader of the guide finds it; empty when there is none. */
  String stepWords() {
    return step.map(it -> "step " + it.number() + " (" + it.id() + "): " + it.title()).orElse("");
  }
}
