package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A large sheet on many small pages at true size. Neighbouring pages show a common strip; marks in
 * it lie at the same places of the sheet on both, so that the pages can be laid on each other.
 *
 * @param sheet the large sheet, mm
 * @param pageWidthMm width of a page as printed, mm
 * @param pageHeightMm height of a page as printed, mm
 * @param marginMm border of a page that shows nothing of the sheet, mm
 * @param overlapMm width of the common strips, mm
 * @param columns pages side by side
 * @param rows pages below each other
 * @param tiles the pages, row by row; pages that would show nothing are left out where the others
 *     still hang together
 * @param marks all marks, with the sheet's coordinates
 */
public record BoardTiles(
    Box sheet,
    double pageWidthMm,
    double pageHeightMm,
    double marginMm,
    double overlapMm,
    int columns,
    int rows,
    List<Tile> tiles,
    List<Mark> marks) {

  /** Room of a mark, mm from its middle. */
  private static final double MARK_MM = 3;

  /** Strip at the top of each page, below the border, for its name and a ruler, mm. */
  private static final double HEAD_MM = 12;

  public BoardTiles {
    tiles = List.copyOf(tiles);
    marks = List.copyOf(marks);
  }

  /** Sizes of paper: ISO 216, and Letter of ANSI/ASME Y14.1. */
  public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4),
    A3(297, 420);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
      this.widthMm = widthMm;
      this.heightMm = heightMm;
    }

    /** The shorter side, mm. */
    public double widthMm() {
      return widthMm;
    }

    /** The longer side, mm. */
    public double heightMm() {
      return heightMm;
    }
  }

  /**
   * One page.
   *
   * @param name letter of the column and number of the row, such as B3
   * @param column from 0
   * @param row from 0
   * @param shown the part of the sheet on this page
   */
  public record Tile(String name, int column, int row, Box shown) {
    /** Whether the other page is the next to the right. */
    boolean isLeftOf(Tile other) {
      return other.row == row && other.column == column + 1;
    }

    /** Whether the other page is the next below. */
    boolean isAbove(Tile other) {
      return other.column == column && other.row == row + 1;
    }

    private boolean isBeside(Tile other) {
      return isLeftOf(other) || other.isLeftOf(this) || isAbove(other) || other.isAbove(this);
    }
  }

  /**
   * A cross in a common strip.
   *
   * @param number printed beside it, the same on all pages that show it
   */
  public record Mark(int number, Point at) {}

  /** Tiles with a margin of 8 mm and an overlap of 12 mm. */
  public static BoardTiles of(Board board, Paper paper) {
    return of(board, paper, 8, 12);
  }

  /**
   * Tiles for a board, upright or across, whichever takes fewer pages.
   *
   * @param marginMm border that printers leave blank, mm, 5 or more
   * @param overlapMm common strip, mm, 8 or more and at most a third of the page
   * @throws IllegalArgumentException when margin or overlap are not in their range
   */
  public static BoardTiles of(Board board, Paper paper, double marginMm, double overlapMm) {
    if (!(marginMm >= 5 && marginMm <= paper.widthMm() / 4)) {
      throw new IllegalArgumentException(
          "tiles: the margin is "
              + marginMm
              + " mm; it must be from 5 mm to a quarter of the page");
    }
    if (!(overlapMm >= 8 && overlapMm <= (paper.widthMm() - 2 * marginMm) / 3)) {
      throw new IllegalArgumentException(
          "tiles: the overlap is "
              + overlapMm
              + " mm; it must be from 8 mm to a third of the printed width");
    }
    Box sheet = new Box(0, 0, board.widthMm(), board.heightMm());
    return of(sheet, paper, marginMm, overlapMm, List.of());
  }

  /**
   * Tiles for the part of a board that a sheet's drawing takes, with a border of 8 mm and strips of
   * 12 mm. Marks keep clear of what is drawn where they can.
   */
  public static BoardTiles of(
      BoardPlan plan, BoardPlan.Sheet sheet, BoardWords words, Paper paper) {
    Texts texts = SheetTexts.of(plan, sheet, words);
    return of(BoardSvg.used(plan, sheet, words), paper, 8, 12, SheetTexts.busy(sheet, texts));
  }

  private static BoardTiles of(
      Box sheet, Paper paper, double marginMm, double overlapMm, List<List<Box>> busy) {
    BoardTiles upright = of(sheet, paper.widthMm(), paper.heightMm(), marginMm, overlapMm, busy);
    BoardTiles across = of(sheet, paper.heightMm(), paper.widthMm(), marginMm, overlapMm, busy);
    return across.tiles.size() < upright.tiles.size() ? across : upright;
  }

  private static BoardTiles of(
      Box sheet,
      double pageWidth,
      double pageHeight,
      double margin,
      double overlap,
      List<List<Box>> busy) {
    int columns = count(sheet.widthMm(), pageWidth - 2 * margin, overlap);
    int rows = count(sheet.heightMm(), pageHeight - 2 * margin - HEAD_MM, overlap);
    // All pages show parts of the same size, so that none shows a mere strip.
    double stepX = columns == 1 ? sheet.widthMm() : (sheet.widthMm() - overlap) / columns;
    double stepY = rows == 1 ? sheet.heightMm() : (sheet.heightMm() - overlap) / rows;
    List<Tile> tiles = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        Box shown =
            new Box(
                sheet.xMm() + column * stepX,
                sheet.yMm() + row * stepY,
                columns == 1 ? stepX : stepX + overlap,
                rows == 1 ? stepY : stepY + overlap);
        tiles.add(new Tile(columnName(column) + (row + 1), column, row, shown));
      }
    }
    if (!busy.isEmpty()) {
      leaveOutBlank(tiles, busy.get(0));
    }
    List<Mark> marks = new ArrayList<>();
    for (Tile tile : tiles) {
      Box shown = tile.shown();
      boolean hasRight = tiles.stream().anyMatch(tile::isLeftOf);
      boolean hasBelow = tiles.stream().anyMatch(tile::isAbove);
      double right = shown.rightMm() - overlap / 2;
      double low = shown.bottomMm() - overlap / 2;
      // About a quarter and three quarters along the strip, clear of the strips' crossings.
      for (double share : new double[] {0.25, 0.75}) {
        if (hasRight) {
          Point at = new Point(right, shown.yMm() + share * shown.heightMm());
          double reach = shown.heightMm() / 4 - overlap - MARK_MM;
          marks.add(new Mark(marks.size() + 1, moved(at, 0, 1, reach, busy)));
        }
        if (hasBelow) {
          Point at = new Point(shown.xMm() + share * shown.widthMm(), low);
          double reach = shown.widthMm() / 4 - overlap - MARK_MM;
          marks.add(new Mark(marks.size() + 1, moved(at, 1, 0, reach, busy)));
        }
      }
    }
    return new BoardTiles(
        sheet, pageWidth, pageHeight, margin, overlap, columns, rows, tiles, marks);
  }

  /** Takes away pages that show nothing, one after the other, while the rest hangs together. */
  private static void leaveOutBlank(List<Tile> tiles, List<Box> drawn) {
    for (Tile tile : List.copyOf(tiles)) {
      boolean isBlank = drawn.stream().noneMatch(box -> box.isNearer(tile.shown(), 1e-3));
      if (isBlank && tiles.size() > 1) {
        List<Tile> rest = new ArrayList<>(tiles);
        rest.remove(tile);
        if (hangTogether(rest)) {
          tiles.remove(tile);
        }
      }
    }
  }

  private static boolean hangTogether(List<Tile> tiles) {
    List<Tile> reached = new ArrayList<>(tiles.subList(0, 1));
    for (int i = 0; i < reached.size(); i++) {
      Tile here = reached.get(i);
      tiles.stream()
          .filter(tile -> here.isBeside(tile) && !reached.contains(tile))
          .forEach(reached::add);
    }
    return reached.size() == tiles.size();
  }

  private static int count(double wholeMm, double roomMm, double overlapMm) {
    return (int) Math.max(1, Math.ceil((wholeMm - overlapMm) / (roomMm - overlapMm) - 1e-9));
  }

  /** The nearest place along a strip that is free of the most kinds of things. */
  private static Point moved(Point at, double dx, double dy, double reachMm, List<List<Box>> busy) {
    for (List<Box> boxes : busy) {
      for (double away = 0; away <= Math.max(0, reachMm); away += 2) {
        for (int side : new int[] {1, -1}) {
          Point point = at.plus(side * away * dx, side * away * dy);
          Box room = new Box(point.xMm() - 3.5, point.yMm() - 4.8, 9, 8.3);
          if (boxes.stream().noneMatch(box -> box.isNearer(room, 0.5))) {
            return point;
          }
        }
      }
    }
    return at;
  }

  /** A, B … Z, AA … for columns. */
  private static String columnName(int column) {
    String last = String.valueOf((char) ('A' + column % 26));
    return column < 26 ? last : columnName(column / 26 - 1) + last;
  }

  /** The marks that a page shows. */
  public List<Mark> marksOn(Tile tile) {
    Box shown = tile.shown();
    return marks.stream()
        .filter(mark -> shown.holds(new Box(mark.at().xMm(), mark.at().yMm(), 0, 0)))
        .toList();
  }

  /** Where a point of the sheet comes to lie on a page, mm from the page's upper left corner. */
  public Point onPage(Tile tile, Point ofSheet) {
    return ofSheet.plus(marginMm - tile.shown().xMm(), marginMm + HEAD_MM - tile.shown().yMm());
  }

  /** Where a page shows its part of the sheet, mm from the page's upper left corner. */
  public Box window(Tile tile) {
    Box shown = tile.shown();
    return new Box(marginMm, marginMm + HEAD_MM, shown.widthMm(), shown.heightMm());
  }

  /**
   * A page as an SVG document of the page's size.
   *
   * @param content the sheet's elements, in the sheet's coordinates
   * @param title printed at the top with the page's name
   */
  public String page(Tile tile, String content, String title) {
    Box shown = tile.shown();
    Box window = window(tile);
    Ink ink = new Ink();
    ink.raw(
        "<svg x=\""
            + Ink.number(window.xMm())
            + "\" y=\""
            + Ink.number(window.yMm())
            + "\" width=\""
            + Ink.number(shown.widthMm())
            + "\" height=\""
            + Ink.number(shown.heightMm())
            + "\" viewBox=\""
            + Ink.number(shown.xMm())
            + " "
            + Ink.number(shown.yMm())
            + " "
            + Ink.number(shown.widthMm())
            + " "
            + Ink.number(shown.heightMm())
            + "\">\n"
            + content
            + "</svg>\n");
    furnish(ink, tile, title);
    return document(ink);
  }

  /** A page as {@link #page}, without the part of the sheet and without a ground. */
  public String frame(Tile tile, String title) {
    Ink ink = new Ink();
    furnish(ink, tile, title);
    return document(ink, "");
  }

  private void furnish(Ink ink, Tile tile, String title) {
    for (Mark mark : marksOn(tile)) {
      mark(ink, mark, onPage(tile, mark.at()));
    }
    ink.box("page-edge", window(tile), 0.15, "none", " stroke-dasharray=\"4 3\"");
    Point ruler = new Point(pageWidthMm - marginMm - Ruler.LENGTH_MM - 1, marginMm + 8);
    Ruler.draw(ink, ruler);
    Ruler.texts(ruler).forEach(ink::text);
    double room = ruler.xMm() - marginMm - 6;
    double nameMm = Ink.widthMm(tile.name(), 7);
    ink.text(
        new Text(
            "page-name",
            tile.name(),
            new Point(marginMm + 1 + nameMm / 2, marginMm + 5),
            7,
            false));
    double left = marginMm + 4 + nameMm;
    String place =
        String.format(
            Locale.ROOT,
            "column %d of %d, row %d of %d · lay equal numbers on each other",
            tile.column() + 1,
            columns,
            tile.row() + 1,
            rows);
    heading(ink, "page-title", title, left, marginMm + 3, room + marginMm - left, 3);
    heading(ink, "page-place", place, left, marginMm + 7.2, room + marginMm - left, 2.6);
  }

  /** A line of text from its left end, smaller where it would be longer than its room. */
  private static void heading(
      Ink ink, String name, String words, double left, double y, double roomMm, double mostMm) {
    double sizeMm = Math.min(mostMm, mostMm * roomMm / Math.max(1, Ink.widthMm(words, mostMm)));
    Point middle = new Point(left + Ink.widthMm(words, sizeMm) / 2, y);
    ink.text(new Text(name, words, middle, sizeMm, false));
  }

  /**
   * A page that shows the whole sheet small, with the pages' edges and names.
   *
   * @param outline the sheet's elements without texts, in the sheet's coordinates
   * @param title printed at the top
   * @param notes printed below the title
   */
  public String map(String outline, String title, List<String> notes) {
    double wide = pageWidthMm - 2 * marginMm - 2;
    double top = marginMm + HEAD_MM + 5 + 4.5 * notes.size();
    double scale =
        Math.min(wide / sheet.widthMm(), (pageHeightMm - top - marginMm - 2) / sheet.heightMm());
    Ink ink = new Ink();
    Point ruler = new Point(pageWidthMm - marginMm - Ruler.LENGTH_MM - 1, marginMm + 8);
    Ruler.draw(ink, ruler);
    Ruler.texts(ruler).forEach(ink::text);
    double room = ruler.xMm() - marginMm - 6;
    heading(ink, "map-title", title, marginMm + 1, marginMm + 3, room, 4);
    String count = "map of " + tiles.size() + (tiles.size() == 1 ? " page" : " pages");
    heading(ink, "map-count", count, marginMm + 1, marginMm + 8, room, 3);
    for (int i = 0; i < notes.size(); i++) {
      double y = marginMm + HEAD_MM + 3 + 4.5 * i;
      heading(ink, "map-note", notes.get(i), marginMm + 1, y, wide, 3);
    }
    ink.raw(
        "<g transform=\"translate("
            + Ink.number(marginMm + 1 - scale * sheet.xMm())
            + " "
            + Ink.number(top - scale * sheet.yMm())
            + ") scale("
            + Ink.number(scale, 6)
            + ")\">\n"
            + outline);
    for (Tile tile : tiles) {
      Box shown = tile.shown();
      ink.box(
          "map-tile",
          shown,
          0.3 / scale,
          "none",
          " stroke-dasharray=\"" + Ink.number(2 / scale) + " " + Ink.number(1.3 / scale) + "\"");
    }
    for (Tile tile : tiles) {
      Box shown = tile.shown();
      double size = Math.min(5 / scale, 0.3 * Math.min(shown.widthMm(), shown.heightMm()));
      Text text = new Text("map-name", tile.name(), shown.middle(), size, false);
      ink.box("map-plate", text.box().grown(0.1 * size), 0.2 / scale, "#fff", "");
      ink.text(text);
    }
    ink.raw("</g>\n");
    return document(ink);
  }

  private String document(Ink ink) {
    return document(ink, "<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
  }

  private String document(Ink ink, String ground) {
    String width = Ink.number(pageWidthMm);
    String height = Ink.number(pageHeightMm);
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
        + width
        + "mm\" height=\""
        + height
        + "mm\" viewBox=\"0 0 "
        + width
        + " "
        + height
        + "\" font-family=\""
        + Ink.FONT
        + "\" font-weight=\"bold\" fill=\""
        + Ink.BLACK
        + "\">\n"
        + ground
        + ink
        + "</svg>\n";
  }

  private static void mark(Ink ink, Mark mark, Point at) {
    // A white ground, so that the cross is seen on a bundle too.
    ink.circle("mark-ground", at, MARK_MM + 0.2, 0, "#fff");
    ink.line("mark", List.of(at.plus(-MARK_MM, 0), at.plus(MARK_MM, 0)), Ink.BLACK, 0.2, "");
    ink.line("mark", List.of(at.plus(0, -MARK_MM), at.plus(0, MARK_MM)), Ink.BLACK, 0.2, "");
    ink.circle("mark-ring", at, 0.6 * MARK_MM, 0.2, "none");
    ink.text(new Text("mark-number", mark.number() + "", at.plus(2.6, -2.8), 2.2, false));
  }
}
