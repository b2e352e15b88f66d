package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;

/** Invented housings. */
final class Housings {
  private Housings() {}

  static Cavity cavity(String number, double x, double y, double width, double height) {
    return new Cavity(
        number,
        Length.ofMm(x),
        Length.ofMm(y),
        Length.ofMm(width),
        Length.ofMm(height),
        List.of(),
        Optional.empty());
  }

  /** The same position, moulded closed. */
  static Cavity closed(Cavity it) {
    return new Cavity(
        it.number(),
        it.x(),
        it.y(),
        it.width(),
        it.height(),
        List.of(),
        Optional.empty(),
        true,
        it.round());
  }

  static Housing housing(
      double width, double height, boolean round, boolean latch, List<Cavity> cavities) {
    return new Housing(
        "H-TEST",
        "test housing",
        Length.ofMm(width),
        Length.ofMm(height),
        round,
        false,
        latch,
        cavities,
        Optional.empty(),
        Money.of("1.00 EUR"),
        "invented");
  }

  /** Numbers run from the top left, row by row. */
  static Housing grid(int rows, int columns) {
    List<Cavity> cavities = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        cavities.add(cavity("" + (row * columns + column + 1), 3 + 4 * column, 3 + 5 * row, 3, 4));
      }
    }
    return housing(6 + 4 * (columns - 1), 6 + 5 * (rows - 1), false, true, cavities);
  }

  /** Cavities on a circle, the first at the top, then clockwise. */
  static List<Cavity> ring(int count, double radius, double middle, int first, double turnDegrees) {
    List<Cavity> cavities = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = Math.toRadians(360.0 * i / count + turnDegrees);
      // Rounded to a micrometre, as a drawing would give it.
      double x = Math.round((middle + radius * Math.sin(angle)) * 1000) / 1000.0;
      double y = Math.round((middle - radius * Math.cos(angle)) * 1000) / 1000.0;
      cavities.add(cavity("" + (first + i), x, y, 2, 2));
    }
    return cavities;
  }
}
