package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.FaceEdge;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Key;
import org.loomwright.model.parts.KeyForm;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

/**
 * A face as the fitter sees it. Picture and words both come from here, so they can't disagree.
 *
 * @param widthMm width of the face in this view
 * @param heightMm height of the face in this view
 * @param round whether the face is a circle
 * @param cavities all positions in the housing's order, those moulded closed too; x to the right, y
 *     downwards from the top left corner
 * @param keys keys
 * @param latch middle and size of the edge the latch takes up; empty without a latch
 * @param lock middle and size of the edge along which the secondary lock lies
 */
record Seen(
    double widthMm,
    double heightMm,
    boolean round,
    List<Spot> cavities,
    List<Ridge> keys,
    Optional<Box> latch,
    Optional<Box> lock) {
  /** Share of the top edge a latch of unknown width is drawn on. */
  private static final double LATCH_SHARE = 0.4;

  Seen {
    cavities = List.copyOf(cavities);
    keys = List.copyOf(keys);
  }

  /**
   * A cavity in the view.
   *
   * @param number number as moulded
   * @param x centre, mm
   * @param y centre, mm
   * @param widthMm width in the view
   * @param heightMm height in the view
   * @param closed whether it is moulded closed
   * @param round whether it is round
   */
  record Spot(
      String number,
      double x,
      double y,
      double widthMm,
      double heightMm,
      boolean closed,
      boolean round) {}

  /** A rectangle by its centre and size, mm. */
  record Box(double x, double y, double widthMm, double heightMm) {}

  /** A key in the view. */
  record Ridge(KeyForm form, Box box) {}

  static Seen of(Housing housing, View view) {
    double width = housing.width().mm();
    double height = housing.height().mm();
    Turn turn = new Turn(width, height, view);
    List<Spot> spots = new ArrayList<>();
    for (Cavity it : housing.cavities()) {
      Box box = turn.box(it.x().mm(), it.y().mm(), it.width().mm(), it.height().mm());
      spots.add(
          new Spot(
              it.number(),
              box.x(),
              box.y(),
              box.widthMm(),
              box.heightMm(),
              it.closed(),
              it.round() || housing.round()));
    }
    List<Ridge> keys = new ArrayList<>();
    for (Key it : housing.keys()) {
      keys.add(
          new Ridge(
              it.form(), turn.box(it.x().mm(), it.y().mm(), it.width().mm(), it.height().mm())));
    }
    Optional<Box> latch =
        housing.latch()
            ? Optional.of(
                housing
                    .latchForm()
                    .map(it -> turn.box(it.x().mm(), 0, it.width().mm(), 0))
                    .orElseGet(() -> turn.box(width / 2, 0, LATCH_SHARE * width, 0)))
            : Optional.empty();
    return new Seen(
        turn.sideways() ? height : width,
        turn.sideways() ? width : height,
        housing.round(),
        spots,
        keys,
        latch,
        housing.lockEdge().map(it -> edge(turn, it)));
  }

  private static Box edge(Turn turn, FaceEdge edge) {
    double width = turn.width();
    double height = turn.height();
    return switch (edge) {
      case TOP -> turn.box(width / 2, 0, width, 0);
      case BOTTOM -> turn.box(width / 2, height, width, 0);
      case LEFT -> turn.box(0, height / 2, 0, height);
      case RIGHT -> turn.box(width, height / 2, 0, height);
    };
  }

  /**
   * From the face as on file, wire side and latch up, to the view.
   *
   * @param width width on file, mm
   * @param height height on file, mm
   */
  private record Turn(double width, double height, View view) {
    boolean sideways() {
      return switch (view.latch()) {
        case UP, DOWN -> false;
        case RIGHT, LEFT -> true;
      };
    }

    Box box(double fileX, double y, double across, double down) {
      // The mating side is the mirror image of the wire side.
      double x = view.side() == Side.WIRE_SIDE ? fileX : width - fileX;
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
      return sideways() ? new Box(seenX, seenY, down, across) : new Box(seenX, seenY, across, down);
    }
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
