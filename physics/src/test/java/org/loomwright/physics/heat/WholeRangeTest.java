package org.loomwright.physics.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.loomwright.physics.SumException;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.wire.Class5;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.InsulationMaterial;

/** Over the whole stated range: a number within bounds, or a refusal in words. */
final class WholeRangeTest {
  @Provide
  Arbitrary<Conductor> conductors() {
    List<Conductor> all = new ArrayList<>(Conductor.metricCatalogue());
    all.addAll(Conductor.awgCatalogue());
    all.addAll(Class5.tinned());
    return Arbitraries.of(all);
  }

  @Provide
  Arbitrary<Double> ambients() {
    return Arbitraries.oneOf(Arbitraries.of(-60.0, 250.0), TestConductors.from(-60, 250));
  }

  @Provide
  Arbitrary<Double> currents() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, 1e-9, 100_000.0),
        TestConductors.from(0, 200),
        TestConductors.from(0, 100_000));
  }

  @Provide
  Arbitrary<Covering> coverings() {
    return Arbitraries.of(
        Covering.pvcTape(),
        Covering.clothTape(),
        Covering.conduit(0),
        Covering.conduit(50),
        Covering.braidedSleeve(),
        Covering.shrinkTube(20),
        new Covering("thinnest", 0, 0.01, 0.02, "test"));
  }

  @Property(tries = 150)
  void bundles(
      @ForAll("conductors") Conductor a,
      @ForAll("conductors") Conductor b,
      @ForAll("ambients") double ambientC,
      @ForAll("currents") double currentA,
      @ForAll("currents") double otherA,
      @ForAll("coverings") Covering covering,
      @ForAll @IntRange(min = 0, max = 30) int idle) {
    List<LoadedWire> wires = new ArrayList<>();
    wires.add(new LoadedWire("a", a, currentA));
    wires.add(new LoadedWire("b", b, otherA));
    for (int i = 0; i < idle; i++) {
      wires.add(new LoadedWire("idle", b, 0));
    }
    BundleHeat.Bundle bundle =
        BundleHeat.Bundle.bare(wires, ambientC).withCoverings(List.of(covering));
    Optional<BundleHeat.Result> result = BundleHeat.tryTemperatures(bundle);
    result.ifPresent(
        r ->
            assertThat(r.conductorC())
                .allSatisfy(t -> assertThat(t).isBetween(ambientC - 1e-6, 1083.0)));
    double allowed = BundleHeat.allowedCurrentA(bundle, 0, 105);
    assertThat(allowed).isBetween(0.0, 100_000.0);
    if (ambientC >= 105) {
      assertThat(allowed).isZero();
    }
  }

  @Property(tries = 150)
  void transients(
      @ForAll("conductors") Conductor c,
      @ForAll("ambients") double ambientC,
      @ForAll("currents") double currentA,
      @ForAll("coverings") Covering covering,
      @ForAll @IntRange(min = 1, max = 1000) int wires,
      @ForAll("ambients") double startC) {
    WireTransient wire =
        WireTransient.of(
            new WireHeat.Lying(c, ambientC, wires, OptionalDouble.empty()),
            ThermalMass.whole(c, InsulationMaterial.ETFE),
            List.of(covering));
    for (double seconds : new double[] {0, 1e-6, 1, 1000, 1e8}) {
      try {
        double t = wire.temperatureAfterC(startC, new Phase(currentA, seconds));
        assertThat(t).isBetween(Math.min(startC, ambientC) - 1e-6, 1083.0 + 1e-6);
      } catch (SumException e) {
        assertThat(e).hasMessageContaining("melting point");
      }
    }
    OptionalDouble reach = wire.timeToReachS(startC, 300, currentA);
    reach.ifPresent(s -> assertThat(s).isBetween(0.0, 1e12));
  }
}
