package org.loomwright.planner.kit;

import java.util.List;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.NetworkState;
import org.loomwright.model.design.ProtectionCurve;

/**
 * A designed kit.
 *
 * @param sets cases of each component
 * @param design what is made
 * @param harness how the leads lie together
 * @param checks checks
 * @param drops what feeds and grounds lose, need by need and case by case
 * @param protections fuses against wires
 * @param networks solved networks
 * @param notes what a reader should know of how the networks were solved
 */
public record Made(
    List<CaseSet> sets,
    Design design,
    Harness harness,
    List<Check> checks,
    List<NeedDrop> drops,
    List<ProtectionCurve> protections,
    List<NetworkState> networks,
    List<String> notes) {
  public Made {
    sets = List.copyOf(sets);
    checks = List.copyOf(checks);
    drops = List.copyOf(drops);
    protections = List.copyOf(protections);
    networks = List.copyOf(networks);
    notes = List.copyOf(notes);
  }
}
