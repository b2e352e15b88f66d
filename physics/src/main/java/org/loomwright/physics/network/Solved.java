package org.loomwright.physics.network;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;

/**
 * A steady state of a network with all its loads running.
 *
 * @param network what was solved
 * @param voltagesV voltage of each node against the reference, V; the reference (0) first
 * @param flows what flows through each element, by name, in the network's order
 * @param iterations Newton steps taken; 1 for a network without constant-power loads
 * @param imbalanceA largest sum of currents left over at any node, A
 */
public record Solved(
    Network network,
    Map<String, Double> voltagesV,
    Map<String, BranchFlow> flows,
    int iterations,
    double imbalanceA)
    implements NetworkOutcome {
  /** Copies the maps, keeping their order. */
  public Solved {
    voltagesV = Collections.unmodifiableMap(new LinkedHashMap<>(voltagesV));
    flows = Collections.unmodifiableMap(new LinkedHashMap<>(flows));
  }

  /**
   * Voltage of a node against the reference, V.
   *
   * @throws SumException if the network has no such node
   */
  public double voltageV(String node) {
    Double v = voltagesV.get(node);
    if (v == null) {
      throw new SumException("the network has no node \"" + node + "\"");
    }
    return v;
  }

  /**
   * What flows through an element.
   *
   * @throws SumException if the network has no such element
   */
  public BranchFlow flow(String element) {
    BranchFlow flow = flows.get(element);
    if (flow == null) {
      throw new SumException("the network has no element \"" + element + "\"");
    }
    return flow;
  }

  /** Heat made in all links and internal resistances, W. */
  public double lossW() {
    return flows.values().stream().mapToDouble(BranchFlow::lossW).sum();
  }

  /** All figures: the elements given, the node voltages, the current of each branch. */
  public Trace trace() {
    return NetworkTrace.of(this);
  }

  @Override
  public String message() {
    return String.format(
        Locale.ROOT,
        "solved: %d nodes, %d elements, %d iterations",
        voltagesV.size(),
        flows.size(),
        iterations);
  }
}
