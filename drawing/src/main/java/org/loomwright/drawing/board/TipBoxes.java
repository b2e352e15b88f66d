package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;

/** Where an end and its table can lie. Both are upright, so that they read as they are. */
final class TipBoxes {
  private TipBoxes() {}

  /** The box of an end whose branch arrives at its side, or at its corner on a slant. */
  static Box body(Point at, int headingDegrees, double widthMm, double heightMm) {
    return new Box(
        at.xMm() + offset(Trail.dx(headingDegrees), widthMm),
        at.yMm() + offset(Trail.dy(headingDegrees), heightMm),
        widthMm,
        heightMm);
  }

  private static double offset(double heading, double size) {
    if (heading > 0.1) {
      return 0;
    }
    return heading < -0.1 ? -size : -size / 2;
  }

  /** Places for a table beside an end, straight on first, then to its sides. */
  static List<Box> tables(Box body, int headingDegrees, double widthMm, double heightMm) {
    List<Box> places = new ArrayList<>();
    boolean goesAcross = Math.abs(Trail.dx(headingDegrees)) > 0.1;
    int[] across = Trail.dx(headingDegrees) < -0.1 ? new int[] {-1, 1} : new int[] {1, -1};
    int[] down = Trail.dy(headingDegrees) < -0.1 ? new int[] {-1, 1} : new int[] {1, -1};
    if (goesAcross) {
      aside(places, body, across[0], widthMm, heightMm);
      stacked(places, body, down, widthMm, heightMm);
      aside(places, body, across[1], widthMm, heightMm);
    } else {
      stacked(places, body, new int[] {down[0]}, widthMm, heightMm);
      aside(places, body, across[0], widthMm, heightMm);
      aside(places, body, across[1], widthMm, heightMm);
    }
    return places;
  }

  private static void aside(List<Box> places, Box body, int side, double width, double height) {
    double x =
        side > 0 ? body.rightMm() + Draft.TABLE_GAP_MM : body.xMm() - Draft.TABLE_GAP_MM - width;
    for (double y :
        new double[] {body.middle().yMm() - height / 2, body.yMm(), body.bottomMm() - height}) {
      places.add(new Box(x, y, width, height));
    }
  }

  private static void stacked(
      List<Box> places, Box body, int[] sides, double width, double height) {
    for (int side : sides) {
      double y =
          side > 0
              ? body.bottomMm() + Draft.TABLE_GAP_MM
              : body.yMm() - Draft.TABLE_GAP_MM - height;
      for (double x :
          new double[] {body.middle().xMm() - width / 2, body.xMm(), body.rightMm() - width}) {
        places.add(new Box(x, y, width, height));
      }
    }
  }
}
