package org.loomwright.physics.heat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.physics.Trace;
import org.loomwright.physics.wire.Conductor;

/** Allowed current by both methods; the smaller counts. */
public final class Ampacity {
  private Ampacity() {}

  /**
   * @param conductor the wire
   * @param insulationRatingC highest continuous temperature of the insulation, 40 to 300 °C
   * @param ambientC air temperature, -60 to 250 °C
   * @param wires wires in the bundle, this one included; 1 is a single wire
   * @param loadedShare above 0 to 1. For the handbook curves the share of the bundle's capacity in
   *     use, for the heat balance the share of wires at full current - the worst way to use that
   *     capacity. Empty: all wires at full current
   */
  public record Input(
      Conductor conductor,
      double insulationRatingC,
      double ambientC,
      int wires,
      OptionalDouble loadedShare) {
    /** A single wire in free air. */
    public static Input single(Conductor conductor, double insulationRatingC, double ambientC) {
      return new Input(conductor, insulationRatingC, ambientC, 1, OptionalDouble.empty());
    }
  }

  /**
   * @param handbookA by {@link HandbookAmpacity}; empty where the handbook has no value
   * @param whyNoHandbook the reason in that case
   * @param heatBalanceA by {@link WireHeat}
   * @param allowedA the smaller of the two; where the handbook has no value the heat balance, but
   *     not more than the handbook allows at the nearest edge of its table: a thinner wire or a
   *     softer insulation is never allowed more than a tabled one
   * @param trace how it was reached
   */
  public record Result(
      OptionalDouble handbookA,
      Optional<String> whyNoHandbook,
      double heatBalanceA,
      double allowedA,
      Trace trace) {}

  /** Both methods and the smaller of them. */
  public static Result of(Input in) {
    HandbookAmpacity.Input tabled =
        new HandbookAmpacity.Input(
            in.conductor(), in.insulationRatingC(), in.ambientC(), in.wires(), in.loadedShare());
    HandbookAmpacity.Result handbook = HandbookAmpacity.of(tabled);
    WireHeat.Result heat =
        WireHeat.current(
            new WireHeat.Lying(in.conductor(), in.ambientC(), in.wires(), in.loadedShare()),
            in.insulationRatingC());
    double capA = handbook.currentA().orElseGet(() -> HandbookAmpacity.atEdgeA(tabled));
    double allowedA = Math.min(capA, heat.currentA());
    Trace.Builder trace = Trace.builder().addAll(handbook.trace()).addAll(heat.trace());
    handbook
        .whyNone()
        .ifPresent(
            why ->
                trace.line(
                    "handbook at the nearest edge of its table",
                    HandbookAmpacity.atEdge(tabled),
                    capA,
                    "A",
                    why));
    trace.line(
        "allowed current",
        handbook.currentA().isPresent()
            ? "smaller of handbook and heat balance"
            : "smaller of heat balance and the edge of the handbook",
        allowedA,
        "A",
        "the worse of two methods counts");
    return new Result(
        handbook.currentA(), handbook.whyNone(), heat.currentA(), allowedA, trace.build());
  }
}
