package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.board.BoardPlan.Band;
import org.loomwright.drawing.board.BoardPlan.Breakout;
import org.loomwright.drawing.board.BoardPlan.Joint;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Match;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardPlan.Spot;

/**
 * A sheet of a plan as SVG, one unit a millimetre, black on white.
 *
 * <p>A bundle is a tube of its true diameter. A bar across it marks a breakout, a black diamond a
 * splice, a white sleeve a label and a striped one tape; a circle with a dot is a peg; a letter in
 * a double frame is a match line.
 */
public final class BoardSvg {
  private static final double TEXT_MM = 4;
  private static final double NAME_MM = 4.6;
  private static final double RULER_MM = 100;

  private final BoardPlan plan;
  private final Sheet sheet;
  private final Map<String, Inset> insets;
  private final Ink ink = new Ink();
  private final Texts texts;

  private BoardSvg(BoardPlan plan, Sheet sheet, Map<String, Inset> insets) {
    this.plan = plan;
    this.sheet = sheet;
    this.insets = insets;
    this.texts = new Texts(sheet, plan.board());
  }

  /**
   * What is drawn at an end, in mm from the upper left corner of its room.
   *
   * @param face SVG elements for the end's body; empty for a plain frame with the name
   * @param table SVG elements for the table; empty for a plain frame with the name
   */
  public record Inset(Optional<String> face, Optional<String> table) {}

  /** The sheet as a document of the board's size. */
  public static String document(BoardPlan plan, Sheet sheet, Map<String, Inset> insets) {
    String width = Ink.number(plan.board().widthMm());
    String height = Ink.number(plan.board().heightMm());
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
        + width
        + "mm\" height=\""
        + height
        + "mm\" viewBox=\"0 0 "
        + width
        + " "
        + height
        + "\">\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n"
        + content(plan, sheet, insets)
        + "</svg>\n";
  }

  /** The sheet's elements in board coordinates, to be put into a document of any size. */
  public static String content(BoardPlan plan, Sheet sheet, Map<String, Inset> insets) {
    BoardSvg svg = new BoardSvg(plan, sheet, insets);
    svg.draw();
    return svg.ink.toString();
  }

  /** All texts of a sheet where they stand, for other forms of the same picture. */
  static List<Texts.Text> texts(BoardPlan plan, Sheet sheet) {
    BoardSvg svg = new BoardSvg(plan, sheet, Map.of());
    svg.draw();
    return svg.texts.placed();
  }

  private void draw() {
    Board board = plan.board();
    ink.raw("<g font-family=\"" + Ink.FONT + "\" fill=\"" + Ink.BLACK + "\">\n");
    ink.box("board", new Box(0, 0, board.widthMm(), board.heightMm()), 0.6, "none", "");
    keepMarksFree();
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
    lengths();
    foot();
    for (Texts.Text text : texts.placed()) {
      ink.text(text.name(), text.at(), text.sizeMm(), text.isUpward(), text.text());
    }
    ink.raw("</g>\n");
  }

  /** Texts must not lie on what is drawn across or round the bundles. */
  private void keepMarksFree() {
    for (Band band : sheet.bands()) {
      double half = line(band.branch()).diameterMm() / 2 + 1.5;
      texts.keepFree(Lines.around(band.covered()).grown(half));
    }
    for (Spot spot : sheet.splices()) {
      double half = line(spot.branch()).diameterMm() / 2 + 1.5;
      texts.keepFree(Texts.square(spot.at(), half));
    }
    for (Joint joint : sheet.joints()) {
      for (Breakout breakout : joint.breakouts()) {
        texts.keepFree(Lines.around(bar(breakout)));
      }
    }
  }

  private List<Point> bar(Breakout breakout) {
    double half = line(breakout.branch()).diameterMm() / 2 + 1;
    Lines.Place place = new Lines.Place(breakout.at(), breakout.headingDegrees());
    return List.of(place.beside(half), place.beside(-half));
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
    Line line = line(band.branch());
    if (band.kind() == BoardTree.MarkKind.LABEL) {
      ink.line("label", band.covered(), Ink.BLACK, line.diameterMm() + 3, "");
      List<Point> inner = Lines.between(band.covered(), 0.5, Lines.lengthMm(band.covered()) - 0.5);
      ink.line("label-inside", inner, "#fff", line.diameterMm() + 2, "");
    } else {
      ink.line("tape", band.covered(), "#fff", line.diameterMm() + 1, "");
      ink.line(
          "tape-stripes",
          band.covered(),
          Ink.BLACK,
          line.diameterMm() + 1,
          " stroke-dasharray=\"1 1.6\"");
    }
    double middle = Lines.lengthMm(band.covered()) / 2;
    Point at = Lines.place(band.covered(), middle).at();
    texts.near("band-text", band.text(), at, line.diameterMm() / 2 + 3, 0.85 * TEXT_MM);
  }

  private void joint(Joint joint) {
    for (Breakout breakout : joint.breakouts()) {
      double half = line(breakout.branch()).diameterMm() / 2 + 1;
      Lines.Place place = new Lines.Place(breakout.at(), breakout.headingDegrees());
      ink.line("breakout", List.of(place.beside(half), place.beside(-half)), Ink.BLACK, 0.6, "");
    }
    ink.circle("junction", joint.at(), 1.1, 0, Ink.BLACK);
    texts.near("junction-name", joint.name(), joint.at(), thickest(joint) / 2 + 4, NAME_MM);
  }

