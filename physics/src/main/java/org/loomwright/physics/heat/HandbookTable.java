package org.loomwright.physics.heat;

import java.util.List;
import java.util.Optional;
import org.loomwright.physics.wire.Conductor;

/** 33 CFR 183.425 Table 5 with its notes 1 and 2. */
final class HandbookTable {
  static final String SOURCE = "33 CFR 183.425 Table 5";

  /** Ambient the table is made for, °C. */
  static final double BASE_AMBIENT_C = 30;

  /** Insulation temperature ratings of the columns, °C. */
  static final int[] RATING_C = {60, 75, 80, 90, 105, 125, 200};

  /**
   * Note 1, conductors in engine spaces (50 °C): factor per column. Only 0.85 at 105 °C was read in
   * print; the others are from memory. Kept as data: the sums use the square root form, which gives
   * the same within 0.02.
   */
  static final double[] ENGINE_SPACE_FACTOR = {0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 1.00};

  /**
   * @param awg gauge; 0, -1, -2, -3 stand for 1/0 to 4/0
   * @param ampere allowed current per column of {@link #RATING_C}
   */
  record Row(int awg, double[] ampere) {
    double areaMm2() {
      return Conductor.awg(awg).areaMm2();
    }
  }

  /** The table, smallest wire first. */
  static final List<Row> ROWS =
      List.of(
          row(18, 10, 10, 15, 20, 20, 25, 25),
          row(16, 15, 15, 20, 25, 25, 30, 35),
          row(14, 20, 20, 25, 30, 35, 40, 45),
          row(12, 25, 25, 35, 40, 45, 50, 55),
          row(10, 40, 40, 50, 55, 60, 70, 70),
          row(8, 55, 65, 70, 70, 80, 90, 100),
          row(6, 80, 95, 100, 100, 120, 125, 135),
          row(4, 105, 125, 130, 135, 160, 170, 180),
          row(3, 120, 145, 150, 155, 180, 195, 210),
          row(2, 140, 170, 175, 180, 210, 225, 240),
          row(1, 165, 195, 210, 210, 245, 265, 280),
          row(0, 195, 230, 245, 245, 285, 305, 325),
          row(-1, 225, 265, 285, 285, 330, 355, 370),
          row(-2, 260, 310, 330, 330, 385, 410, 430),
          row(-3, 300, 360, 385, 385, 445, 475, 510));

  private HandbookTable() {}

  private static Row row(int awg, double... ampere) {
    return new Row(awg, ampere);
  }

  /** The row of the smallest tabled gauge. */
  static Row smallest() {
    return ROWS.get(0);
  }

  /** The largest tabled gauge whose area does not exceed the given one. */
  static Optional<Row> rowFor(double areaMm2) {
    // The slack only covers the last binary digits of the gauge formula.
    return ROWS.stream().filter(r -> r.areaMm2() <= areaMm2 * (1 + 1e-9)).reduce((a, b) -> b);
  }

  /** Index of the highest column not above the rating; -1 below 60 °C. */
  static int columnFor(double ratingC) {
    int column = -1;
    for (int i = 0; i < RATING_C.length; i++) {
      if (RATING_C[i] <= ratingC) {
        column = i;
      }
    }
    return column;
  }

  /** Note 2: factor by number of current-carrying conductors in a bundle. */
  static double bundleFactor(int wires) {
    if (wires <= 2) {
      return 1.0;
    }
    if (wires == 3) {
      return 0.70;
    }
    if (wires <= 6) {
      return 0.60;
    }
    return wires <= 24 ? 0.50 : 0.40;
  }
}
