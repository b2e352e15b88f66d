package org.loomwright.planner.kit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Covering;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;

/** The covering of a bundle, and what it does to the bundle's heat. */
final class Coverings {
  private final KitOrder order;

  Coverings(KitOrder order) {
    this.order = order;
  }

  /** The cheapest covering that takes the bundle and the heat of its run; empty if none does. */
  Optional<Covering> of(Run run, List<Double> diametersMm) {
    double bundleMm = bundleMm(diametersMm);
    double ambientC = ambientC(run);
    return order.parts().coverings().stream()
        .filter(it -> it.bundleMost().mm() >= bundleMm && it.rating().celsius() >= ambientC)
        .min(
            Comparator.comparing((Covering it) -> it.price().amount()).thenComparing(Covering::id));
  }

  /** Highest ambient along a run, °C: its own, or that of the hotter end. */
  double ambientC(Run run) {
    double endsC = Math.max(placeC(run.from()), placeC(run.to()));
    return run.ambient().map(it -> Math.max(it.celsius(), endsC)).orElse(endsC);
  }

  /** Bundle diameter by 1.2 times the root of the sum of squares (common practice), mm. */
  private static double bundleMm(List<Double> diametersMm) {
    return 1.2 * Math.sqrt(diametersMm.stream().mapToDouble(it -> it * it).sum());
  }

  private double placeC(String place) {
    return order
        .vehicle()
        .place(place)
        .map((Place it) -> it.ambient().celsius())
        .orElseThrow(() -> new IllegalStateException("no place " + place));
  }

  /**
   * The covering as a layer for the heat balance. Of a form that is not on file the half-lapped
   * cloth tape is assumed, the warmest of the tight ones.
   */
  static org.loomwright.physics.heat.Covering layer(Covering part, List<Double> diametersMm) {
    Optional<Double> wall = part.wall().map(Length::mm);
    org.loomwright.physics.heat.Covering usual =
        part.form()
            .map(
                form ->
                    switch (form) {
                      case TAPE -> org.loomwright.physics.heat.Covering.pvcTape();
                      case CLOTH_TAPE -> org.loomwright.physics.heat.Covering.clothTape();
                      case SLEEVE -> org.loomwright.physics.heat.Covering.braidedSleeve();
                      case SHRINK_TUBE ->
                          org.loomwright.physics.heat.Covering.shrinkTube(wall.orElse(1.0));
                      case CONDUIT ->
                          org.loomwright.physics.heat.Covering.conduit(gapMm(part, diametersMm));
                    })
            .orElseGet(org.loomwright.physics.heat.Covering::clothTape);
    return wall.map(
            mm ->
                new org.loomwright.physics.heat.Covering(
                    part.name(),
                    usual.gapMm(),
                    mm,
                    usual.wallWPerMK(),
                    part.source() + "; " + usual.source()))
        .orElse(usual);
  }

  // The widest gap: the bundle as tight as can be, in the conduit's inner diameter or, where that
  // is not on file, in the largest bundle it is made for.
  private static double gapMm(Covering part, List<Double> diametersMm) {
    double innerMm = part.inner().orElse(part.bundleMost()).mm();
    double tightMm = Math.sqrt(diametersMm.stream().mapToDouble(it -> it * it).sum());
    return Math.max(0, (innerMm - tightMm) / 2);
  }
}
