package org.loomwright.model.design;

import java.util.List;

/**
 * The leads pulled together: a tree over the vehicle's runs, or several where no lead goes from one
 * to the other.
 *
 * @param bundles runs in use, in the order of the vehicle's document
 * @param tails what leaves the bundles at a place, one for each thing the leads end in
 * @param joints where joints lie
 * @param weighedMm length of all runs in use, weighed by preference
 * @param leastWeighedMm proven least such length of any tree that joins the same places
 * @param exact whether nothing shorter exists
 * @param runsLeft runs that may not be used, each with the reason
 * @param notes what a reader should know of the way the leads are led
 */
public record Harness(
    List<Bundle> bundles,
    List<Tail> tails,
    List<JointSpot> joints,
    double weighedMm,
    double leastWeighedMm,
    boolean exact,
    List<String> runsLeft,
    List<String> notes) {
  /** No bundle at all, for a kit without leads. */
  public static final Harness NONE =
      new Harness(List.of(), List.of(), List.of(), 0, 0, true, List.of(), List.of());

  public Harness {
    bundles = List.copyOf(bundles);
    tails = List.copyOf(tails);
    joints = List.copyOf(joints);
    runsLeft = List.copyOf(runsLeft);
    notes = List.copyOf(notes);
  }
}
