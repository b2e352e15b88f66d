package org.loomwright.drawing.ink;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A straight stretch of a line.
 *
 * @param from first end
 * @param to other end
 */
public record Segment(Spot from, Spot to) {

  /** The stretches of a line through points. */
  public static List<Segment> through(List<Spot> points) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      segments.add(new Segment(points.get(i - 1), points.get(i)));
    }
    return segments;
  }

  /**
   * The part inside a frame, edges included; empty when none is.
   *
   * <p>Source: the parametric line clipping of Liang and Barsky (ACM Transactions on Graphics 3,
   * 1984): the part between the last entry and the first exit over the four edges.
   */
  public Optional<Segment> inside(Box frame) {
    double alongX = to.x() - from.x();
    double alongY = to.y() - from.y();
    double[] leave = {-alongX, alongX, -alongY, alongY};
    double[] room = {
      from.x() - frame.left(),
      frame.right() - from.x(),
      from.y() - frame.top(),
      frame.bottom() - from.y()
    };
    double enter = 0;
    double exit = 1;
    for (int i = 0; i < leave.length; i++) {
      if (leave[i] == 0) {
        if (room[i] < 0) {
          return Optional.empty();
        }
      } else if (leave[i] < 0) {
        enter = Math.max(enter, room[i] / leave[i]);
      } else {
        exit = Math.min(exit, room[i] / leave[i]);
      }
    }
    return enter > exit ? Optional.empty() : Optional.of(new Segment(at(enter), at(exit)));
  }

  /** Length, mm. */
  public double length() {
    return Math.hypot(to.x() - from.x(), to.y() - from.y());
  }

  private Spot at(double share) {
    return new Spot(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
  }
}
