package org.loomwright.physics.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.physics.Trace;
import org.loomwright.physics.wire.Conductor;

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
    Surroundings air = new Surroundings(wire.conductor().overallDiameterMm(), ambientC, List.of());
    BundleState.Section alone = new BundleState.Section(List.of(wire), false, air);
    if (!BundleState.canBeHotter(alone, middleC)) {
      return BundleState.conductorC(wire, middleC);
    }
    return BundleState.solve(alone)
        .map(s -> OptionalDouble.of(s.hottestC()))
        .orElseGet(OptionalDouble::empty);
  }

  private static Trace trace(
      BundleHeat.Bundle bundle, BundleState worst, int hottest, double hottestC) {
    LoadedWire wire = bundle.wires().get(hottest);
    Conductor c = wire.conductor();
    Surroundings around = worst.section().around();
    Trace.Builder trace =
        Trace.builder()
            .given("ambient", bundle.ambientC(), "°C")
            .given("wires in the bundle", bundle.wires().size(), "1")
            .given("current in " + wire.name(), wire.currentA(), "A")
            .line(
                "wires of the worst section, densest heat first",
                "worst of all",
                worst.section().wires().size(),
                "1",
                "little-loaded wires are not relied on for cooling")
            .line(
                "diameter of that section",
                bundle.diameterMm().isPresent()
                        && worst.section().wires().size() == bundle.wires().size()
                    ? "given"
                    : "sqrt(sum d² / 0.9069), two wires side by side",
                around.bareDiameterMm(),
                "mm",
                "tightest packing, cautious");
    for (Covering covering : around.coverings()) {
      trace.line(
          covering.name(), "gap and wall", covering.addedDiameterMm() / 2, "mm", covering.source());
    }
    return trace
        .line("heat of the section", "sum of I² r(T)", worst.heatWPerM(), "W/m", "Joule's law")
        .line(
            "outermost surface",
            "convection + radiation = heat",
            worst.flow().outsideC(),
            "°C",
            SurfaceHeat.CONVECTION_SOURCE)
        .line("bundle surface", "through the coverings", worst.flow().bareC(), "°C", "conduction")
        .line(
            "rise of the middle",
            "sum of q/(4 pi k) (1 - (s1 ln s1 - s0 ln s0)/(s1 - s0)), k = 0.12 W/(m K)",
            worst.middleRiseK(),
            "K",
            "heat conduction in a round section; k from memory")
        .line(
            "resistance per metre of " + c.label() + " at temperature",
            "r20 * (234.5 + T) / 254.5",
            c.resistanceOhmPerM(hottestC),
            "ohm/m",
            c.source())
        .line(
            "hottest conductor: " + wire.name(),
            "middle + q ln(D/d) / (2 pi k), k = 0.15 W/(m K)",
            hottestC,
            "°C",
            "heat balance")
        .build();
  }
}
