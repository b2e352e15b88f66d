package org.loomwright.physics.heat;

import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;

/**
 * The method of FAA AC 43.13-1B chapter 11 (CHG 1): current of the single wire in free air, times
 * the altitude factor, times the bundle factor; then the conductor temperature at the current that
 * really flows, and the run length that keeps the voltage drop at that temperature.
 */
public final class FaaHandbook {
  /** Source of the formulas. */
  public static final String SOURCE = "FAA AC 43.13-1B par. 11-66";

  /** Highest altitude of the curve, m: 60 000 ft. */
  public static final double HIGHEST_M = 18_288;

  /** Altitudes of our points of figure 11-6, m: 0, 20 000 and 60 000 ft. */
  private static final double[] ALTITUDE_M = {0, 6096, HIGHEST_M};

  private static final double[] ALTITUDE_FACTOR = {1.0, 0.91, 0.79};

  private FaaHandbook() {}

  /**
   * Factor for thinner air, linear between the points 0 ft 1.0, 20 000 ft 0.91 (read in the
   * circular) and 60 000 ft 0.79 (from memory).
   *
   * @param altitudeM above sea level, 0 to 18 288 m
   */
  public static double altitudeFactor(double altitudeM) {
    Require.within("altitude", altitudeM, 0, HIGHEST_M, "m");
    int i = altitudeM <= ALTITUDE_M[1] ? 0 : 1;
    double part = (altitudeM - ALTITUDE_M[i]) / (ALTITUDE_M[i + 1] - ALTITUDE_M[i]);
    return ALTITUDE_FACTOR[i] + part * (ALTITUDE_FACTOR[i + 1] - ALTITUDE_FACTOR[i]);
  }

  /**
   * Factor for wires in a bundle; above 19 wires stricter than the figure, see the trace's source.
   *
   * @param wires wires in the bundle, 1 to 1000
   * @param loadedShare share of the bundle's capacity in use, above 0 to 1
   */
  public static double bundleFactor(int wires, double loadedShare) {
    Require.within("number of wires", wires, 1, 1000, "wires");
    Require.within("loaded share", 100 * loadedShare, 1e-6, 100, "%");
    return BundleCurves.factor(wires, loadedShare);
  }

  /**
   * @param currentA allowed in each wire, A
   * @param trace how it was reached
   */
  public record Allowed(double currentA, Trace trace) {}

  /**
   * Imax = I(free air) · altitude factor · bundle factor.
   *
   * @param freeAirA current that brings the single wire at sea level from the ambient to its
   *     rating, A: read off figure 11-4, or by {@link WireHeat#current}
   */
  public static Allowed allowed(double freeAirA, double altitudeM, int wires, double loadedShare) {
    Require.notNegative("free-air current", freeAirA, "A");
    double altitude = altitudeFactor(altitudeM);
    double bundle = bundleFactor(wires, loadedShare);
    double afterAltitude = freeAirA * altitude;
    double allowedA = afterAltitude * bundle;
    Trace trace =
        Trace.builder()
            .given("single wire in free air", freeAirA, "A")
            .given("altitude", altitudeM, "m")
            .given("wires in the bundle", wires, "1")
            .given("share of the bundle's capacity in use", loadedShare, "1")
            .line(
                "altitude factor",
                "linear between 1.0 at 0 m, 0.91 at 6096 m, 0.79 at 18288 m",
                altitude,
                "1",
                "AC 43.13-1B figure 11-6; first and last point from memory")
            .line("after altitude", "product", afterAltitude, "A", SOURCE)
            .line("bundle factor", "curve", bundle, "1", BundleCurves.SOURCE)
            .line("allowed current", "product", allowedA, "A", SOURCE)
            .build();
    return new Allowed(allowedA, trace);
  }

  /**
   * Conductor temperature T2 = T1 + (TR - T1) √(I2/Imax), °C. The circular itself calls this quite
   * conservative: a rise with the square of the current would be lower. The root is from memory and
   * agrees with the worked result.
   *
   * @param ambientC T1, °C, -60 to 250
   * @param ratingC TR, °C, not below the ambient, up to 300
   * @param currentA I2, A, from 0 to Imax
   * @param allowedA Imax, allowed at TR, A
   */
  public static double conductorC(
      double ambientC, double ratingC, double currentA, double allowedA) {
    Require.within("ambient temperature", ambientC, -60, 250, "°C");
    Require.within("conductor rating", ratingC, ambientC, 300, "°C");
    Require.positive("allowed current", allowedA, "A");
    Require.within("circuit current", currentA, 0, allowedA, "A");
    return ambientC + (ratingC - ambientC) * Math.sqrt(currentA / allowedA);
  }

  /**
   * Run length that keeps the drop of the 20 °C length: L2 = 254.5 L1 / (234.5 + T2), copper.
   *
   * @param lengthAt20C L1, any unit, above zero
   * @param conductorC T2, °C, -60 to 300
   * @return L2 in the unit of L1
   */
  public static double correctedLength(double lengthAt20C, double conductorC) {
    Require.positive("run length", lengthAt20C, "(any unit)");
    Require.within("conductor temperature", conductorC, -60, 300, "°C");
    return 254.5 * lengthAt20C / (234.5 + conductorC);
  }
}
