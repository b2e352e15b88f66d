package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Spot;

/** What is drawn already, for finding room for more. */
final class Obstacles {
  private static final double GAP_MM = 0.7;

  private final double left;
  private final double right;
  private final List<Disc> discs = new ArrayList<>();
  private final List<Band> bands = new ArrayList<>();
  private final List<Box> boxes = new ArrayList<>();

  /** A stop. */
  record Disc(Spot at, double radius) {}

  /** A line with half its width. */
  record Band(Segment line, double half) {}

  /** Room between a left and a right edge. */
  Obstacles(double left, double right) {
    this.left = left;
    this.right = right;
  }

  void add(Disc disc) {
    discs.add(disc);
  }

  void add(Band band) {
    bands.add(band);
  }

  void add(Box box) {
    boxes.add(box);
  }

  void remove(Box box) {
    boxes.remove(box);
  }

  void remove(Band band) {
    bands.remove(band);
  }

  /** Whether a box is clear of everything. */
  boolean free(Box box) {
    if (box.left() < left || box.right() > right) {
      return false;
    }
    Box kept = box.grown(GAP_MM);
    return boxes.stream().noneMatch(kept::overlaps)
        && discs.stream().noneMatch(it -> Plane.apart(it.at(), box) < it.radius() + GAP_MM)
        && bands.stream()
            .noneMatch(it -> it.line().inside(box.grown(it.half() + GAP_MM)).isPresent());
  }

  /**
   * What a leader from a stop costs: lines crossed, and boxes or other stops run through, which are
   * as good as forbidden.
   *
   * @param half half the leader's width, mm
   */
  double cost(Segment leader, double half, Spot from) {
    double cost = 0;
    for (Box box : boxes) {
      cost += leader.inside(box.grown(half + 0.4)).isPresent() ? 1000 : 0;
    }
    for (Disc disc : discs) {
      boolean other = !disc.at().equals(from);
      cost += other && Plane.apart(disc.at(), leader) < disc.radius() + half + 0.6 ? 1000 : 0;
    }
    for (Band band : bands) {
      boolean own = band.line().from().equals(from) || band.line().to().equals(from);
      if (own) {
        Spot away = band.line().from().equals(from) ? band.line().to() : band.line().from();
        double turn =
            Math.abs(Plane.turn(Plane.angle(from, away) - Plane.angle(leader.from(), leader.to())));
        cost += turn < 0.25 ? 60 : turn < 0.6 ? 10 : 0;
      } else if (Plane.apart(leader, band.line()) < band.half() + half) {
        cost += 16 + 3 * band.half();
      }
    }
    return cost;
  }
}
