package org.loomwright.drawing.board;

/**
 * An upright rectangle.
 *
 * @param xMm left edge, mm
 * @param yMm top edge, mm
 * @param widthMm 0 or more, mm
 * @param heightMm 0 or more, mm
 */
public record Box(double xMm, double yMm, double widthMm, double heightMm) {

  /** Right edge, mm. */
  public double rightMm() {
    return xMm + widthMm;
  }

  /** Bottom edge, mm. */
  public double bottomMm() {
    return yMm + heightMm;
  }

  /** The middle. */
  public Point middle() {
    return new Point(xMm + widthMm / 2, yMm + heightMm / 2);
  }

  /** The box grown by the same amount on each side; a negative amount shrinks it. */
  public Box grown(double byMm) {
    return new Box(xMm - byMm, yMm - byMm, widthMm + 2 * byMm, heightMm + 2 * byMm);
  }

  /** Whether the other box lies inside this one or touches its edge from inside. */
  public boolean holds(Box other) {
    return other.xMm >= xMm
        && other.yMm >= yMm
        && other.rightMm() <= rightMm()
        && other.bottomMm() <= bottomMm();
  }

  /** Whether the shortest distance between two boxes is less than that, mm. */
  public boolean isNearer(Box other, double mm) {
    double dx = Math.max(0, Math.max(xMm - other.rightMm(), other.xMm - rightMm()));
    double dy = Math.max(0, Math.max(yMm - other.bottomMm(), other.yMm - bottomMm()));
    return dx * dx + dy * dy < mm * mm;
  }
}
