package org.loomwright.physics.heat;

import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.packing.EqualWires;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;

/**
 * Steady heat balance of a wire, alone or in a bundle of equal wires, stretched horizontally in
 * still air.
 *
 * <p>Joule heat at conductor temperature = natural convection + radiation at the surface; the
 * conductor is hotter than the surface by the heat times the thermal resistance between them. A
 * bundle is one cylinder of the bundle's diameter. Of its wires, those that carry current are taken
 * to lie together in the middle (the worst place): heat per metre q from a core of share n/N of the
 * section gives
 *
 * <pre>ΔT = q / (4 π k) + q ln(√(N/n)) / (2 π k)</pre>
 *
 * plus each wire's own insulation. k is the effective conductivity across the bundle.
 */
final class HeatBalance {
  /** Conductivity of wire insulation, W/(m·K): low end of 0.15 to 0.19 for PVC (from memory). */
  static final double INSULATION_W_PER_MK = 0.15;

  /** Effective conductivity across a bundle with air between the wires, W/(m·K) (from memory). */
  static final double BUNDLE_W_PER_MK = 0.12;

  /** Emissivity of insulated wire, ECSS-Q-ST-30-11C Annex C; below the usual 0.8 to 0.95. */
  static final double EMISSIVITY = 0.75;

  private static final int HALVINGS = 80;

  /** Two balances of the same heat count as equal within this share. */
  private static final double ROUNDING = 1e-11;

  private final Conductor conductor;
  private final double ambientC;
  private final int wires;
  private final double diameterMm;
  private final double loadedWires;
  private final double resistanceToSurface;

  private HeatBalance(
      Conductor conductor,
      double ambientC,
      int wires,
      double diameterMm,
      double loadedWires,
      double resistanceToSurface) {
    this.conductor = conductor;
    this.ambientC = ambientC;
    this.wires = wires;
    this.diameterMm = diameterMm;
    this.loadedWires = loadedWires;
    this.resistanceToSurface = resistanceToSurface;
  }

  /**
   * One balanced state.
   *
   * @param surfaceC temperature of the outside
   * @param conductorC temperature of the hottest conductor
   * @param currentA current in each loaded wire
   * @param heat what the outside gives off
   */
  record State(double surfaceC, double conductorC, double currentA, SurfaceHeat heat) {}

  static HeatBalance single(Conductor c, double ambientC) {
    return new HeatBalance(c, ambientC, 1, c.overallDiameterMm(), 1, insulation(c));
  }

  static HeatBalance bundle(Conductor c, double ambientC, int wires, double loadedWires) {
    double spread =
        1 / (4 * Math.PI * BUNDLE_W_PER_MK)
            + Math.log(Math.sqrt(wires / loadedWires)) / (2 * Math.PI * BUNDLE_W_PER_MK);
    return new HeatBalance(
        c,
        ambientC,
        wires,
        c.overallDiameterMm() * EqualWires.ratio(wires),
        loadedWires,
        spread + insulation(c) / loadedWires);
  }

  /** Thermal resistance of one wire's insulation, K·m/W: ln(D/d) / (2 π k). */
  static double insulation(Conductor c) {
    return Math.log(c.overallDiameterMm() / c.conductorDiameterMm())
        / (2 * Math.PI * INSULATION_W_PER_MK);
  }

  /** The state in which the conductor has a temperature at or above the ambient. */
  State atConductor(double conductorC) {
    double low = ambientC;
    double high = conductorC;
    for (int i = 0; i < HALVINGS; i++) {
      double mid = (low + high) / 2;
      double q = SurfaceHeat.of(diameterMm, mid, ambientC, EMISSIVITY).totalWPerM();
      if (mid + q * resistanceToSurface > conductorC) {
        high = mid;
      } else {
        low = mid;
      }
    }
    return atSurface(low);
  }

  /**
   * The state at a current. Current rises steadily with surface temperature, so halving finds the
   * only solution.
   *
   * @throws SumException if the conductor would melt
   */
  State atCurrent(double currentA) {
    State melting = atConductor(Copper.MELTING_C);
    if (melting.currentA() < currentA) {
      throw new SumException(
          conductor.label()
              + " has no steady temperature below the melting point of copper at "
              + Require.text(currentA)
              + " A");
    }
    double low = ambientC;
    double high = melting.surfaceC();
    for (int i = 0; i < HALVINGS; i++) {
      double mid = (low + high) / 2;
      if (atSurface(mid).currentA() > currentA) {
        high = mid;
      } else {
        low = mid;
      }
    }
    return atSurface(low);
  }

  private State atSurface(double surfaceC) {
    SurfaceHeat heat = SurfaceHeat.of(diameterMm, surfaceC, ambientC, EMISSIVITY);
    double q = heat.totalWPerM();
    double conductorC = Math.min(surfaceC + q * resistanceToSurface, Copper.MELTING_C);
    double ohmPerM = conductor.resistanceOhmPerM(conductorC);
    return new State(surfaceC, conductorC, Math.sqrt(q / (loadedWires * ohmPerM)), heat);
  }

  /**
   * Whether the conductor is hotter than a temperature at a current: with it, the outside would
   * give off less than the wires make.
   *
   * @param conductorC at or above the ambient, °C
   */
  boolean isHotterThan(double conductorC, double currentA) {
    double q = currentA * currentA * conductor.resistanceOhmPerM(conductorC) * loadedWires;
    double surfaceC = conductorC - q * resistanceToSurface;
    return surfaceC < ambientC
        || SurfaceHeat.of(diameterMm, surfaceC, ambientC, EMISSIVITY).totalWPerM()
            < q * (1 - ROUNDING);
  }

  int wires() {
    return wires;
  }

  double diameterMm() {
    return diameterMm;
  }

  double loadedWires() {
    return loadedWires;
  }

  double resistanceToSurface() {
    return resistanceToSurface;
  }
}
