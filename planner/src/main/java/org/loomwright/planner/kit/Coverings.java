package org.loomwright.planner.kit;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Covering;
import org.loomwright.model.parts.CoveringForm;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.rules.RunDefaults;
import org.loomwright.model.vehicle.Run;
import org.loomwright.physics.packing.BundleSize;
import org.loomwright.planner.route.Laying;
import org.loomwright.planner.watch.PlanningStopped;

/** The covering of a bundle, and what it does to the bundle's heat. */
final class Coverings {
  private final KitOrder order;
  private final Laying laying;
  private final Map<List<Double>, BundleSize.Result> packed = new HashMap<>();

  Coverings(KitOrder order) {
    this.order = order;
    this.laying = new Laying(order.vehicle(), order.rules());
  }

  /** The bundle as tight as found, its wires in the order given. */
  BundleSize.Result packed(List<Double> diametersMm) {
    PlanningStopped.ifAsked();
    return packed.computeIfAbsent(
        List.copyOf(diametersMm), it -> BundleSize.of(new BundleSize.Input(it)));
  }

  /** The cheapest covering that takes the bundle and the heat of its run; empty if none does. */
  Optional<Covering> of(Run run, List<Double> diametersMm) {
    double ambientC = laying.ambientC(run);
    return order.parts().coverings().stream()
        .filter(it -> it.rating().celsius() >= ambientC)
        .filter(it -> within(diametersMm, mm -> takes(it, mm)))
        .min(
            Comparator.comparing((Covering it) -> it.price().amount()).thenComparing(Covering::id));
  }

  private boolean takes(Covering covering, double bundleMm) {
    return covering.bundleMost().mm() >= bundleMm
        && fill(covering, bundleMm)
            .map(it -> it <= RunDefaults.conduitFill(order.rules()).value().fraction())
            .orElse(true);
  }

  /** Share of a conduit's inner section that a bundle takes; empty for what lies on the bundle. */
  static Optional<Double> fill(Covering covering, double bundleMm) {
    return covering
        .form()
        .filter(CoveringForm.CONDUIT::equals)
        .map(
            conduit -> {
              double share = bundleMm / covering.inner().orElse(covering.bundleMost()).mm();
              return share * share;
            });
  }

  /**
   * Whether a bundle's diameter is small enough. Packing takes its time, and most bundles are far
   * from any limit; so bounds on the diameter answer first.
   */
  private boolean within(List<Double> diametersMm, DoublePredicate enough) {
    double sumMm = diametersMm.stream().mapToDouble(it -> it).sum();
    double rootMm = Math.sqrt(diametersMm.stream().mapToDouble(it -> it * it).sum());
    // Circles of at most half the area of a round always find room in it (Fekete, Keldenich and
    // Scheffer 2019); wires in a row are no wider than their diameters together.
    if (enough.test(Math.min(sumMm, Math.sqrt(2) * rootMm))) {
      return true;
    }
    return enough.test(rootMm) && enough.test(packed(diametersMm).diameterMm());
  }

  /** Highest ambient along a run, °C: its own, or that of the hotter end. */
  double ambientC(Run run) {
    return laying.ambientC(run);
  }

  /** Diameter over a covering, mm. */
  static double overallMm(Covering part, List<Double> diametersMm, double bundleMm) {
    org.loomwright.physics.heat.Covering layer = layer(part, diametersMm);
    double insideMm =
        part.form().filter(CoveringForm.CONDUIT::equals).isPresent()
            ? part.inner().orElse(part.bundleMost()).mm()
            : bundleMm + 2 * layer.gapMm();
    return insideMm + 2 * layer.wallMm();
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
