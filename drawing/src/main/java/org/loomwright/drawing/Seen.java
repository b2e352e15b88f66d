package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

/**
 * A face as the fitter sees it. Picture and words both come from here, so they can't disagree.
 *
 * @param widthMm width of the face in this view
 * @param heightMm height of the face in this view
 * @param cavities cavities in the housing's order; x to the right, y downwards from the top left
 *     corner
 */
record Seen(double widthMm, double heightMm, List<Spot> cavities) {

  Seen {
    cavities = List.copyOf(cavities);
  }

  /**
   * A cavity in the view.
   *
   * @param number number as moulded
   * @param x centre, mm
   * @param y centre, mm
   * @param widthMm width in the view
   * @param heightMm height in the view
   */
  record Spot(String number, double x, double y, double widthMm, double heightMm) {}

  static Seen of(Housing housing, View view) {
    double width = housing.width().mm();
    double height = housing.height().mm();
    boolean sideways =
        switch (view.latch()) {
          case UP, DOWN -> false;
          case RIGHT, LEFT -> true;
        };
    List<Spot> spots = new ArrayList<>();
    for (Cavity cavity : housing.cavities()) {
      // On file: wire side, latch up. The mating side is its mirror image.
      double x = view.side() == Side.WIRE_SIDE ? cavity.x().mm() : width - cavity.x().mm();
      double y = cavity.y().mm();
      double seenX =
          switch (view.latch()) {
            case UP -> x;
            case RIGHT -> height - y;
            case DOWN -> width - x;
            case LEFT -> y;
          };
      double seenY =
          switch (view.latch()) {
            case UP -> y;
            case RIGHT -> x;
            case DOWN -> height - y;
            case LEFT -> width - x;
          };
      double across = cavity.width().mm();
      double down = cavity.height().mm();
      spots.add(
          new Spot(
              cavity.number(), seenX, seenY, sideways ? down : across, sideways ? across : down));
    }
    return new Seen(sideways ? height : width, sideways ? width : height, spots);
  }

  /**
   * The cavity with this number.
   *
   * @throws IllegalArgumentException when the face has none
   */
  Spot spot(String number) {
    return cavities.stream()
        .filter(it -> it.number().equals(number))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the face has no cavity '" + number + "'"));
  }
}
