package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomwright.drawing.board.BoardPlan.Band;
import org.loomwright.drawing.board.BoardPlan.Breakout;
import org.loomwright.drawing.board.BoardPlan.Joint;
import org.loomwright.drawing.board.BoardPlan.LaidEnd;
import org.loomwright.drawing.board.BoardPlan.Line;
import org.loomwright.drawing.board.BoardPlan.Match;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardPlan.Spot;

/** What a sheet says, and where: names, lengths, marks and the foot. */
final class SheetTexts {
  static final double TEXT_MM = 4;
  static final double NAME_MM = 4.6;

  private final BoardPlan plan;
  private final Sheet sheet;
  private final BoardWords words;
  private final Texts texts;

  private SheetTexts(BoardPlan plan, Sheet sheet, BoardWords words) {
    this.plan = plan;
    this.sheet = sheet;
    this.words = words;
    this.texts = new Texts(sheet, plan.board());
  }

  /** All texts of a sheet, placed. */
  static Texts of(BoardPlan plan, Sheet sheet, BoardWords words) {
    SheetTexts it = new SheetTexts(plan, sheet, words);
    it.keepMarksFree();
    it.foot();
    it.sheet.matches().forEach(it::letter);
    it.sheet.ends().forEach(it::end);
    it.sheet.joints().forEach(it::joint);
    it.sheet.splices().forEach(it::splice);
    it.sheet.matches().forEach(it::match);
    it.lengths();
    it.sheet.bands().forEach(it::band);
    return it.texts;
  }

  /** Texts must not lie on what is drawn across or round the bundles. */
  private void keepMarksFree() {
    for (Band band : sheet.bands()) {
      double half = line(band.branch()).diameterMm() / 2 + 1.5;
      texts.keepFree(Lines.around(band.covered()).grown(half));
    }
    for (Spot spot : sheet.splices()) {
      double half = line(spot.branch()).diameterMm() / 2 + 2.5;
      texts.keepFree(Texts.square(spot.at(), half));
    }
    for (Joint joint : sheet.joints()) {
      for (Breakout breakout : joint.breakouts()) {
        texts.keepFree(
            Lines.around(SheetShapes.bar(breakout, line(breakout.branch()).diameterMm())));
      }
    }
  }

  private void foot() {
    Board board = plan.board();
    Optional<Point> left = SheetShapes.ruler(board);
    if (left.isEmpty()) {
      return;
    }
    texts.keepFree(Ruler.box(left.get()));
    Ruler.texts(left.get()).forEach(texts::fixed);
    double fromMm = left.get().xMm() + Ruler.LENGTH_MM + 6;
    double roomMm = board.widthMm() - 6 - fromMm;
    String title =
        String.format(
            Locale.ROOT,
            "%s · sheet %d of %d · board %.0f × %.0f mm · 1:1 · lengths in mm",
            plan.name(),
            sheet.number(),
            plan.sheets().size(),
            board.widthMm(),
            board.heightMm());
    boolean hasNotes = !words.notes().isEmpty();
    footLine("title", title, fromMm, roomMm, left.get().yMm() - (hasNotes ? 3.6 : 2), TEXT_MM);
    if (hasNotes) {
      String notes = String.join(" · ", words.notes());
      footLine("notes", notes, fromMm, roomMm, left.get().yMm() + 1.6, 0.8 * TEXT_MM);
    }
  }

  private void footLine(
      String name, String words, double fromMm, double roomMm, double y, double most) {
    double sizeMm = Math.min(most, most * roomMm / Math.max(1, Ink.widthMm(words, most)));
    if (sizeMm >= 1.2) {
      double middle = fromMm + Ink.widthMm(words, sizeMm) / 2;
      texts.fixed(new Text(name, words, new Point(middle, y), sizeMm, false));
    } else {
      texts.crowdedOut().add(words);
    }
  }

  private void letter(Match match) {
    match
        .body()
        .ifPresent(
            box -> texts.fixed(new Text("match-letter", match.letter(), box.middle(), 6, false)));
  }

  private void match(Match match) {
    Point at = match.body().map(Box::middle).orElse(match.at());
    String says =
        match.body().isPresent()
            ? String.format(
                Locale.ROOT,
                "%s at %.0f → sheet %d",
                match.branch(),
                match.atMm(),
                match.otherSheet())
            : match.branch() + ": " + match.letter() + " → sheet " + match.otherSheet();
    texts.near("match-text", says, at, 9, TEXT_MM);
  }

