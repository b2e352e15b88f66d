package org.loomwright.drawing.board;

import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.board.BoardPlan.Band;
import org.loomwright.drawing.board.BoardPlan.Breakout;
import org.loomwright.drawing.board.BoardPlan.Joint;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Match;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardPlan.Spot;

/** Draws all of a sheet that is no text. */
final class SheetShapes {
  /** Lines on a map, mm of the board. */
  private static final double MAP_LINE_MM = 6;

  private final BoardPlan plan;
  private final Sheet sheet;
  private final BoardWords words;
  private final Ink ink;

  private SheetShapes(BoardPlan plan, Sheet sheet, BoardWords words, Ink ink) {
    this.plan = plan;
    this.sheet = sheet;
    this.words = words;
    this.ink = ink;
  }

  static void draw(BoardPlan plan, Sheet sheet, BoardWords words, Ink ink) {
    new SheetShapes(plan, sheet, words, ink).draw();
  }

  static Line line(Sheet sheet, String branch) {
    return sheet.lines().stream()
        .filter(line -> line.branch().equals(branch))
        .findFirst()
        .orElseThrow();
  }

  /** The bar across a branch at its breakout. */
  static List<Point> bar(Breakout breakout, double diameterMm) {
    double half = diameterMm / 2 + 1;
    Lines.Place place = new Lines.Place(breakout.at(), breakout.headingDegrees());
    return List.of(place.beside(half), place.beside(-half));
  }

  /** Height of a plain table's head. */
  static double headMm(Box table) {
    return Math.min(table.heightMm(), SheetTexts.NAME_MM + 2.4);
  }

  /** Left end of the ruler in the strip below the board's inside; empty where it has no room. */
  static Optional<Point> ruler(Board board) {
    double gap = board.marginMm() / 2;
    boolean hasRoom =
        board.marginMm() >= 2 * Ruler.HEIGHT_MM && board.widthMm() >= 2 * gap + Ruler.LENGTH_MM;
    return hasRoom
        ? Optional.of(new Point(gap, board.heightMm() - gap + Ruler.HEIGHT_MM / 2))
        : Optional.empty();
  }

  private void draw() {
    Board board = plan.board();
    ink.box("board", new Box(0, 0, board.widthMm(), board.heightMm()).grown(-0.3), 0.6, "none", "");
    inside();
    ruler(board).ifPresent(left -> Ruler.draw(ink, left));
  }

  /** Thick lines and grey ends, to be seen when drawn small. */
  static void outline(Sheet sheet, Ink ink) {
    for (Line line : sheet.lines()) {
      double thick = Math.max(MAP_LINE_MM, line.diameterMm());
      ink.line("map-bundle", line.points(), Ink.BLACK, thick, " stroke-linejoin=\"round\"");
    }
    for (LaidEnd end : sheet.ends()) {
      ink.box("map-end", end.body(), MAP_LINE_MM / 2, "#ccc", "");
      end.table().ifPresent(table -> ink.box("map-table", table, MAP_LINE_MM / 4, "#fff", ""));
    }
    for (Match match : sheet.matches()) {
      match.body().ifPresent(box -> ink.box("map-match", box, MAP_LINE_MM / 2, "#fff", ""));
    }
  }

  private void inside() {
    tubes();
    sheet.bands().forEach(this::band);
    sheet.joints().forEach(this::joint);
    sheet.ends().forEach(this::end);
    sheet.splices().forEach(this::splice);
    sheet
        .pegs()
        .forEach(
            peg -> {
              ink.circle("peg", peg.at(), peg.diameterMm() / 2, 0.35, "#fff");
              ink.circle("peg-middle", peg.at(), 0.4, 0, Ink.BLACK);
            });
    sheet.matches().forEach(this::match);
  }

  private void tubes() {
    String ends = " stroke-linejoin=\"round\"";
    for (Line line : sheet.lines()) {
      ink.line("bundle", line.points(), Ink.BLACK, line.diameterMm(), ends);
    }
    for (Line line : sheet.lines()) {
      double inner = Math.max(0.4 * line.diameterMm(), line.diameterMm() - 0.9);
      ink.line("bundle-inside", line.points(), "#fff", inner, ends);
    }
    for (Line line : sheet.lines()) {
      ink.line("middle", line.points(), "#777", 0.2, " stroke-dasharray=\"6 1.5 1 1.5\"");
    }
  }

