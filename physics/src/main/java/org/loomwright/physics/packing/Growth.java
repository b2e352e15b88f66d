package org.loomwright.physics.packing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A first arrangement that grows from the middle: one circle after the other, roughly from large to
 * small, each where it touches two others and stays nearest to the middle of what lies there. Small
 * circles so find the gaps between large ones.
 */
final class Growth {
  /** How far the order may stray from large to small, as a share of the radius. */
  private static final double STRAY = 0.2;

  /** Circles this much nearer than touching still count as touching: rounding. */
  private static final double ROUNDING = 1e-9;

  private final double[] radii;
  private final int[] order;
  private final double[] at;
  private double middleX;
  private double middleY;

  private Growth(double[] radii, SplittableRandom random) {
    this.radii = radii;
    this.order = order(radii, random);
    this.at = new double[2 * radii.length + 1];
  }

  /** Grows one arrangement; another state of the random numbers gives another. */
  static Layout of(double[] radii, SplittableRandom random) {
    return new Growth(radii, random).grow();
  }

  private static int[] order(double[] radii, SplittableRandom random) {
    double[] key =
        Arrays.stream(radii).map(r -> r * (1 + STRAY * (random.nextDouble() - 0.5))).toArray();
    return IntStream.range(0, radii.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -key[i]))
        .mapToInt(i -> i)
        .toArray();
  }

  private Layout grow() {
    int n = radii.length;
    for (int placed = 1; placed < n; placed++) {
      place(placed);
      findMiddle(placed + 1);
    }
    double outer = 0;
    for (int i = 0; i < n; i++) {
      at[2 * i] -= middleX;
      at[2 * i + 1] -= middleY;
      outer = Math.max(outer, Math.hypot(at[2 * i], at[2 * i + 1]) + radii[i]);
    }
    at[2 * n] = outer;
    return new Layout(radii, at);
  }

  private void place(int placed) {
    int circle = order[placed];
    if (placed == 1) {
      at[2 * circle] = radii[order[0]] + radii[circle];
      return;
    }
    double nearest = Double.POSITIVE_INFINITY;
    double bestX = 0;
    double bestY = 0;
    for (int a = 1; a < placed; a++) {
      for (int b = 0; b < a; b++) {
        int p = order[a];
        int q = order[b];
        double dx = at[2 * q] - at[2 * p];
        double dy = at[2 * q + 1] - at[2 * p + 1];
        double distance = Math.sqrt(dx * dx + dy * dy);
        double toP = radii[p] + radii[circle];
        double toQ = radii[q] + radii[circle];
        if (distance > toP + toQ) {
          continue;
        }
        // The two places where the circle touches both p and q.
        double along = (toP * toP - toQ * toQ + distance * distance) / (2 * distance);
        double aside = Math.sqrt(Math.max(0, toP * toP - along * along));
        for (int side = -1; side <= 1; side += 2) {
          double x = at[2 * p] + (along * dx - side * aside * dy) / distance;
          double y = at[2 * p + 1] + (along * dy + side * aside * dx) / distance;
          double fromMiddle = Math.hypot(x - middleX, y - middleY);
          if (fromMiddle < nearest && isFree(x, y, radii[circle], placed)) {
            nearest = fromMiddle;
            bestX = x;
            bestY = y;
          }
        }
      }
    }
    at[2 * circle] = bestX;
    at[2 * circle + 1] = bestY;
  }

  private boolean isFree(double x, double y, double radius, int placed) {
    for (int k = 0; k < placed; k++) {
      int other = order[k];
      double dx = x - at[2 * other];
      double dy = y - at[2 * other + 1];
      double reach = radius + radii[other] - ROUNDING;
      if (dx * dx + dy * dy < reach * reach) {
        return false;
      }
    }
    return true;
  }

  /** The centre of area of the circles placed so far. */
  private void findMiddle(int placed) {
    double area = 0;
    double x = 0;
    double y = 0;
    for (int k = 0; k < placed; k++) {
      int circle = order[k];
      double share = radii[circle] * radii[circle];
      area += share;
      x += share * at[2 * circle];
      y += share * at[2 * circle + 1];
    }
    middleX = x / area;
    middleY = y / area;
  }
}
