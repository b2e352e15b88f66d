package org.loomwright.papers.board;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.loomwright.drawing.board.Board;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardSvg;
import org.loomwright.drawing.board.BoardTiles;
import org.loomwright.drawing.board.kit.HarnessBoard;
import org.loomwright.model.rules.PaperSize;
import org.loomwright.papers.page.Fonts;
import org.loomwright.papers.page.PdfFile;

/** Build boards as PDF at true size. Same boards, same bytes. */
public final class BoardPdf {
  private BoardPdf() {}

  /**
   * On small paper: for each sheet a map of its pages, then the pages, row by row. Each page has a
   * ruler of 100 mm.
   *
   * @param boards one or more
   * @throws IOException when a font can't be used
   */
  public static byte[] tiled(List<HarnessBoard> boards, PaperSize paper, Fonts fonts)
      throws IOException {
    try (PDDocument document = SheetPage.document(fonts, title(boards))) {
      PDFont font = SheetPage.font(document, fonts);
      for (HarnessBoard board : boards) {
        for (Sheet sheet : board.plan().sheets()) {
          tiled(document, font, board, sheet, paper(paper));
        }
      }
      return PdfFile.bytes(document);
    }
  }

  /**
   * One large page for each sheet.
   *
   * @param boards one or more
   * @throws IOException when a font can't be used
   * @throws IllegalArgumentException when a board is larger than a page can be
   */
  public static byte[] whole(List<HarnessBoard> boards, Fonts fonts) throws IOException {
    try (PDDocument document = SheetPage.document(fonts, title(boards))) {
      PDFont font = SheetPage.font(document, fonts);
      for (HarnessBoard board : boards) {
        Board size = board.plan().board();
        if (Math.max(size.widthMm(), size.heightMm()) > SheetPage.LARGEST_MM) {
          throw new IllegalArgumentException(
              String.format(
                  Locale.ROOT,
                  "rules: a board of %.0f mm x %.0f mm is larger than a page can be, which is"
                      + " %.0f mm; take a smaller board",
                  size.widthMm(),
                  size.heightMm(),
                  SheetPage.LARGEST_MM));
        }
        for (Sheet sheet : board.plan().sheets()) {
          String svg = BoardSvg.document(board.plan(), sheet, board.words());
          try (SheetPage page = new SheetPage(document, font, size.widthMm(), size.heightMm())) {
            page.draw(SvgForm.of(document, svg));
          }
        }
      }
      return PdfFile.bytes(document);
    }
  }

  private static void tiled(
      PDDocument document, PDFont font, HarnessBoard board, Sheet sheet, BoardTiles.Paper paper)
      throws IOException {
    BoardTiles tiles = BoardTiles.of(board.plan(), sheet, board.words(), paper);
    String title =
        String.format(
            Locale.ROOT,
            "%s · sheet %d of %d",
            board.plan().name(),
            sheet.number(),
            board.plan().sheets().size());
    String map = tiles.map(BoardSvg.outline(sheet), title, notes(board, sheet));
    try (SheetPage page =
        new SheetPage(document, font, tiles.pageWidthMm(), tiles.pageHeightMm())) {
      page.draw(SvgForm.of(document, map));
    }
    SvgForm drawing = SvgForm.of(document, BoardSvg.document(board.plan(), sheet, board.words()));
    for (BoardTiles.Tile tile : tiles.tiles()) {
      try (SheetPage page =
          new SheetPage(document, font, tiles.pageWidthMm(), tiles.pageHeightMm())) {
        page.draw(drawing, tile.shown(), tiles.window(tile));
        page.draw(SvgForm.of(document, tiles.frame(tile, title)));
      }
    }
  }

  private static List<String> notes(HarnessBoard board, Sheet sheet) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Print at 100 %, not fitted to the page; the ruler on each page must measure 100 mm.");
    notes.add("Lay pages on each other where crosses have the same number; all edges are dashed.");
    notes.addAll(board.words().notes());
    List<String> crowdedOut = BoardSvg.crowdedOut(board.plan(), sheet, board.words());
    if (!crowdedOut.isEmpty()) {
      notes.add("Without room on the sheet: " + String.join("; ", crowdedOut));
    }
    return notes;
  }

  private static String title(List<HarnessBoard> boards) {
    return "Build board, "
        + boards.stream().findFirst().map(it -> it.plan().name()).orElse("no harness");
  }

  private static BoardTiles.Paper paper(PaperSize size) {
    return switch (size) {
      case A4 -> BoardTiles.Paper.A4;
      case A3 -> BoardTiles.Paper.A3;
      case LETTER -> BoardTiles.Paper.LETTER;
    };
  }
}
