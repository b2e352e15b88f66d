package org.loomwright.planner.kit;

import java.util.List;
import java.util.Map;
import org.loomwright.model.parts.Wire;
import org.loomwright.planner.electrics.CaseFigures;
import org.loomwright.planner.electrics.JointCase;

/**
 * The whole kit with given wires: every joint case solved, every lead in its bundles.
 *
 * @param wires wire of each strand
 * @param cases joint cases with their figures
 * @param currents current of each strand by case, A
 * @param heat each strand in each of its bundles
 */
record Evaluation(
    Map<Strand, Wire> wires,
    List<Solved> cases,
    Map<Strand, Map<String, Double>> currents,
    Map<Strand, List<BundleHeats.Hottest>> heat) {
  /**
   * A joint case with its figures.
   *
   * @param tuple the cases
   * @param joint the cases with their leads as they lie
   * @param figures what came out
   */
  record Solved(JointCases.Tuple tuple, JointCase joint, CaseFigures figures) {}

  /** Highest conductor temperature of a strand under its load, °C. */
  double conductorC(Strand strand) {
    return hottest(strand).conductorC();
  }

  /** Where a strand is hottest under its load. */
  BundleHeats.Hottest hottest(Strand strand) {
    return heat.getOrDefault(strand, List.of()).stream()
        .reduce((one, two) -> two.conductorC() > one.conductorC() ? two : one)
        .orElseThrow(() -> new IllegalStateException("no heat of " + strand.needs()));
  }

  /** Most current of a strand in any case, A. */
  double currentA(Strand strand) {
    return currents.getOrDefault(strand, Map.of()).values().stream()
        .mapToDouble(it -> it)
        .max()
        .orElse(0);
  }
}