  private void end(LaidEnd end) {
    Optional<BoardWords.Inset> inset = Optional.ofNullable(words.ends().get(end.name()));
    if (inset.flatMap(BoardWords.Inset::table).isPresent() && end.table().isPresent()) {
      // The table says the name.
      return;
    }
    double nameMm = Ink.widthMm(end.name(), NAME_MM);
    Optional<Box> table = end.table().filter(box -> box.widthMm() >= nameMm + 3);
    if (table.isPresent()) {
      double headMm = SheetShapes.headMm(table.get());
      Point at = new Point(table.get().middle().xMm(), table.get().yMm() + headMm / 2);
      texts.fixed(new Text("end-name", end.name(), at, NAME_MM, false));
      return;
    }
    Box body = end.body();
    boolean fits =
        inset.flatMap(BoardWords.Inset::face).isEmpty()
            && end.kind() != BoardTree.EndKind.STUD
            && body.widthMm() > nameMm + 3
            && body.heightMm() > NAME_MM + 3;
    if (fits) {
      texts.fixed(new Text("end-name", end.name(), body.middle(), NAME_MM, false));
    } else {
      double away = Math.max(body.widthMm(), body.heightMm()) / 2 + 2;
      texts.near("end-name", end.name(), body.middle(), away, NAME_MM);
    }
  }

  private void joint(Joint joint) {
    double thickest =
        joint.breakouts().stream()
            .mapToDouble(breakout -> line(breakout.branch()).diameterMm())
            .max()
            .orElse(0);
    texts.near("junction-name", joint.name(), joint.at(), thickest / 2 + 4, NAME_MM);
  }

  private void splice(Spot spot) {
    double half = line(spot.branch()).diameterMm() / 2 + 1.5;
    texts.near("splice-name", spot.name(), spot.at(), half + 2, TEXT_MM);
  }

  private void band(Band band) {
    if (!band.text().isBlank()) {
      Point at = Lines.place(band.covered(), Lines.lengthMm(band.covered()) / 2).at();
      double awayMm = line(band.branch()).diameterMm() / 2 + 3;
      texts.near("band-text", band.text(), at, awayMm, 0.85 * TEXT_MM);
    }
  }

  private void lengths() {
    for (Line line : sheet.lines()) {
      String length = Ink.number(Math.round(line.lengthMm() * 10) / 10.0);
      String more = words.branches().getOrDefault(line.branch(), "");
      String says = line.branch() + "  " + length + (more.isEmpty() ? "" : "  " + more);
      texts.along("length", says, line, TEXT_MM);
    }
  }

  private Line line(String branch) {
    return SheetShapes.line(sheet, branch);
  }

  /** The room that everything on a sheet takes, its foot left out. */
  static Box used(Sheet sheet, Texts texts) {
    List<Point> corners = new ArrayList<>();
    for (Line line : sheet.lines()) {
      add(corners, Lines.around(line.points()).grown(line.diameterMm() / 2 + 2));
    }
    for (LaidEnd end : sheet.ends()) {
      add(corners, end.body());
      end.table().ifPresent(box -> add(corners, box));
    }
    sheet.pegs().forEach(peg -> add(corners, Texts.square(peg.at(), peg.diameterMm() / 2)));
    sheet.matches().forEach(match -> match.body().ifPresent(box -> add(corners, box)));
    written(texts).forEach(text -> add(corners, text.box()));
    return Lines.around(corners);
  }

  /** Texts that are not the board's foot. */
  private static List<Text> written(Texts texts) {
    List<String> foot = List.of("title", "notes", "ruler-text");
    return texts.placed().stream().filter(text -> !foot.contains(text.name())).toList();
  }

  /** Boxes of everything, then of what must not be written on: texts, ends, pegs. */
  static List<List<Box>> busy(Sheet sheet, Texts texts) {
    List<Box> solid = new ArrayList<>(written(texts).stream().map(Text::box).toList());
    for (LaidEnd end : sheet.ends()) {
      solid.add(end.body());
      end.table().ifPresent(solid::add);
    }
    sheet.pegs().forEach(peg -> solid.add(Texts.square(peg.at(), peg.diameterMm() / 2)));
    sheet.matches().forEach(match -> match.body().ifPresent(solid::add));
    List<Box> all = new ArrayList<>(solid);
    texts.leaders().forEach(leader -> all.add(Lines.around(leader)));
    for (Line line : sheet.lines()) {
      for (int i = 1; i < line.points().size(); i++) {
        Box around = Lines.around(line.points().subList(i - 1, i + 1));
        all.add(around.grown(line.diameterMm() / 2 + 1));
      }
    }
    return List.of(all, solid);
  }

  private static void add(List<Point> corners, Box box) {
    corners.add(new Point(box.xMm(), box.yMm()));
    corners.add(new Point(box.rightMm(), box.bottomMm()));
  }
}
