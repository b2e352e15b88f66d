package org.loomwright.web.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.PlanSpot;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * The length a run is said to have, beside the length of its line on the plan view.
 *
 * <p>The plan shows no heights, so a run may well be longer than its line; it can't be shorter than
 * the straight line between its places. A quarter more or less is taken as worth a look (common
 * practice): most typing errors are larger, most climbs in a vehicle's body are smaller.
 *
 * @param verdict what comes of it
 * @param statedMm stated length, mm
 * @param toleranceMm how far the true length may be off, mm
 * @param drawnMm length of the line through its bends, mm; 0 when it is not drawn
 * @param straightMm straight line between its places, mm; 0 when it is not drawn
 */
public record RunCheck(
    Verdict verdict, double statedMm, double toleranceMm, double drawnMm, double straightMm) {
  /** Largest difference that needs no look, as a share of the stated length. */
  public static final double MOST_APART = 0.25;

  /** Points are kept to the millimetre, so less than half of one says nothing. */
  private static final double SLACK_MM = 0.5;

  /** What comes of a comparison. */
  public enum Verdict {
    /** A place at one of its ends is not on the map. */
    NOT_DRAWN,
    /** Drawn and stated are near each other. */
    AGREES,
    /** They differ by more than a quarter of the stated length. */
    APART,
    /** Stated shorter than the straight line between the places. */
    IMPOSSIBLE;

    /** As a class of the style sheet. */
    public String css() {
      return switch (this) {
        case NOT_DRAWN -> "not-drawn";
        case AGREES -> "agrees";
        case APART -> "apart";
        case IMPOSSIBLE -> "impossible";
      };
    }
  }

  /** The line of a run through its bends; empty when a place at its ends is not on the map. */
  public static Optional<List<MapPoint>> line(Vehicle vehicle, Run run) {
    Optional<PlanSpot> from = vehicle.place(run.from()).flatMap(Place::at);
    Optional<PlanSpot> to = vehicle.place(run.to()).flatMap(Place::at);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    List<MapPoint> line = new ArrayList<>();
    line.add(MapPoint.of(from.get()));
    run.bends().forEach(it -> line.add(MapPoint.of(it)));
    line.add(MapPoint.of(to.get()));
    return Optional.of(line);
  }

  /** Compares what a run says with how it is drawn. */
  public static RunCheck of(Vehicle vehicle, Run run) {
    return of(line(vehicle, run), run);
  }

  /** Compares what a run says with a line. */
  static RunCheck of(Optional<List<MapPoint>> line, Run run) {
    double statedMm = run.length().mm();
    double toleranceMm = run.tolerance().mm();
    if (line.isEmpty()) {
      return new RunCheck(Verdict.NOT_DRAWN, statedMm, toleranceMm, 0, 0);
    }
    double drawnMm = MapPoint.lengthMm(line.get());
    double straightMm = line.get().get(0).apartMm(line.get().get(line.get().size() - 1));
    Verdict verdict =
        statedMm < straightMm - SLACK_MM
            ? Verdict.IMPOSSIBLE
            : Math.abs(drawnMm - statedMm) > MOST_APART * statedMm ? Verdict.APART : Verdict.AGREES;
    return new RunCheck(verdict, statedMm, toleranceMm, drawnMm, straightMm);
  }

  /** What to make of it, in a sentence; empty when there is nothing to say. */
  public String words(Display units) {
    return switch (verdict) {
      case NOT_DRAWN -> "not drawn: a place at its ends is not on the map";
      case AGREES -> "";
      case APART ->
          statedMm > drawnMm
              ? "stated much longer than drawn: it climbs, has bends that are not drawn, or one of"
                  + " the two is wrong"
              : "drawn much longer than stated: a bend or the length is wrong";
      case IMPOSSIBLE ->
          "impossible: the straight line between its places is "
              + MapWords.length(straightMm, units)
              + (statedMm + toleranceMm < straightMm
                  ? "; look for a typing error"
                  : "; within its tolerance, so a place may be marked a little off");
    };
  }
}
