package org.loomwright.planner.kit;

import java.util.List;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Design;

/**
 * A designed kit.
 *
 * @param sets cases of each component
 * @param design what is made
 * @param checks checks
 */
public record Made(List<CaseSet> sets, Design design, List<Check> checks) {
  public Made {
    sets = List.copyOf(sets);
    checks = List.copyOf(checks);
  }
}
