package org.loomwright.physics.packing;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.physics.Require;

/** Looks at a packing afresh, knowing nothing of how it was found. */
public final class PackingCheck {
  /** What counts as touching, as a share of the outer radius: rounding. */
  private static final double TOUCH = 1e-9;

  private PackingCheck() {}

  /**
   * What is wrong with a packing, one sentence each; empty when it holds.
   *
   * @param radiiMm the circles that were to be packed, in order, mm
   */
  public static List<String> problems(Packing packing, List<Double> radiiMm) {
    List<String> problems = new ArrayList<>();
    List<Double> packed = packing.circles().stream().map(Circle::radiusMm).toList();
    if (!packed.equals(radiiMm)) {
      problems.add("the circles packed are not those given: " + packed + ", not " + radiiMm);
    }
    double slackMm = TOUCH * packing.radiusMm();
    List<Circle> circles = packing.circles();
    for (int i = 0; i < circles.size(); i++) {
      Circle a = circles.get(i);
      double outsideMm = Math.hypot(a.xMm(), a.yMm()) + a.radiusMm() - packing.radiusMm();
      if (!(outsideMm <= slackMm)) {
        problems.add("circle " + (i + 1) + " sticks out by " + Require.text(outsideMm) + " mm");
      }
      for (int j = 0; j < i; j++) {
        Circle b = circles.get(j);
        double gapMm =
            Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm()) - a.radiusMm() - b.radiusMm();
        if (!(gapMm >= -slackMm)) {
          problems.add(
              "circles "
                  + (j + 1)
                  + " and "
                  + (i + 1)
                  + " overlap by "
                  + Require.text(-gapMm)
                  + " mm");
        }
      }
    }
    if (!(packing.lowerBoundMm() <= packing.radiusMm() + slackMm)) {
      problems.add("the lower bound lies above the radius");
    }
    return problems;
  }
}
