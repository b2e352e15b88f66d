package org.loomwright.physics.joining;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;

/**
 * Most continuous current through a contact with a given wire at a given ambient.
 *
 * <p>A thinner wire takes less heat away, so a table counts for the wire it names and for thicker
 * ones: the curve of the thickest listed wire not above ours is taken. Along a curve the limit lies
 * straight between two points. Makers' curves of current over ambient bend downwards (the heat goes
 * with the square of the current), so the straight line lies on or below them. Below the lowest
 * ambient the limit of the lowest point is kept; above the highest nothing is known, unless the
 * curve ends at 0 A there. The table never allows more than the contact's plain limit.
 */
public final class ContactCurrent {
  private static final String STRAIGHT = "straight between points, common practice";

  private ContactCurrent() {}

  /**
   * @param limitA most continuous current, A, zero or more
   * @param trace how it came about
   */
  public record Result(double limitA, Trace trace) {}

  /**
   * The limit.
   *
   * @param contact the contact's name, for messages
   * @param plainA limit whatever the wire and the ambient, A, above zero
   * @param points the table; may be empty, then the plain limit counts
   * @param areaMm2 conductor area of our wire, mm², above zero
   * @param ambientC air at the contact, °C
   * @param source where limit and table come from
   * @throws SumException when the table says nothing of so thin a wire or so hot a place
   */
  public static Result limit(
      String contact,
      double plainA,
      List<CurrentPoint> points,
      double areaMm2,
      double ambientC,
      String source) {
    Require.positive("most current of " + contact, plainA, "A");
    Require.positive("conductor area in " + contact, areaMm2, "mm²");
    Require.within("ambient of " + contact, ambientC, -273.15, 1000, "°C");
    Trace.Builder trace =
        Trace.builder()
            .given("conductor area", areaMm2, "mm²")
            .given("air at the contact", ambientC, "°C")
            .line("limit of the contact", "published", plainA, "A", source);
    if (points.isEmpty()) {
      return new Result(plainA, trace.build());
    }
    double listedMm2 = listed(contact, points, areaMm2);
    trace.line("thickest listed wire not above ours", "table", listedMm2, "mm²", source);
    TreeMap<Double, Double> curve = new TreeMap<>();
    points.stream()
        .filter(it -> it.areaMm2() == listedMm2)
        .forEach(it -> curve.merge(it.ambientC(), it.currentA(), Math::min));
    double tableA = along(contact, curve, listedMm2, ambientC, trace, source);
    double limitA = Math.min(plainA, tableA);
    trace.line("limit that counts", "smaller of both", limitA, "A", source);
    return new Result(limitA, trace.build());
  }

  /** The current held against the limit. */
  public static Check check(
      String contact,
      double currentA,
      Result limit,
      double areaMm2,
      double ambientC,
      String source) {
    return Check.atMost(
        "current through " + contact,
        currentA,
        limit.limitA(),
        "A",
        "most current with "
            + Require.text(areaMm2)
            + " mm² at "
            + Require.text(ambientC)
            + " °C ambient",
        source);
  }

  private static double listed(String contact, List<CurrentPoint> points, double areaMm2) {
    return points.stream()
        .mapToDouble(CurrentPoint::areaMm2)
        .filter(it -> it <= areaMm2)
        .max()
        .orElseThrow(
            () ->
                new SumException(
                    "the current table of "
                        + contact
                        + " starts at "
                        + Require.text(
                            points.stream().mapToDouble(CurrentPoint::areaMm2).min().orElse(0))
                        + " mm² and says nothing of "
                        + Require.text(areaMm2)
                        + " mm²; take a thicker wire, or add a point for this one"));
  }

  private static double along(
      String contact,
      TreeMap<Double, Double> curve,
      double listedMm2,
      double ambientC,
      Trace.Builder trace,
      String source) {
    Map.Entry<Double, Double> cooler = curve.floorEntry(ambientC);
    Map.Entry<Double, Double> hotter = curve.ceilingEntry(ambientC);
    if (cooler == null) {
      Map.Entry<Double, Double> first = curve.firstEntry();
      trace.line(
          "limit at " + Require.text(first.getKey()) + " °C, kept below",
          "table",
          first.getValue(),
          "A",
          source);
      return first.getValue();
    }
    if (hotter == null) {
      if (cooler.getValue() == 0) {
        trace.line(
            "limit above " + Require.text(cooler.getKey()) + " °C, where the curve ends",
            "table",
            0,
            "A",
            source);
        return 0;
      }
      throw new SumException(
          "the current table of "
              + contact
              + " for "
              + Require.text(listedMm2)
              + " mm² ends at "
              + Require.text(cooler.getKey())
              + " °C and says nothing of "
              + Require.text(ambientC)
              + " °C; take a cooler place, or add a point");
    }
    point(cooler, trace, source);
    if (hotter.getKey().equals(cooler.getKey())) {
      return cooler.getValue();
    }
    point(hotter, trace, source);
    double part = (ambientC - cooler.getKey()) / (hotter.getKey() - cooler.getKey());
    double currentA = cooler.getValue() + part * (hotter.getValue() - cooler.getValue());
    trace.line(
        "limit at " + Require.text(ambientC) + " °C",
        "I1 + (T - T1) / (T2 - T1) * (I2 - I1), I1 = "
            + Require.text(cooler.getValue())
            + " A, I2 = "
            + Require.text(hotter.getValue())
            + " A, T = "
            + Require.text(ambientC)
            + " °C, T1 = "
            + Require.text(cooler.getKey())
            + " °C, T2 = "
            + Require.text(hotter.getKey())
            + " °C",
        currentA,
        "A",
        STRAIGHT);
    return currentA;
  }

  private static void point(Map.Entry<Double, Double> point, Trace.Builder trace, String source) {
    trace.line(
        "limit at " + Require.text(point.getKey()) + " °C", "table", point.getValue(), "A", source);
  }
}
