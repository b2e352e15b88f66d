package org.loomwright.model.design;

import java.util.List;
import org.loomwright.model.kit.Kit;

/**
 * Everything worked out for one kit.
 *
 * @param kit the order
 * @param builds how builds were split
 * @param gap gap of each need
 * @param fit modules and coding
 * @param ways all ways found, forbidden ones included
 * @param cases cases
 * @param unserved builds that can't be served
 * @param design what is made
 * @param harness how the leads lie together
 * @param checks checks
 * @param protections fuses against wires
 * @param networks solved networks: each combination of cases with all loads on at lowest supply
 * @param guide instructions
 * @param proof proof
 * @param notes what a reader should know of how the plan was made
 */
public record Plan(
    Kit kit,
    BuildCount builds,
    List<NeedGap> gap,
    Fit fit,
    List<WayLine> ways,
    List<Case> cases,
    List<Unserved> unserved,
    Design design,
    Harness harness,
    List<Check> checks,
    List<ProtectionCurve> protections,
    List<NetworkState> networks,
    Guide guide,
    Proof proof,
    List<String> notes) {
  public Plan {
    gap = List.copyOf(gap);
    ways = List.copyOf(ways);
    cases = List.copyOf(cases);
    unserved = List.copyOf(unserved);
    checks = List.copyOf(checks);
    protections = List.copyOf(protections);
    networks = List.copyOf(networks);
    notes = List.copyOf(notes);
  }

  /** The worst verdict of all checks; holds when there are none. */
  public Verdict worst() {
    return checks.stream().map(Check::verdict).reduce(Verdict.HOLDS, Verdict::worse);
  }

  /** True when every build is served, the proof is complete and no check fails. */
  public boolean releasable() {
    return unserved.isEmpty() && proof.proven() && worst() != Verdict.FAILS;
  }
}
