package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomwright.model.design.Verdict;
import org.loomwright.planner.electrics.NeedFigures;
import org.loomwright.planner.need.NeedAt;

/**
 * How a kit with given wires stands in all that depends on more than one wire: heat in bundles,
 * drops, voltages. Two lists of the same kit have the same figures in the same order.
 *
 * @param verdicts verdict of each figure
 */
record Levels(List<Verdict> verdicts) {
  Levels {
    verdicts = List.copyOf(verdicts);
  }

  /**
   * Reads them off.
   *
   * @param heat verdicts of the leads' heat, lead by lead
   */
  static Levels of(Evaluation evaluation, List<Verdict> heat, DropLimits limits) {
    List<Verdict> all = new ArrayList<>(heat);
    limits.drops(evaluation).forEach(it -> all.add(it.verdict()));
    for (Evaluation.Solved solved : evaluation.cases()) {
      for (Map.Entry<NeedAt, NeedFigures> one : solved.figures().needs().entrySet()) {
        all.add(limits.voltage(one.getKey(), one.getValue()));
      }
    }
    return new Levels(all);
  }

  /** Whether no figure has a worse verdict than in another list of the same kit. */
  boolean noWorseThan(Levels other) {
    for (int i = 0; i < verdicts.size(); i++) {
      if (verdicts.get(i).compareTo(other.verdicts().get(i)) > 0) {
        return false;
      }
    }
    return verdicts.size() == other.verdicts().size();
  }
}
