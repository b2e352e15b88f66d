package org.loomwright.physics.heat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;

/**
 * Balance of one section: heat of every wire at its temperature against what the outside gives off.
 *
 * <p>Heat rises with temperature and temperature with heat, both steadily, and a kelvin more makes
 * less than a kelvin's worth of heat more; so going round from the ambient climbs to the only
 * balance. Each round brings it nearer by at least a fifth.
 *
 * @param section what was balanced
 * @param conductorC temperatures in the order of the section's wires, °C
 * @param middleRiseK rise of the middle over the bare surface, K
 * @param heatWPerM heat of all wires, W/m
 * @param flow temperatures outside
 */
record BundleState(
    Section section,
    List<Double> conductorC,
    double middleRiseK,
    double heatWPerM,
    Surroundings.Flow flow) {
  private static final int ROUNDS = 400;
  private static final double SETTLED_K = 1e-10;

  /**
   * @param wires densest heat first
   * @param bundled whether the wires lie in a bundle; if not it is a single wire, with nothing
   *     between its insulation and the surface
   * @param around bundle diameter, coverings and air
   */
  record Section(List<LoadedWire> wires, boolean bundled, Surroundings around) {}

  /** Temperature in the middle, between the wires; every wire's own rises with it. */
  double middleC() {
    return flow.bareC() + middleRiseK;
  }

  double hottestC() {
    return conductorC.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
  }

  /** The balance; empty if a conductor would melt. */
  static Optional<BundleState> solve(Section section) {
    List<LoadedWire> wires = section.wires();
    int n = wires.size();
    double[] weight = section.bundled() ? ringWeights(wires) : new double[n];
    double[] insulation = new double[n];
    for (int i = 0; i < n; i++) {
      insulation[i] = HeatBalance.insulation(wires.get(i).conductor());
    }
    double[] t = new double[n];
    Arrays.fill(t, section.around().ambientC());
    double[] q = new double[n];
    for (int round = 0; round < ROUNDS; round++) {
      double sum = 0;
      double middle = 0;
      for (int i = 0; i < n; i++) {
        LoadedWire w = wires.get(i);
        q[i] = w.currentA() * w.currentA() * w.conductor().resistanceOhmPerM(t[i]);
        sum += q[i];
        middle += q[i] * weight[i];
      }
      Surroundings.Flow flow = section.around().atHeat(sum);
      double change = 0;
      for (int i = 0; i < n; i++) {
        double next = flow.bareC() + middle + q[i] * insulation[i];
        if (!(next < Copper.MELTING_C)) {
          return Optional.empty();
        }
        change = Math.max(change, Math.abs(next - t[i]));
        t[i] = next;
      }
      if (change < SETTLED_K || round == ROUNDS - 1) {
        return Optional.of(
            new BundleState(section, Arrays.stream(t).boxed().toList(), middle, sum, flow));
      }
    }
    throw new IllegalStateException("the last round returns");
  }

  /**
   * Whether the balance of a section can be hotter in the middle than a temperature. Heat is taken
   * as if the middle had that temperature; if the section then gives off this heat at a lower one,
   * so does it at its balance.
   */
  static boolean canBeHotter(Section section, double middleC) {
    List<LoadedWire> wires = section.wires();
    double[] weight = section.bundled() ? ringWeights(wires) : new double[wires.size()];
    double sum = 0;
    double rise = 0;
    for (int i = 0; i < wires.size(); i++) {
      LoadedWire w = wires.get(i);
      OptionalDouble t = conductorC(w, middleC);
      if (t.isEmpty()) {
        return true;
      }
      double q = w.currentA() * w.currentA() * w.conductor().resistanceOhmPerM(t.getAsDouble());
      sum += q;
      rise += q * weight[i];
    }
    return section.around().atHeat(sum).bareC() + rise > middleC + SETTLED_K;
  }

  /**
   * Temperature of a conductor whose insulation lies in the middle: T = middle + p (234.5 + T) with
   * p = I² r20 / 254.5 · insulation, solved for T; empty if it would melt.
   */
  static OptionalDouble conductorC(LoadedWire wire, double middleC) {
    Conductor c = wire.conductor();
    double perKelvin =
        wire.currentA()
            * wire.currentA()
            * c.ohmPerM20C()
            * HeatBalance.insulation(c)
            / (Copper.ZERO_RESISTANCE_C + 20);
    double t = (middleC + Copper.ZERO_RESISTANCE_C * perKelvin) / (1 - perKelvin);
    return perKelvin < 1 && t < Copper.MELTING_C ? OptionalDouble.of(t) : OptionalDouble.empty();
  }

  /** Rise of the middle per W/m in each wire's ring, K·m/W. */
  static double[] ringWeights(List<LoadedWire> wires) {
    int n = wires.size();
    double[] weight = new double[n];
    double total = 0;
    for (LoadedWire w : wires) {
      total += square(w.conductor().overallDiameterMm());
    }
    double inner = 0;
    for (int i = 0; i < n; i++) {
      double outer = inner + square(wires.get(i).conductor().overallDiameterMm()) / total;
      double mean = (sLogS(outer) - sLogS(inner)) / (outer - inner);
      weight[i] = (1 - mean) / (4 * Math.PI * HeatBalance.BUNDLE_W_PER_MK);
      inner = outer;
    }
    return weight;
  }

  private static double sLogS(double s) {
    return s <= 0 ? 0 : s * Math.log(s);
  }

  private static double square(double x) {
    return x * x;
  }
}
