package org.loomwright.drawing.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.model.design.Plan;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.vehicle.Vehicle;

/**
 * The run map of a kit: places as numbered stops, runs in use as broad paths with a track for each
 * lead, what leads end in on cards beside the stops, and a key in words. Leads that serve only some
 * cases have gaps and name the cases; runs not in use are thin, those that may not be used crossed.
 * Marked places lie where they are marked, over the picture of the vehicle's plan view where there
 * is one; the others are laid out. Same input, same bytes.
 */
public final class RunMap {
  /** Narrowest map, mm. */
  public static final double LEAST_WIDTH_MM = 90;

  /** Below this width what ends at the stops is written under the map, by the stops' numbers. */
  private static final double CARDS_FROM_MM = 140;

  private static final double SIZE_MM = 2.2;
  private static final double SIZE_NARROW_MM = 2.6;

  private RunMap() {}

  /** A stretch of the picture that is never broken. */
  interface Block {
    /** Its height, mm. */
    double heightMm();

    /** Room kept above it, mm. */
    default double gapMm() {
      return 2;
    }

    /** Draws it with its upper edge at a height. */
    void draw(Sheet sheet, double top);
  }

  /**
   * Draws a map with everything that belongs to it in one picture.
   *
   * @param plan the kit
   * @param vehicle its vehicle
   * @param picture the picture of the vehicle's plan view
   * @param widthMm width of the picture, 90 mm or more; some 100 mm read well on a phone
   * @param lettering how text is written
   * @throws IllegalArgumentException when the width is too small
   */
  public static String svg(
      Plan plan, Vehicle vehicle, Optional<Picture> picture, double widthMm, Lettering lettering) {
    return svg(plan, vehicle, picture, widthMm, lettering, Display.METRIC);
  }

  /** The same with lengths in the wanted units. */
  public static String svg(
      Plan plan,
      Vehicle vehicle,
      Optional<Picture> picture,
      double widthMm,
      Lettering lettering,
      Display units) {
    return pages(plan, vehicle, picture, widthMm, Double.POSITIVE_INFINITY, lettering, units)
        .get(0);
  }

  /**
   * The same in pictures of at most some height: the map first, then what found no room on it, and
   * the key. Only a map that can't be made low enough is higher.
   *
   * @param heightMm largest height of a picture, mm
   */
  public static List<String> pages(
      Plan plan,
      Vehicle vehicle,
      Optional<Picture> picture,
      double widthMm,
      double heightMm,
      Lettering lettering) {
    return pages(plan, vehicle, picture, widthMm, heightMm, lettering, Display.METRIC);
  }

  private static List<String> pages(
      Plan plan,
      Vehicle vehicle,
      Optional<Picture> picture,
      double widthMm,
      double heightMm,
      Lettering lettering,
      Display units) {
    if (!(widthMm >= LEAST_WIDTH_MM)) {
      throw new IllegalArgumentException(
          "a run map of " + widthMm + " mm is too narrow; give " + LEAST_WIDTH_MM + " mm or more");
    }
    RunGraph graph = RunGraph.of(plan, vehicle);
    List<Boolean> always = graph.leads().stream().map(it -> EndRows.always(plan, it)).toList();
    Optional<String> data = picture.map(Picture::dataUri);
    Scene scene = scene(graph, vehicle, widthMm, heightMm, units);
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block() {
          @Override
          public double heightMm() {
            return scene.heightMm();
          }

          @Override
          public void draw(Sheet sheet, double top) {
            new SceneDrawing(scene, always, sheet, top).draw(data);
          }
        });
    blocks.addAll(new MapKey(scene, plan, vehicle, always, widthMm).blocks());
    return stacked(blocks, widthMm, heightMm, "run map: " + plan.kit().name(), lettering);
  }

  /** The most telling scene that is low enough. */
  private static Scene scene(
      RunGraph graph, Vehicle vehicle, double widthMm, double heightMm, Display units) {
    boolean narrow = widthMm < CARDS_FROM_MM;
    double size = narrow ? SIZE_NARROW_MM : SIZE_MM;
    if (!narrow) {
      for (double rowMm : new double[] {30, 24}) {
        Scene trial = new Scene(graph, vehicle.planView(), widthMm, true, rowMm, size, units);
        if (trial.heightMm() <= heightMm) {
          return trial;
        }
      }
    }
    Scene trial = new Scene(graph, vehicle.planView(), widthMm, false, 18, size, units);
    return trial.heightMm() <= heightMm
        ? trial
        : new Scene(graph, vehicle.planView(), widthMm, false, 11, size, units);
  }

  private static List<String> stacked(
      List<Block> blocks, double widthMm, double heightMm, String title, Lettering lettering) {
    List<String> pages = new ArrayList<>();
    Sheet sheet = new Sheet(lettering);
    double y = 0;
    for (Block block : blocks) {
      if (y > 0 && y + block.gapMm() + block.heightMm() > heightMm) {
        pages.add(sheet.svg(widthMm, y, title));
        sheet = new Sheet(lettering);
        y = 0;
      }
      double top = y > 0 ? y + block.gapMm() : 0;
      block.draw(sheet, top);
      y = top + block.heightMm();
    }
    pages.add(sheet.svg(widthMm, Math.max(1, y), title));
    return pages;
  }
}
