package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomwright.drawing.board.BoardPlan.Line;

/** Which lines of a sheet hang together, by the points where they begin and end. */
final class SheetGraph {
  private final List<Point> knots = new ArrayList<>();
  private final List<int[]> tips = new ArrayList<>();
  private final double[][] alongMm;

  SheetGraph(List<Line> lines) {
    for (Line line : lines) {
      tips.add(
          new int[] {
            knot(line.points().get(0)), knot(line.points().get(line.points().size() - 1))
          });
    }
    int count = knots.size();
    alongMm = new double[count][count];
    for (int i = 0; i < count; i++) {
      Arrays.fill(alongMm[i], Double.POSITIVE_INFINITY);
      alongMm[i][i] = 0;
    }
    for (int i = 0; i < lines.size(); i++) {
      int[] tip = tips.get(i);
      alongMm[tip[0]][tip[1]] = lines.get(i).lengthMm();
      alongMm[tip[1]][tip[0]] = lines.get(i).lengthMm();
    }
    // Shortest ways between all knots, by Floyd and Warshall.
    for (int via = 0; via < count; via++) {
      for (int from = 0; from < count; from++) {
        for (int to = 0; to < count; to++) {
          alongMm[from][to] = Math.min(alongMm[from][to], alongMm[from][via] + alongMm[via][to]);
        }
      }
    }
  }

  /**
   * Where two lines are nearest along the harness.
   *
   * @param alongMm between the two tips; infinite where the lines do not hang together
   */
  record Nearest(double alongMm, boolean isFirstOfOne, boolean isFirstOfOther) {}

  Nearest nearest(int one, int other) {
    Nearest best = new Nearest(Double.POSITIVE_INFINITY, true, true);
    for (int mine = 0; mine < 2; mine++) {
      for (int its = 0; its < 2; its++) {
        double along = alongMm[tips.get(one)[mine]][tips.get(other)[its]];
        if (along < best.alongMm()) {
          best = new Nearest(along, mine == 0, its == 0);
        }
      }
    }
    return best;
  }

  private int knot(Point at) {
    for (int i = 0; i < knots.size(); i++) {
      if (knots.get(i).distanceMm(at) < 1e-6) {
        return i;
      }
    }
    knots.add(at);
    return knots.size() - 1;
  }
}
