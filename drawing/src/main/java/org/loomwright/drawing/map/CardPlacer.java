package org.loomwright.drawing.map;

import java.util.Optional;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Spot;

/** Finds room for cards near their stops. */
final class CardPlacer {
  private static final int DIRECTIONS = 32;
  private static final double[] GAPS = {1.2, 2.5, 4, 6, 9, 13, 18, 24, 32, 42, 54, 70};

  private final Obstacles obstacles;
  private final double highest;
  private final double lowest;

  /**
   * @param highest upper edge of what is drawn without cards, mm
   * @param lowest lower edge of it, mm
   */
  CardPlacer(Obstacles obstacles, double highest, double lowest) {
    this.obstacles = obstacles;
    this.highest = highest;
    this.lowest = lowest;
  }

  /**
   * Takes the best place; empty when there is none good enough.
   *
   * @param costMost cost from which on none is
   */
  Optional<Scene.Placed> place(
      int stop, Card card, Spot at, double radius, double half, double costMost) {
    Scene.@org.jspecify.annotations.Nullable Placed best = null;
    double least = costMost;
    for (double gap : GAPS) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = 2 * Math.PI * i / DIRECTIONS;
        Box box = box(card, at, radius + gap, angle);
        double outside = Math.max(0, highest - box.top()) + Math.max(0, box.bottom() - lowest);
        double plain = gap + 0.25 * outside + (i % 8 == 0 ? 0 : 0.4);
        if (plain >= least || !obstacles.free(box)) {
          continue;
        }
        Segment leader = new Segment(at, Plane.nearest(at, inner(box)));
        double cost = plain + (needsLeader(card, gap) ? obstacles.cost(leader, half, at) : 0);
        if (cost < least) {
          least = cost;
          best = new Scene.Placed(stop, card, box, leader);
        }
      }
    }
    if (best != null) {
      obstacles.add(best.box());
      obstacles.add(new Obstacles.Band(best.leader(), half));
    }
    return Optional.ofNullable(best);
  }

  /** Takes a card away again. */
  void remove(Scene.Placed placed, double half) {
    obstacles.remove(placed.box());
    obstacles.remove(new Obstacles.Band(placed.leader(), half));
  }

  private static boolean needsLeader(Card card, double gap) {
    return !card.stop().ends().isEmpty() || gap > 2.5;
  }

  /** The card with its edge at a distance from the stop, in a direction. */
  private static Box box(Card card, Spot at, double distance, double angle) {
    double halfWidth = card.width() / 2;
    double halfHeight = card.height() / 2;
    double over = clamped(1.5 * Math.cos(angle)) * halfWidth;
    double down = clamped(1.5 * Math.sin(angle)) * halfHeight;
    double x = at.x() + distance * Math.cos(angle) + over;
    double y = at.y() + distance * Math.sin(angle) + down;
    return new Box(x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight);
  }

  private static double clamped(double share) {
    return Math.min(1, Math.max(-1, share));
  }

  /** Leaders end a little off a card's corners. */
  private static Box inner(Box box) {
    double over = Math.min(1.5, box.width() / 4);
    double down = Math.min(1.5, box.height() / 4);
    return new Box(box.left() + over, box.top() + down, box.right() - over, box.bottom() - down);
  }
}
