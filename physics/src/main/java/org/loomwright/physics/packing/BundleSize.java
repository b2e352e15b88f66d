package org.loomwright.physics.packing;

import java.util.List;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;

/**
 * Diameter of a round bundle of wires, without covering: twice the radius of the smallest circle
 * found round their circles. A bundle pulled together by hand comes out wider.
 */
public final class BundleSize {
  private BundleSize() {}

  /**
   * @param diametersMm outside diameters of the wires, mm, each above zero; 1 to 500 wires
   */
  public record Input(List<Double> diametersMm) {
    /** Checks the ranges. */
    public Input {
      diametersMm = List.copyOf(diametersMm);
      diametersMm.forEach(diameter -> Require.positive("diameter of a wire", diameter, "mm"));
    }
  }

  /**
   * @param diameterMm diameter of the bundle, mm
   * @param lowerBoundMm no bundle of these wires can be thinner, mm
   * @param packing where each wire lies, in the order given
   * @param trace how it was reached
   */
  public record Result(double diameterMm, double lowerBoundMm, Packing packing, Trace trace) {}

  /** Packs the wires. */
  public static Result of(Input in) {
    Packing packing = CirclePacking.of(in.diametersMm().stream().map(d -> d / 2).toList());
    double diameterMm = 2 * packing.radiusMm();
    double boundMm = 2 * packing.lowerBoundMm();
    double squares = in.diametersMm().stream().mapToDouble(d -> d * d).sum();
    Trace trace =
        Trace.builder()
            .given("wires", in.diametersMm().size(), "1")
            .given("thickest wire", max(in.diametersMm()), "mm")
            .line("root of the sum of squares", "sqrt(sum d²)", Math.sqrt(squares), "mm", "area")
            .line("no bundle is thinner than", "bound", boundMm, "mm", PackingBound.SOURCE)
            .line("filled share", "sum d² / D²", packing.fill(), "1", "definition")
            .line(
                "diameter of the bundle",
                "smallest circle found round the wires",
                diameterMm,
                "mm",
                "own search; no overlap, all inside")
            .build();
    return new Result(diameterMm, boundMm, packing, trace);
  }

  private static double max(List<Double> values) {
    return values.stream().mapToDouble(d -> d).max().orElse(0);
  }
}
