package org.loomwright.planner.kit;

import java.util.List;
import java.util.Map;
import org.loomwright.model.design.JointSpot;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Run;
import org.loomwright.planner.landing.Touch;

/**
 * Length of a lead: its path + tolerance of the path, so that the longest real vehicle is reached +
 * the tail behind the bundle at each end, or the way to the joint it ends in. The cut adds both
 * strip lengths and is rounded up.
 */
final class Lengths {
  private final Rules rules;
  private final Tails tails;
  private final JointSpots joints;

  Lengths(KitOrder order, List<Strand> strands) {
    this.rules = order.rules();
    this.tails = new Tails(order, strands);
    this.joints = new JointSpots(order, strands, tails);
  }

  /** Length of a run as the bundle on it is made, mm. */
  static double madeMm(Run run) {
    return run.length().mm() + run.tolerance().mm();
  }

  /** What leaves the bundles, with the ends of the leads. */
  Map<Tails.Key, List<Tails.End>> tails() {
    return tails.all();
  }

  /** Length of a tail, mm. */
  double tailMm(Tails.Key tail) {
    return tails.lengthMm(tail);
  }

  /** Where joints lie. */
  List<JointSpot> joints() {
    return joints.all();
  }

  double finishedMm(Strand strand) {
    return strand.route().lengthMm()
        + strand.route().toleranceWorstMm()
        + endMm(strand, true)
        + endMm(strand, false);
  }

  /** What an end adds to the path, mm. */
  double endMm(Strand strand, boolean sideA) {
    Touch made = strand.made(sideA);
    return made instanceof Touch.AtJoint joint
        ? joints.addsMm(strand, sideA, joint)
        : Tails.key(made).map(tails::lengthMm).orElseThrow();
  }

  double cutMm(double finishedMm, double stripAMm, double stripBMm) {
    double step = Math.max(1, rules.cutRounding().value().mm());
    double raw = finishedMm + stripAMm + stripBMm + rules.cutTolerance().value().mm();
    return Math.ceil(raw / step - 1e-9) * step;
  }
}