  private void band(Band band) {
    double diameter = line(sheet, band.branch()).diameterMm();
    if (band.kind() == BoardTree.MarkKind.LABEL) {
      ink.line("label", band.covered(), Ink.BLACK, diameter + 3, "");
      List<Point> inner = Lines.between(band.covered(), 0.5, Lines.lengthMm(band.covered()) - 0.5);
      if (!inner.isEmpty()) {
        ink.line("label-inside", inner, "#fff", diameter + 2, "");
      }
    } else {
      ink.line("tape", band.covered(), "#fff", diameter + 1, "");
      String stripes = " stroke-dasharray=\"1 1.6\"";
      ink.line("tape-stripes", band.covered(), Ink.BLACK, diameter + 1, stripes);
    }
  }

  private void joint(Joint joint) {
    for (Breakout breakout : joint.breakouts()) {
      List<Point> bar = bar(breakout, line(sheet, breakout.branch()).diameterMm());
      ink.line("breakout", bar, Ink.BLACK, 0.6, "");
    }
    ink.circle("junction", joint.at(), 1.1, 0, Ink.BLACK);
  }

  private void end(LaidEnd end) {
    Optional<BoardWords.Inset> inset = Optional.ofNullable(words.ends().get(end.name()));
    Box body = end.body();
    Optional<String> face = inset.flatMap(BoardWords.Inset::face);
    boolean hasRoomRoundIt = face.filter(it -> it.startsWith("<svg")).isPresent();
    if (end.headingDegrees() % 90 != 0 || hasRoomRoundIt) {
      // A slanted branch meets its end at a corner, and a face has room round it; show that they
      // belong together.
      ink.line("lead-in", List.of(end.at(), body.middle()), Ink.BLACK, 1, "");
    }
    if (face.isPresent()) {
      placed(body, face.get());
    } else if (end.kind() == BoardTree.EndKind.STUD) {
      double radius = Math.min(body.widthMm(), body.heightMm()) / 2 - 0.4;
      ink.circle("stud", body.middle(), radius, 0.8, "#fff");
      ink.circle("stud-hole", body.middle(), 0.45 * radius, 0.5, "#fff");
    } else {
      boolean isOpen = end.kind() == BoardTree.EndKind.OPEN;
      ink.box("end", body.grown(-0.4), 0.8, "#fff", isOpen ? " stroke-dasharray=\"3 2\"" : "");
    }
    end.table().ifPresent(table -> table(end, table, inset.flatMap(BoardWords.Inset::table)));
  }

  private void table(LaidEnd end, Box table, Optional<String> drawn) {
    if (drawn.isPresent()) {
      placed(table, drawn.get());
      return;
    }
    ink.box("table", table.grown(-0.2), 0.35, "#fff", "");
    if (table.widthMm() >= Ink.widthMm(end.name(), SheetTexts.NAME_MM) + 3) {
      double y = table.yMm() + headMm(table);
      List<Point> rule = List.of(new Point(table.xMm(), y), new Point(table.rightMm(), y));
      ink.line("table-head", rule, Ink.BLACK, 0.35, "");
    }
  }

  private void placed(Box box, String elements) {
    ink.raw(
        "<g transform=\"translate("
            + Ink.number(box.xMm())
            + " "
            + Ink.number(box.yMm())
            + ")\">"
            + elements
            + "</g>\n");
  }

  private void splice(Spot spot) {
    double half = line(sheet, spot.branch()).diameterMm() / 2 + 1.5;
    Lines.Place place = new Lines.Place(spot.at(), spot.headingDegrees());
    Lines.Place square = new Lines.Place(spot.at(), spot.headingDegrees() - 90);
    ink.polygon(
        "splice",
        Ink.BLACK,
        0,
        place.beside(half),
        square.beside(half + 1),
        place.beside(-half),
        square.beside(-half - 1));
  }

  private void match(Match match) {
    if (match.body().isPresent()) {
      Box box = match.body().get();
      ink.box("match", box.grown(-0.4), 0.8, "#fff", "");
      ink.box("match-inside", box.grown(-1.6), 0.3, "none", "");
    }
  }
}
