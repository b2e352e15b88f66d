package org.loomwright.planner.kit;

import java.util.List;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.NetworkState;

/**
 * A designed kit.
 *
 * @param sets cases of each component
 * @param design what is made
 * @param checks checks
 * @param networks solved networks
 * @param notes what a reader should know of how the networks were solved
 */
public record Made(
    List<CaseSet> sets,
    Design design,
    List<Check> checks,
    List<NetworkState> networks,
    List<String> notes) {
  public Made {
    sets = List.copyOf(sets);
    checks = List.copyOf(checks);
    networks = List.copyOf(networks);
    notes = List.copyOf(notes);
  }
}
