package org.loomwright.physics.packing;

import java.util.Arrays;

/**
 * What pulls circles together and pushes them apart: F = R + K/2 · Σ max(0, g + s)², where R is the
 * outer radius, g an overlap of two circles or a part outside the outer circle, and K a stiffness.
 *
 * <p>The shifts s start at zero. Raising each to max(0, g + s) after a minimum of F has been found,
 * and finding the minimum again, makes the overlaps vanish at a finite stiffness (method of
 * multipliers: Hestenes 1969, Powell 1969); the shift times K is the force in that contact.
 */
final class Squeeze {
  private final double[] radii;
  private final double stiffness;

  /** Shifts of pairs row by row below the diagonal, then those against the outer circle. */
  private final double[] shifts;

  Squeeze(double[] radii, double stiffness) {
    this.radii = radii;
    this.stiffness = stiffness;
    int n = radii.length;
    this.shifts = new double[n * (n - 1) / 2 + n];
  }

  /** F at a place; its slope goes to {@code slope}. */
  double force(double[] at, double[] slope) {
    int n = radii.length;
    Arrays.fill(slope, 0);
    double sum = 0;
    int pair = 0;
    for (int i = 0; i < n; i++) {
      double x = at[2 * i];
      double y = at[2 * i + 1];
      double slopeX = 0;
      double slopeY = 0;
      for (int j = 0; j < i; j++) {
        double reach = radii[i] + radii[j] + shifts[pair++];
        double dx = x - at[2 * j];
        double dy = y - at[2 * j + 1];
        double square = dx * dx + dy * dy;
        if (square < reach * reach) {
          double distance = Math.sqrt(square) + Double.MIN_NORMAL;
          double overlap = reach - distance;
          sum += overlap * overlap;
          double pull = stiffness * overlap / distance;
          slopeX -= pull * dx;
          slopeY -= pull * dy;
          slope[2 * j] += pull * dx;
          slope[2 * j + 1] += pull * dy;
        }
      }
      slope[2 * i] += slopeX;
      slope[2 * i + 1] += slopeY;
    }
    double outer = at[2 * n];
    double slopeR = 1;
    for (int i = 0; i < n; i++) {
      double x = at[2 * i];
      double y = at[2 * i + 1];
      double room = outer - radii[i] - shifts[pair++];
      double square = x * x + y * y;
      if (room < 0 || square > room * room) {
        double distance = Math.sqrt(square) + Double.MIN_NORMAL;
        double outside = distance - room;
        sum += outside * outside;
        double pull = stiffness * outside;
        slope[2 * i] += pull * x / distance;
        slope[2 * i + 1] += pull * y / distance;
        slopeR -= pull;
      }
    }
    slope[2 * n] = slopeR;
    return outer + 0.5 * stiffness * sum;
  }

  /** Raises the shifts by what still overlaps; gives the largest overlap or part outside. */
  double tighten(double[] at) {
    int n = radii.length;
    double worst = 0;
    int pair = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        double distance = Math.hypot(at[2 * i] - at[2 * j], at[2 * i + 1] - at[2 * j + 1]);
        worst = Math.max(worst, raise(pair++, radii[i] + radii[j] - distance));
      }
    }
    for (int i = 0; i < n; i++) {
      double distance = Math.hypot(at[2 * i], at[2 * i + 1]);
      worst = Math.max(worst, raise(pair++, distance + radii[i] - at[2 * n]));
    }
    return worst;
  }

  private double raise(int contact, double overlap) {
    shifts[contact] = Math.max(0, shifts[contact] + overlap);
    return overlap;
  }
}
