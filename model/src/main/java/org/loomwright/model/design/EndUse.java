package org.loomwright.model.design;

import java.util.List;

/**
 * One landing of a lead's end with the cases that use it.
 *
 * @param landing landing
 * @param cases ids of the cases, in order
 * @param asMade whether the bench makes the end this way; another landing is rework in the vehicle
 */
public record EndUse(Landing landing, List<String> cases, boolean asMade) {
  public EndUse {
    cases = List.copyOf(cases);
  }
}
