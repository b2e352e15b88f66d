package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Checks a solved network without the solver: takes only the elements and the result, and asks
 * whether every figure is there and a number, currents balance at every node, every branch obeys
 * its own law, and the power that comes in goes out. A figure that is not a number always fails.
 */
public final class NetworkCheck {
  /** Current that may be left over at a node, A, beside the share of the currents there. */
  private static final double BALANCE_A = 1e-6;

  /** Voltage by which a branch may miss its law, V, beside the share of the largest voltage. */
  private static final double LAW_V = 1e-8;

  private static final double POWER_W = 1e-5;
  private static final double SHARE = 1e-9;

  private NetworkCheck() {}

  /**
   * @param faults what does not hold, one sentence each; empty if all holds
   * @param worstBalanceA largest sum of currents left over at a node, A
   * @param worstLawV largest voltage by which a branch misses its law, V
   * @param powerGapW power that sources bring less what loads, links and sources use up, W
   */
  public record Report(
      List<String> faults, double worstBalanceA, double worstLawV, double powerGapW) {
    /** Copies the faults. */
    public Report {
      faults = List.copyOf(faults);
    }

    /** Whether everything holds. */
    public boolean holds() {
      return faults.isEmpty();
    }
  }

  /** Checks one result. */
  public static Report check(Solved solved) {
    List<String> faults = missing(solved);
    return faults.isEmpty()
        ? figures(solved)
        : new Report(faults, Double.NaN, Double.NaN, Double.NaN);
  }

  private static List<String> missing(Solved solved) {
    List<String> faults = new ArrayList<>();
    for (Element e : solved.network().elements()) {
      BranchFlow flow = solved.flows().get(e.name());
      if (flow == null) {
        faults.add("no current for element " + e.name());
      } else if (!flow.from().equals(e.from()) || !flow.to().equals(e.to())) {
        faults.add("the current of element " + e.name() + " is given between other nodes");
      }
      for (String node : List.of(e.from(), e.to())) {
        if (!solved.voltagesV().containsKey(node)) {
          faults.add("no voltage for node " + node);
        }
      }
    }
    return faults;
  }

  private static Report figures(Solved solved) {
    List<String> faults = new ArrayList<>();
    Map<String, Double> voltages = solved.voltagesV();
    double reference = voltages.getOrDefault(solved.network().reference(), Double.NaN);
    if (!(reference == 0)) {
      faults.add("the reference node has " + reference + " V");
    }
    double highestV = 0;
    for (double v : voltages.values()) {
      highestV = Math.max(highestV, Math.abs(v));
    }
    Map<String, double[]> balance = new LinkedHashMap<>();
    double worstLaw = 0;
    double bringW = 0;
    double useW = 0;
    double movedW = 0;
    for (Element e : solved.network().elements()) {
      BranchFlow flow = solved.flow(e.name());
      double amps = flow.currentA();
      double across = solved.voltageV(e.from()) - solved.voltageV(e.to());
      double gap = lawGapV(e, across, amps);
      worstLaw = Math.max(worstLaw, Math.abs(gap));
      if (!(Math.abs(gap) <= LAW_V + SHARE * highestV)) {
        faults.add(text("element %s misses its law by %.3g V", e.name(), gap));
      }
      if (!(Math.abs(flow.voltageV() - across) <= LAW_V)) {
        faults.add(
            text(
                "the voltage across %s is not that of its nodes (%.3g V)",
                e.name(), flow.voltageV() - across));
      }
      double lossW = e instanceof Load ? 0 : amps * amps * ohm(e);
      if (!(Math.abs(flow.lossW() - lossW) <= POWER_W + 1e-6 * lossW)) {
        faults.add(text("the loss of %s is off by %.3g W", e.name(), flow.lossW() - lossW));
      }
      book(balance, e.from(), -amps);
      book(balance, e.to(), amps);
      bringW += e instanceof Source s ? s.emfV() * amps : 0;
      useW += e instanceof Load ? across * amps : lossW;
      movedW += Math.abs(across * amps);
    }
    double worstBalance = 0;
    for (Map.Entry<String, double[]> node : balance.entrySet()) {
      double left = node.getValue()[0];
      worstBalance = Math.max(worstBalance, Math.abs(left));
      if (!(Math.abs(left) <= BALANCE_A + SHARE * node.getValue()[1])) {
        faults.add(text("at node %s %.3g A are left over", node.getKey(), left));
      }
    }
    double powerGap = bringW - useW;
    if (!(Math.abs(powerGap) <= POWER_W + SHARE * movedW)) {
      faults.add(text("power in less power out of %s is %.3g W", "the network", powerGap));
    }
    return new Report(faults, worstBalance, worstLaw, powerGap);
  }

  private static String text(String form, String what, double value) {
    return String.format(Locale.ROOT, form, what, value);
  }

  /** Sum of currents into the node, and sum of their magnitudes. */
  private static void book(Map<String, double[]> balance, String node, double intoA) {
    double[] sums = balance.computeIfAbsent(node, k -> new double[2]);
    sums[0] += intoA;
    sums[1] += Math.abs(intoA);
  }

  /** Voltage by which a branch misses its own law. */
  private static double lawGapV(Element e, double across, double amps) {
    if (e instanceof Source s) {
      return s.emfV() - s.internalOhm() * amps + across;
    }
    if (e instanceof ConstantCurrent c) {
      // A current has no voltage of its own: its gap in amperes counts as if over one ohm.
      return across >= c.cutOffV() - LAW_V || c.currentA() == 0 ? amps - c.currentA() : Double.NaN;
    }
    if (e instanceof ConstantPower p) {
      if (p.powerW() == 0) {
        return amps;
      }
      return across >= p.cutOffV() - LAW_V ? across - p.powerW() / amps : Double.NaN;
    }
    return across - ohm(e) * amps;
  }

  /** Resistance from the bare data, not from the element's own sum. */
  private static double ohm(Element e) {
    if (e instanceof Wire w) {
      double perM20 = w.conductor().ohmPerM20C();
      return perM20 * w.lengthM() * (1 + (w.temperatureC() - 20) / 254.5);
    }
    if (e instanceof Joint j) {
      return j.ohm();
    }
    if (e instanceof ConstantResistance r) {
      return r.ohm();
    }
    return e instanceof Source s ? s.internalOhm() : Double.NaN;
  }
}
