package org.loomwright.physics.heat;

import java.util.List;
import org.loomwright.physics.wire.Copper;

/** Heat one wire gives off by its conductor temperature, where it lies. */
final class WireLoss {
  private static final double HIGHEST_OUTSIDE_C = 1100;

  private WireLoss() {}

  /**
   * The smallest of what a wire loses alone, in its bundle and in the smaller bundles that {@link
   * WireHeat} looks at, and any of them covered.
   *
   * @return a curve up to the melting point of copper
   */
  static LossCurve of(WireHeat.Lying lying, List<Covering> coverings) {
    List<HeatBalance> balances = lying.balances();
    LossCurve least = curve(balances.get(0), lying.ambientC(), List.of());
    for (HeatBalance balance : balances) {
      if (balance != balances.get(0)) {
        least = least.smaller(curve(balance, lying.ambientC(), List.of()));
      }
      if (!coverings.isEmpty() && (balance.wires() > 1 || lying.wires() == 1)) {
        least = least.smaller(curve(balance, lying.ambientC(), coverings));
      }
    }
    return least;
  }

  private static LossCurve curve(HeatBalance balance, double ambientC, List<Covering> coverings) {
    Surroundings around = new Surroundings(balance.diameterMm(), ambientC, coverings);
    double hottestOutsideC =
        Roots.rising(
            t -> point(balance, around, t).temperatureC() - Copper.MELTING_C,
            ambientC,
            HIGHEST_OUTSIDE_C,
            1e-9);
    return LossCurve.of(t -> point(balance, around, t), ambientC, hottestOutsideC);
  }

  private static LossCurve.Point point(HeatBalance balance, Surroundings around, double outsideC) {
    Surroundings.Flow flow = around.atOutside(outsideC);
    double q = flow.heat().totalWPerM();
    return new LossCurve.Point(
        flow.bareC() + q * balance.resistanceToSurface(), q / balance.loadedWires());
  }
}
