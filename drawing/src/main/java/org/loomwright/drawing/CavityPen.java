package org.loomwright.drawing;

import org.jspecify.annotations.Nullable;
import org.loomwright.drawing.Stroke.At;

/**
 * Draws cavities with their numbers on paper.
 *
 * @param lettering how numbers are written
 */
record CavityPen(Lettering lettering) {
  private static final double LARGEST_NUMBER = 3.6;

  /** Accents reach this far above the middle of a capital, descenders this far below it, em. */
  private static final double ABOVE = 0.59;

  private static final double BELOW = 0.6;

  /**
   * A cavity on paper.
   *
   * @param x centre, mm
   * @param y centre, mm
   * @param shape its shape in mm on paper
   */
  record Drawn(double x, double y, CavityShape shape) {}

  /** Room on paper that text takes, mm. */
  record Room(double left, double top, double right, double bottom) {
    boolean meets(Room other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  /**
   * One cavity with its number.
   *
   * @param ring how far outside the ring round the one meant is, mm
   */
  String cavity(Drawn cavity, String number, @Nullable CavityMark mark, double ring) {
    StringBuilder svg = new StringBuilder();
    for (Stroke it : cavity.shape().strokes(mark, ring)) {
      svg.append(it.moved(at -> new At(at.x() + cavity.x(), at.y() + cavity.y())).svg());
    }
    if (number.isEmpty()) {
      return svg.toString();
    }
    double size = numberSize(cavity.shape(), number, mark);
    if (mark == CavityMark.BLOCKED) {
      double half = size * LetterWidths.ems(number) / 2 + 0.15;
      svg.append(
          Markup.rect(
              "plate",
              cavity.x() - half,
              cavity.y() - 0.45 * size,
              2 * half,
              0.9 * size,
              0.2,
              "#fff"));
    }
    boolean light = mark == CavityMark.FILLED || mark == CavityMark.SOUGHT;
    return svg.append(
            lettering.line(cavity.x(), cavity.y(), size, light ? "#fff" : Stroke.INK, number))
        .toString();
  }

  /** Font size of the number, mm. */
  static double numberSize(CavityShape shape, String number, @Nullable CavityMark mark) {
    return Math.min(
        Math.min(shape.numberHeight(mark) * shape.height(), LARGEST_NUMBER),
        shape.numberWidth(mark) * shape.width() / Math.max(LetterWidths.ems(number), 0.1));
  }

  /** Room the number takes. */
  static Room number(Drawn cavity, String number, @Nullable CavityMark mark) {
    double size = number.isEmpty() ? 0 : numberSize(cavity.shape(), number, mark);
    double half = size * LetterWidths.ems(number) / 2;
    return new Room(
        cavity.x() - half, cavity.y() - ABOVE * size, cavity.x() + half, cavity.y() + BELOW * size);
  }

  /** Room of a cavity grown on all sides. */
  static Room room(Drawn cavity, double grown) {
    double halfX = cavity.shape().width() / 2 + grown;
    double halfY = cavity.shape().height() / 2 + grown;
    return new Room(cavity.x() - halfX, cavity.y() - halfY, cavity.x() + halfX, cavity.y() + halfY);
  }
}
