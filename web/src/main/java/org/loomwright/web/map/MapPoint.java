package org.loomwright.web.map;

import java.util.List;
import org.loomwright.model.vehicle.PlanSpot;

/**
 * A point of a plan view.
 *
 * @param alongMm distance from the left edge, mm
 * @param downMm distance from the top edge, mm
 */
public record MapPoint(double alongMm, double downMm) {

  /** Where a spot is. */
  public static MapPoint of(PlanSpot spot) {
    return new MapPoint(spot.along().mm(), spot.down().mm());
  }

  /** Straight distance to another point, mm. */
  public double apartMm(MapPoint other) {
    return Math.hypot(alongMm - other.alongMm, downMm - other.downMm);
  }

  /** Length of a line through points, mm; 0 for fewer than two. */
  public static double lengthMm(List<MapPoint> line) {
    double sum = 0;
    for (int i = 1; i < line.size(); i++) {
      sum += line.get(i - 1).apartMm(line.get(i));
    }
    return sum;
  }

  /** The point halfway along a line of at least one point. */
  public static MapPoint middle(List<MapPoint> line) {
    double left = lengthMm(line) / 2;
    for (int i = 1; i < line.size(); i++) {
      MapPoint from = line.get(i - 1);
      MapPoint to = line.get(i);
      double part = from.apartMm(to);
      if (part > 0 && left <= part) {
        double share = left / part;
        return new MapPoint(
            from.alongMm + share * (to.alongMm - from.alongMm),
            from.downMm + share * (to.downMm - from.downMm));
      }
      left -= part;
    }
    return line.get(line.size() - 1);
  }
}
