package org.loomwright.web.map;

import java.util.Optional;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.vehicle.PlanView;

/**
 * The ground of a map: its size, and its picture or a grid.
 *
 * @param alongMm length, mm
 * @param downMm width, mm
 * @param picture the picture as the address of an image; absent for none
 * @param shape width of the picture divided by its height, px; 0 for none
 */
public record PlanGround(double alongMm, double downMm, Optional<String> picture, double shape) {
  private static final double GRID_MM = 500;

  /** Width of the map on a desk's page, px; with a script it is measured. */
  private static final double USUAL_PX = 800;

  private static final double MARGIN = 0.03;

  /** Ground of a view. */
  static PlanGround of(PlanView view, Optional<Picture> picture) {
    return new PlanGround(
        view.along().mm(),
        view.down().mm(),
        picture.map(Picture::dataUri),
        picture.map(it -> (double) it.widthPx() / it.heightPx()).orElse(0.0));
  }

  /** Millimetres of the vehicle for each pixel, as far as it is known before the page is shown. */
  public String scale() {
    return MapWords.number(alongMm / USUAL_PX);
  }

  /** Room around the view, so that what stands at its edge can be seen and touched. */
  public double marginMm() {
    return MARGIN * alongMm;
  }

  /** The window on the view, with a margin. */
  public String viewBox() {
    return MapWords.number(-marginMm())
        + " "
        + MapWords.number(-marginMm())
        + " "
        + MapWords.number(alongMm + 2 * marginMm())
        + " "
        + MapWords.number(downMm + 2 * marginMm());
  }

  /** Lines of the grid. */
  public String grid() {
    StringBuilder path = new StringBuilder();
    for (double at = GRID_MM; at < alongMm; at += GRID_MM) {
      path.append('M').append(MapWords.number(at)).append(" 0v").append(MapWords.number(downMm));
    }
    for (double at = GRID_MM; at < downMm; at += GRID_MM) {
      path.append("M0 ").append(MapWords.number(at)).append('h').append(MapWords.number(alongMm));
    }
    return path.toString();
  }

  /** Length of the scale's bar: a metre, or less where the view is small. */
  public double barMm() {
    return alongMm >= 3000 ? 1000 : alongMm >= 300 ? 100 : 10;
  }
}
