package org.loomwright.physics;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.loomwright.physics.wire.Conductor;

/** Conductors for property tests. */
public final class TestConductors {
  private TestConductors() {}

  /** Any size of both catalogues. */
  public static Arbitrary<Conductor> any() {
    List<Conductor> all = new ArrayList<>(Conductor.metricCatalogue());
    all.addAll(Conductor.awgCatalogue());
    return Arbitraries.of(all);
  }

  /** Numbers of a closed range, in steps of a thousandth. */
  public static Arbitrary<Double> from(double low, double high) {
    return Arbitraries.doubles().between(low, high).ofScale(3);
  }
}