  private double thickest(Joint joint) {
    return joint.breakouts().stream()
        .mapToDouble(breakout -> line(breakout.branch()).diameterMm())
        .max()
        .orElse(0);
  }

  private void end(LaidEnd end) {
    Optional<Inset> inset = Optional.ofNullable(insets.get(end.name()));
    Box body = end.body();
    Optional<String> face = inset.flatMap(Inset::face);
    if (end.headingDegrees() % 90 != 0) {
      // A slanted branch meets its end at a corner; show that they belong together.
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
    end.table().ifPresent(table -> table(end, table, inset.flatMap(Inset::table)));
    boolean isNamedInTable =
        end.table().filter(box -> box.widthMm() >= nameMm(end) + 3).isPresent();
    if (!isNamedInTable) {
      boolean fits =
          face.isEmpty()
              && end.kind() != BoardTree.EndKind.STUD
              && body.widthMm() > nameMm(end) + 3
              && body.heightMm() > NAME_MM + 3;
      if (fits) {
        texts.fixed(new Texts.Text("end-name", end.name(), body.middle(), NAME_MM, false));
      } else {
        double away = Math.max(body.widthMm(), body.heightMm()) / 2 + 2;
        texts.near("end-name", end.name(), body.middle(), away, NAME_MM);
      }
    }
  }

  private static double nameMm(LaidEnd end) {
    return Ink.widthMm(end.name(), NAME_MM);
  }

  private void table(LaidEnd end, Box table, Optional<String> drawn) {
    if (drawn.isPresent()) {
      placed(table, drawn.get());
      return;
    }
    ink.box("table", table.grown(-0.2), 0.35, "#fff", "");
    if (table.widthMm() >= nameMm(end) + 3) {
      double headMm = Math.min(table.heightMm(), NAME_MM + 2.4);
      Point at = new Point(table.middle().xMm(), table.yMm() + headMm / 2);
      texts.fixed(new Texts.Text("end-name", end.name(), at, NAME_MM, false));
      ink.line(
          "table-head",
          List.of(
              new Point(table.xMm(), table.yMm() + headMm),
              new Point(table.rightMm(), table.yMm() + headMm)),
          Ink.BLACK,
          0.35,
          "");
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
    double half = line(spot.branch()).diameterMm() / 2 + 1.5;
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
    texts.near("splice-name", spot.name(), spot.at(), half + 2, TEXT_MM);
  }

  private void match(Match match) {
    String words = match.letter() + " → sheet " + match.otherSheet();
    if (match.body().isPresent()) {
      Box box = match.body().get();
      ink.box("match", box.grown(-0.4), 0.8, "#fff", "");
      ink.box("match-inside", box.grown(-1.6), 0.3, "none", "");
      texts.fixed(new Texts.Text("match-letter", match.letter(), box.middle(), 6, false));
      String place =
          String.format(
              Locale.ROOT,
              "%s at %.0f → sheet %d",
              match.branch(),
              match.atMm(),
              match.otherSheet());
      texts.near("match-text", place, box.middle(), 9, TEXT_MM);
    } else {
      texts.near("match-text", match.branch() + ": " + words, match.at(), 9, TEXT_MM);
    }
  }

  private void lengths() {
    for (Line line : sheet.lines()) {
      double length = line.lengthMm();
      String text = line.branch() + "  " + Ink.number(Math.round(length * 10) / 10.0);
      texts.along("length", text, line, TEXT_MM);
    }
  }

  private Line line(String branch) {
    return sheet.lines().stream()
        .filter(line -> line.branch().equals(branch))
        .findFirst()
        .orElseThrow();
  }

  /** The ruler and what the sheet is, in the strip below the board's inside. */
  private void foot() {
    Board board = plan.board();
    double y = board.heightMm() - Math.max(6, board.marginMm() / 2);
    double x = Math.max(6, board.marginMm() / 2);
    if (board.widthMm() < x + RULER_MM + 4) {
      return;
    }
    List<Point> edge = new ArrayList<>(List.of(new Point(x, y), new Point(x + RULER_MM, y)));
    ink.line("ruler", edge, Ink.BLACK, 0.3, "");
    for (int mm = 0; mm <= RULER_MM; mm += 5) {
      double tick = mm % 50 == 0 ? 5 : mm % 10 == 0 ? 3.5 : 2;
      Point top = new Point(x + mm, y - tick);
      ink.line("tick", List.of(new Point(x + mm, y), top), Ink.BLACK, 0.25, "");
      if (mm % 50 == 0 && mm > 0) {
        texts.fixed(
            new Texts.Text("ruler-text", mm + "", new Point(x + mm - 5, y - 3.6), 3.2, false));
      }
    }
    String title =
        String.format(
            Locale.ROOT,
            "%s · sheet %d of %d · board %.0f × %.0f mm · 1:1 · lengths in mm",
            plan.name(),
            sheet.number(),
            plan.sheets().size(),
            board.widthMm(),
            board.heightMm());
    double size = TEXT_MM;
    double width = Ink.widthMm(title, size);
    texts.fixed(
        new Texts.Text(
            "title", title, new Point(x + RULER_MM + 10 + width / 2, y - 2), size, false));
  }
}
