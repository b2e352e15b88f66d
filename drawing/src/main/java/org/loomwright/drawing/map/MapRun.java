package org.loomwright.drawing.map;

import java.util.List;
import org.loomwright.drawing.ink.Spot;

/**
 * A run on the map.
 *
 * @param id the run
 * @param from index of the stop at one end
 * @param to index of the stop at the other end
 * @param lengthMm its length in the vehicle, as made where leads lie on it
 * @param state what it is to the kit
 * @param leads indices of the leads on it
 * @param bends points of the plan view it goes over, from one end to the other, in the vehicle's mm
 * @param joints joints on it
 */
record MapRun(
    String id,
    int from,
    int to,
    double lengthMm,
    RunState state,
    List<Integer> leads,
    List<Spot> bends,
    List<JointDot> joints) {
  MapRun {
    leads = List.copyOf(leads);
    bends = List.copyOf(bends);
    joints = List.copyOf(joints);
  }

  /**
   * A joint on a run.
   *
   * @param id the joint
   * @param share where it lies, as share of the run's length from {@code from}
   */
  record JointDot(String id, double share) {}
}
