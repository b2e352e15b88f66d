package org.loomwright.physics.heat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.wire.Conductor;

/**
 * Allowed current by the published tables: 33 CFR 183.425 Table 5, corrected for ambient and
 * bundle.
 *
 * <ul>
 *   <li>A size that is no tabled gauge takes the value of the next smaller one by area; below 18
 *       AWG there is no value.
 *   <li>A rating between columns takes the next lower column; below 60 °C there is no value.
 *   <li>Ambient: factor √((rating - ambient)/(rating - 30)) with the column's rating; below 30 °C
 *       it exceeds 1; at or above the rating nothing is allowed.
 *   <li>Bundle: note 2 of the table by number of wires; where the loaded share is given, the bundle
 *       curves of AC 43.13-1B / MIL-W-5088L instead.
 * </ul>
 */
public final class HandbookAmpacity {
  private HandbookAmpacity() {}

  /**
   * @param conductor the wire
   * @param insulationRatingC highest continuous temperature of the insulation, °C
   * @param ambientC air temperature, -60 to 250 °C
   * @param wires current-carrying wires in the bundle, this one included; 1 is a single wire
   * @param loadedShare share of the bundle's capacity in use, above 0 to 1; empty: by the table's
   *     bundle note
   */
  public record Input(
      Conductor conductor,
      double insulationRatingC,
      double ambientC,
      int wires,
      OptionalDouble loadedShare) {
    /** Checks the ranges. */
    public Input {
      Require.within("insulation rating", insulationRatingC, 40, 300, "°C");
      Require.within("ambient temperature", ambientC, -60, 250, "°C");
      Require.within("number of wires", wires, 1, 1000, "wires");
      loadedShare.ifPresent(s -> Require.within("loaded share", 100 * s, 1e-6, 100, "%"));
    }
  }

  /**
   * @param currentA allowed current, A; empty where the handbook has no value
   * @param whyNone the reason in that case
   * @param trace how it was reached
   */
  public record Result(OptionalDouble currentA, Optional<String> whyNone, Trace trace) {}

  /** Allowed current; see the class comment for the rules. */
  public static Result of(Input in) {
    Conductor c = in.conductor();
    Trace.Builder trace =
        Trace.builder()
            .given("conductor area of " + c.label(), c.areaMm2(), "mm²")
            .given("insulation rating", in.insulationRatingC(), "°C")
            .given("ambient", in.ambientC(), "°C")
            .given("wires in the bundle", in.wires(), "1");
    int column = HandbookTable.columnFor(in.insulationRatingC());
    Optional<HandbookTable.Row> row = HandbookTable.rowFor(c.areaMm2());
    if (column < 0 || row.isEmpty()) {
      String why =
          column < 0
              ? HandbookTable.SOURCE + " starts at an insulation rating of 60 °C"
              : HandbookTable.SOURCE + " starts at 18 AWG (0.823 mm²)";
      return new Result(OptionalDouble.empty(), Optional.of(why), trace.build());
    }
    double ratingC = HandbookTable.RATING_C[column];
    double tableA = row.get().ampere()[column];
    double ambientFactor = ambientFactor(ratingC, in.ambientC());
    double bundleFactor = bundleFactor(in);
    double allowedA = tableA * ambientFactor * bundleFactor;
    in.loadedShare().ifPresent(s -> trace.given("loaded share", s, "1"));
    trace
        .line(
            "column of the table",
            "table heading, highest not above the rating",
            ratingC,
            "°C",
            "table heading")
        .line(
            "current of " + Conductor.awg(row.get().awg()).label() + " at 30 °C",
            "table, gauge not larger than the conductor",
            tableA,
            "A",
            HandbookTable.SOURCE)
        .line(
            "ambient factor",
            "sqrt((rating - ambient) / (rating - 30))",
            ambientFactor,
            "1",
            "AC 43.13-1B par. 11-66d (temperature rise as the square of the current)")
        .line(
            "bundle factor",
            "table",
            bundleFactor,
            "1",
            in.loadedShare().isPresent() ? BundleCurves.SOURCE : HandbookTable.SOURCE + " note 2")
        .line("allowed by handbook", "product", allowedA, "A", HandbookTable.SOURCE);
    return new Result(OptionalDouble.of(allowedA), Optional.empty(), trace.build());
  }

  /**
   * Allowed current of the cell at the edge of the table that is nearest to a wire or an insulation
   * below it. Nothing that lies below the edge can be allowed more.
   */
  static double atEdgeA(Input in) {
    int column = Math.max(0, HandbookTable.columnFor(in.insulationRatingC()));
    HandbookTable.Row row =
        HandbookTable.rowFor(in.conductor().areaMm2()).orElse(HandbookTable.smallest());
    return row.ampere()[column]
        * ambientFactor(HandbookTable.RATING_C[column], in.ambientC())
        * bundleFactor(in);
  }

  /** The current of {@link #atEdgeA} as a formula of a trace. */
  static String atEdge(Input in) {
    int column = Math.max(0, HandbookTable.columnFor(in.insulationRatingC()));
    HandbookTable.Row row =
        HandbookTable.rowFor(in.conductor().areaMm2()).orElse(HandbookTable.smallest());
    return "Ie fa fb, Ie = "
        + Require.text(row.ampere()[column])
        + " A of the table, fa = "
        + WireHeat.number(ambientFactor(HandbookTable.RATING_C[column], in.ambientC()))
        + " by ambient, fb = "
        + Require.text(bundleFactor(in))
        + " by bundle";
  }

  private static double bundleFactor(Input in) {
    return in.loadedShare().isPresent()
        ? BundleCurves.factor(in.wires(), in.loadedShare().getAsDouble())
        : HandbookTable.bundleFactor(in.wires());
  }

  /** √((rating - ambient)/(rating - 30)); 0 at or above the rating. */
  static double ambientFactor(double ratingC, double ambientC) {
    return ambientC >= ratingC
        ? 0
        : Math.sqrt((ratingC - ambientC) / (ratingC - HandbookTable.BASE_AMBIENT_C));
  }
}
