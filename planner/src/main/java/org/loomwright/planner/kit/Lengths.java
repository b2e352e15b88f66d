package org.loomwright.planner.kit;

import org.loomwright.model.rules.Rules;
import org.loomwright.planner.route.Route;

/**
 * Length of a lead: path + tolerance of the path, so that the longest real vehicle is reached +
 * slack and service loop at each end. The cut adds both strip lengths and is rounded up.
 */
final class Lengths {
  private final Rules rules;

  Lengths(Rules rules) {
    this.rules = rules;
  }

  double finishedMm(Route route) {
    return route.lengthMm()
        + route.toleranceWorstMm()
        + 2 * rules.slackPerEnd().value().mm()
        + 2 * rules.serviceLoop().value().mm();
  }

  double cutMm(double finishedMm, double stripAMm, double stripBMm) {
    double step = Math.max(1, rules.cutRounding().value().mm());
    double raw = finishedMm + stripAMm + stripBMm + rules.cutTolerance().value().mm();
    return Math.ceil(raw / step - 1e-9) * step;
  }
}
