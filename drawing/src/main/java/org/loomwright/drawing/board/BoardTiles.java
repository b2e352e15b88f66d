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
 * @param tiles all pages, row by row
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
  public record Tile(String name, int column, int row, Box shown) {}

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
    BoardTiles upright = of(sheet, paper.widthMm(), paper.heightMm(), marginMm, overlapMm);
    BoardTiles across = of(sheet, paper.heightMm(), paper.widthMm(), marginMm, overlapMm);
    return across.tiles.size() < upright.tiles.size() ? across : upright;
  }

  private static BoardTiles of(
      Box sheet, double pageWidth, double pageHeight, double margin, double overlap) {
    double stepX = pageWidth - 2 * margin - overlap;
    double stepY = pageHeight - 2 * margin - overlap;
    int columns = (int) Math.max(1, Math.ceil((sheet.widthMm() - overlap) / stepX - 1e-9));
    int rows = (int) Math.max(1, Math.ceil((sheet.heightMm() - overlap) / stepY - 1e-9));
    List<Tile> tiles = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        double x = column * stepX;
        double y = row * stepY;
        Box shown =
            new Box(
                x,
                y,
                Math.min(stepX + overlap, sheet.widthMm() - x),
                Math.min(stepY + overlap, sheet.heightMm() - y));
        tiles.add(new Tile(columnName(column) + (row + 1), column, row, shown));
      }
    }
    List<Mark> marks = new ArrayList<>();
    for (Tile tile : tiles) {
      Box shown = tile.shown();
      // A quarter and three quarters along the strip, clear of the strips' crossings.
      for (double share : new double[] {0.25, 0.75}) {
        if (tile.column() + 1 < columns) {
          double x = shown.rightMm() - overlap / 2;
          marks.add(
              new Mark(marks.size() + 1, new Point(x, shown.yMm() + share * shown.heightMm())));
        }
        if (tile.row() + 1 < rows) {
          double y = shown.bottomMm() - overlap / 2;
          marks.add(
              new Mark(marks.size() + 1, new Point(shown.xMm() + share * shown.widthMm(), y)));
        }
      }
    }
    return new BoardTiles(
        sheet, pageWidth, pageHeight, margin, overlap, columns, rows, tiles, marks);
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
    return ofSheet.plus(marginMm - tile.shown().xMm(), marginMm - tile.shown().yMm());
  }

  /**
   * A page as an SVG document of the page's size.
   *
   * @param content the sheet's elements, in the sheet's coordinates
   * @param title printed in the margin with the page's name
   */
  public String page(Tile tile, String content, String title) {
    Box shown = tile.shown();
    Ink ink = new Ink();
    ink.raw(
        "<svg x=\""
            + Ink.number(marginMm)
            + "\" y=\""
            + Ink.number(marginMm)
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
    for (Mark mark : marksOn(tile)) {
      mark(ink, mark, onPage(tile, mark.at()));
    }
    Box frame = new Box(marginMm, marginMm, shown.widthMm(), shown.heightMm());
    ink.box("page-edge", frame, 0.15, "none", " stroke-dasharray=\"4 3\"");
    String text =
        String.format(
            Locale.ROOT,
            "%s · page %s · %d columns, %d rows · lay crosses with the same number on each other",
            title,
            tile.name(),
            columns,
            rows);
    double size = Math.min(3, 1.6 * (pageWidthMm - 2 * marginMm) / text.length());
    ink.text("page-name", new Point(pageWidthMm / 2, marginMm / 2), size, false, text);
    return document(ink);
  }

  /** A page that shows the whole sheet small, with the pages' edges and names. */
  public String map(String content, String title) {
    double scale =
        Math.min(
            (pageWidthMm - 2 * marginMm) / sheet.widthMm(),
            (pageHeightMm - 2 * marginMm - 12) / sheet.heightMm());
    Ink ink = new Ink();
    ink.text("map-title", new Point(pageWidthMm / 2, marginMm + 4), 4, false, title);
    ink.raw(
        "<g transform=\"translate("
            + Ink.number(marginMm)
            + " "
            + Ink.number(marginMm + 10)
            + ") scale("
            + Ink.number(scale)
            + ")\">\n"
            + content);
    for (Tile tile : tiles) {
      Box shown = tile.shown();
      ink.box("map-tile", shown, 0.3 / scale, "none", " stroke-dasharray=\"8 5\"");
      double size = Math.min(6 / scale, 0.3 * Math.min(shown.widthMm(), shown.heightMm()));
      Point at = shown.middle();
      double half = Ink.widthMm(tile.name(), size) / 2;
      ink.box(
          "map-plate",
          new Box(at.xMm() - half, at.yMm() - 0.6 * size, 2 * half, 1.2 * size),
          0.2 / scale,
          "#fff",
          "");
      ink.text("map-name", at, size, false, tile.name());
    }
    ink.raw("</g>\n");
    return document(ink);
  }

  private String document(Ink ink) {
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
        + "\" fill=\""
        + Ink.BLACK
        + "\">\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n"
        + ink
        + "</svg>\n";
  }

  private static void mark(Ink ink, Mark mark, Point at) {
    ink.line("mark", List.of(at.plus(-MARK_MM, 0), at.plus(MARK_MM, 0)), Ink.BLACK, 0.2, "");
    ink.line("mark", List.of(at.plus(0, -MARK_MM), at.plus(0, MARK_MM)), Ink.BLACK, 0.2, "");
    ink.circle("mark-ring", at, 0.6 * MARK_MM, 0.2, "none");
    ink.text("mark-number", at.plus(2.4, -2.4), 2.2, false, mark.number() + "");
  }
}
