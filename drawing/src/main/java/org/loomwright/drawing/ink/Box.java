package org.loomwright.drawing.ink;

/**
 * An upright rectangle, mm to the right and downwards.
 *
 * @param left left edge
 * @param top upper edge
 * @param right right edge, not left of the left one
 * @param bottom lower edge, not above the upper one
 */
public record Box(double left, double top, double right, double bottom) {

  /** A box by its corner and size. */
  public static Box at(double left, double top, double width, double height) {
    return new Box(left, top, left + width, top + height);
  }

  /** Width, mm. */
  public double width() {
    return right - left;
  }

  /** Height, mm. */
  public double height() {
    return bottom - top;
  }

  /** Whether the two share some area; touching edges do not count. */
  public boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /** Whether this box lies in the other, edges included. */
  public boolean within(Box other) {
    return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
  }

  /** The box larger by a margin on each side. */
  public Box grown(double margin) {
    return new Box(left - margin, top - margin, right + margin, bottom + margin);
  }
}
