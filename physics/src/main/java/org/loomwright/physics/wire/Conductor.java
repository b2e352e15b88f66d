package org.loomwright.physics.wire;

import java.util.List;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;

/**
 * A copper conductor with its insulation.
 *
 * @param label as people write it, e.g. "2.5 mm²", "14 AWG", "2/0 AWG"
 * @param areaMm2 conductor cross-section, mm²
 * @param ohmPerM20C resistance at 20 °C, ohm per metre
 * @param conductorDiameterMm diameter over the strands, mm
 * @param overallDiameterMm diameter over the insulation, mm; larger than the conductor's
 * @param source where the figures come from
 */
public record Conductor(
    String label,
    double areaMm2,
    double ohmPerM20C,
    double conductorDiameterMm,
    double overallDiameterMm,
    String source) {
  /**
   * Checks that sizes are positive and the insulation lies outside the conductor.
   *
   * @throws SumException if not
   */
  public Conductor {
    Require.positive("conductor area of " + label, areaMm2, "mm²");
    Require.positive("resistance of " + label, ohmPerM20C, "ohm/m");
    Require.positive("conductor diameter of " + label, conductorDiameterMm, "mm");
    Require.positive("outside diameter of " + label, overallDiameterMm, "mm");
    if (!(overallDiameterMm > conductorDiameterMm)) {
      throw new SumException(
          "outside diameter of "
              + label
              + " must be larger than its conductor's "
              + Require.text(conductorDiameterMm)
              + " mm, but is "
              + Require.text(overallDiameterMm)
              + " mm");
    }
  }

  /**
   * A gauge of the American series, -3 to 40, thin wall. Solid geometry of ASTM B258.
   *
   * @param gauge the number; 0, -1, -2, -3 stand for 1/0, 2/0, 3/0, 4/0
   * @throws UnknownConductorException outside that range
   */
  public static Conductor awg(int gauge) {
    return AwgTable.find(gauge);
  }

  /**
   * A size of the ISO 6722-1 table (from memory), thin wall.
   *
   * @param areaMm2 nominal area
   * @throws UnknownConductorException if the table has no such size
   */
  public static Conductor metric(double areaMm2) {
    return MetricTable.find(areaMm2);
  }

  /** All metric sizes, 0.13 to 120 mm², smallest first. */
  public static List<Conductor> metricCatalogue() {
    return MetricTable.SIZES;
  }

  /** Gauges kept in stock by the trade, 26 AWG to 4/0, smallest wire first (common practice). */
  public static List<Conductor> awgCatalogue() {
    return AwgTable.sizes();
  }

  /** Diameter in mm of the solid wire of a gauge, ASTM B258: 0.127 · 92^((36-n)/39). */
  public static double awgSolidDiameterMm(int gauge) {
    return AwgTable.solidDiameterMm(gauge);
  }

  /**
   * Resistance per metre at a conductor temperature, ohm/m; see {@link Copper#resistanceFactor}.
   */
  public double resistanceOhmPerM(double temperatureC) {
    return ohmPerM20C * Copper.resistanceFactor(temperatureC);
  }
}
