package org.loomwright.drawing.ink;

import java.util.ArrayList;
import java.util.List;

/** Slanted hatching of an area, as plain lines: it needs no pattern, and no name in the page. */
public final class Hatch {
  private Hatch() {}

  /**
   * Lines rising to the right at 45°, inside the area by the even-odd rule and inside the frame.
   *
   * @param area corners in order; the last is joined to the first
   * @param frame what is kept
   * @param pitchMm distance between lines, measured level
   */
  public static List<Segment> of(List<Spot> area, Box frame, double pitchMm) {
    List<Segment> lines = new ArrayList<>();
    double first = Math.ceil((frame.left() + frame.top()) / pitchMm) * pitchMm;
    for (double sum = first; sum < frame.right() + frame.bottom(); sum += pitchMm) {
      List<Double> cuts = cuts(area, sum);
      for (int i = 0; i + 1 < cuts.size(); i += 2) {
        double fromX = cuts.get(i);
        double toX = cuts.get(i + 1);
        new Segment(new Spot(fromX, sum - fromX), new Spot(toX, sum - toX))
            .inside(frame)
            .filter(it -> it.length() > 0.05)
            .ifPresent(lines::add);
      }
    }
    return lines;
  }

  /** Where the line x + y = sum crosses the edges, from left to right. */
  private static List<Double> cuts(List<Spot> area, double sum) {
    List<Double> cuts = new ArrayList<>();
    for (int i = 0; i < area.size(); i++) {
      Spot a = area.get(i);
      Spot b = area.get((i + 1) % area.size());
      double sideA = a.x() + a.y() - sum;
      double sideB = b.x() + b.y() - sum;
      // Half-open, so that a corner on the line counts once.
      if (sideA < 0 != sideB < 0) {
        cuts.add(a.x() + sideA / (sideA - sideB) * (b.x() - a.x()));
      }
    }
    cuts.sort(Double::compare);
    return cuts;
  }
}
