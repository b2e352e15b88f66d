package org.loomwright.physics.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.physics.Trace;

/** Turns the worst balanced section of a bundle into the temperatures of all its wires. */
final class BundleReport {
  private BundleReport() {}

  /** Empty if a wire would melt. */
  static Optional<BundleHeat.Result> of(BundleHeat.Bundle bundle, BundleState worst) {
    List<Double> temperatures = new ArrayList<>();
    int hottest = 0;
    for (LoadedWire wire : bundle.wires()) {
      OptionalDouble here = conductorC(wire, bundle.ambientC(), worst.middleC());
      if (here.isEmpty()) {
        return Optional.empty();
      }
      temperatures.add(here.getAsDouble());
      if (here.getAsDouble() > temperatures.get(hottest)) {
        hottest = temperatures.size() - 1;
      }
    }
    return Optional.of(
        new BundleHeat.Result(
            temperatures,
            hottest,
            worst.flow().bareC(),
            worst.flow().outsideC(),
            worst.heatWPerM(),
            trace(bundle, worst, hottest, temperatures.get(hottest))));
  }

  /** Temperature in the middle of the worst section, or alone where that is hotter. */
  private static OptionalDouble conductorC(LoadedWire wire, double ambientC, double middleC) {
    BundleState.Section alone = alone(wire, ambientC);
    if (!BundleState.canBeHotter(alone, middleC)) {
      return BundleState.conductorC(wire, middleC);
    }
    return BundleState.solve(alone)
        .map(s -> OptionalDouble.of(s.hottestC()))
        .orElseGet(OptionalDouble::empty);
  }

  private static BundleState.Section alone(LoadedWire wire, double ambientC) {
    Surroundings air = new Surroundings(wire.conductor().overallDiameterMm(), ambientC, List.of());
    return new BundleState.Section(List.of(wire), false, air);
  }

  /** How one wire comes to its temperature. */
  static Trace trace(BundleHeat.Bundle bundle, BundleState worst, int index, double conductorC) {
    LoadedWire wire = bundle.wires().get(index);
    BundleState.Section alone = alone(wire, bundle.ambientC());
    BundleState decides =
        BundleState.canBeHotter(alone, worst.middleC())
            ? BundleState.solve(alone).orElse(worst)
            : worst;
    return BundleTrace.of(bundle, decides, wire, conductorC);
  }
}
