package org.loomwright.drawing.map;

import java.util.List;
import org.loomwright.drawing.ink.Box;
import org.loomwright.drawing.ink.Hatch;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Spot;

/** Draws what leads end in, each kind in a shape of its own, all in one ink. */
final class EndPen {
  /** Side of the square a symbol fills, mm. */
  static final double SIDE_MM = 4;

  private static final double LINE = 0.35;

  private EndPen() {}

  /** A symbol round a point. */
  static void draw(Sheet sheet, EndKind kind, Spot at) {
    double x = at.x();
    double y = at.y();
    switch (kind) {
      case HOUSING -> {
        sheet.rect("end-housing", new Box(x - 2, y - 1.5, x + 2, y + 1.5), "#fff", Sheet.INK, 0.5);
        for (double dx = -1; dx <= 1; dx++) {
          sheet.rect(
              "pin", new Box(x + dx - 0.25, y - 0.7, x + dx + 0.25, y + 0.7), Sheet.INK, "none", 0);
        }
      }
      case CONNECTOR -> {
        sheet.rect("end-connector", new Box(x - 2, y - 2, x + 2, y + 2), "#fff", Sheet.INK, 0.5);
        for (double dx = -0.9; dx < 1; dx += 1.8) {
          for (double dy = -0.9; dy < 1; dy += 1.8) {
            sheet.circle("cavity", new Spot(x + dx, y + dy), 0.5, "#fff", Sheet.INK, 0.3);
          }
        }
      }
      case BLOCK -> {
        sheet.rect("end-block", new Box(x - 2, y - 2, x + 2, y + 2), "#fff", Sheet.INK, 0.5);
        sheet.rect("fuse", new Box(x - 1.2, y - 0.6, x + 1.2, y + 0.6), "none", Sheet.INK, 0.3);
        sheet.line("fuse", new Spot(x - 2, y), new Spot(x + 2, y), Sheet.INK, 0.3, "");
      }
      case GROUND -> {
        line(sheet, "end-ground", x, y - 2, x, y - 0.3);
        line(sheet, "bar", x - 1.9, y - 0.3, x + 1.9, y - 0.3);
        line(sheet, "bar", x - 1.2, y + 0.6, x + 1.2, y + 0.6);
        line(sheet, "bar", x - 0.5, y + 1.5, x + 0.5, y + 1.5);
      }
      case CIRCUIT -> {
        sheet.line(
            "end-circuit", new Spot(x - 2, y + 1), new Spot(x + 2, y + 1), Sheet.INK, 0.7, "");
        line(sheet, "branch", x, y - 2, x, y + 1);
        sheet.circle("dot", new Spot(x, y + 1), 0.75, Sheet.INK, "none", 0);
      }
      case JOINT -> {
        line(sheet, "branch", x - 2, y - 1.2, x, y);
        line(sheet, "branch", x - 2, y + 1.2, x, y);
        line(sheet, "branch", x, y, x + 2, y);
        sheet.circle("end-joint", at, 0.9, Sheet.INK, "none", 0);
      }
      case PARKED -> parked(sheet, new Box(x - 2, y - 1.1, x + 2, y + 1.1));
    }
  }

  /** A hatched cap. */
  private static void parked(Sheet sheet, Box box) {
    sheet.rect("end-parked", box, "#fff", "none", 0);
    List<Spot> corners =
        List.of(
            new Spot(box.left(), box.top()),
            new Spot(box.right(), box.top()),
            new Spot(box.right(), box.bottom()),
            new Spot(box.left(), box.bottom()));
    sheet.path("hatch", Hatch.of(corners, box, 0.9), Sheet.INK, 0.25, "");
    sheet.rect("cap", box, "none", Sheet.INK, LINE);
  }

  private static void line(Sheet sheet, String name, double x, double y, double toX, double toY) {
    sheet.line(name, new Spot(x, y), new Spot(toX, toY), Sheet.INK, LINE, "");
  }
}
