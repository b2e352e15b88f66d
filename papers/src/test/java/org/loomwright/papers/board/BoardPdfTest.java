package org.loomwright.papers.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardTiles;
import org.loomwright.drawing.board.kit.HarnessBoard;
import org.loomwright.drawing.board.kit.Harnesses;
import org.loomwright.drawing.board.kit.Harnesses.Drawn;
import org.loomwright.model.rules.PaperSize;
import org.loomwright.papers.page.Fonts;

/** The finished PDFs, looked at as a printer would draw them. */
class BoardPdfTest {
  private static final Fonts FONTS = Fonts.load();
  private static final int WIDTH_MM = 1100;
  private static final int HEIGHT_MM = 700;
  private static final int FINE_DPI = 300;

  private static List<HarnessBoard> boards = List.of();
  private static byte[] whole = new byte[0];
  private static final Map<PaperSize, byte[]> TILED = new EnumMap<>(PaperSize.class);

  @BeforeAll
  static void make() throws IOException {
    Drawn drawn = Harnesses.random(11, 5, WIDTH_MM, HEIGHT_MM);
    boards = HarnessBoard.of(drawn.plan(), drawn.order());
    whole = BoardPdf.whole(boards, FONTS);
    for (PaperSize paper : PaperSize.values()) {
      TILED.put(paper, BoardPdf.tiled(boards, paper, FONTS));
    }
  }

  private static byte[] tiled(PaperSize paper) {
    return Objects.requireNonNull(TILED.get(paper));
  }

  @Test
  void theRulerMeasures100MmOnEveryPaper() throws Exception {
    for (PaperSize paper : PaperSize.values()) {
      byte[] pdf = tiled(paper);
      for (int page = 0; page < 2; page++) {
        double[] size = sizeMm(pdf, page);
        isARuler(Raster.byLibrary(pdf, page, FINE_DPI, 0, 0, size[0], 40));
        isARuler(Raster.byPoppler(pdf, page, FINE_DPI, 0, 0, size[0], 40));
      }
    }
    double top = HEIGHT_MM - 40;
    isARuler(Raster.byLibrary(whole, 0, FINE_DPI, 0, top, 150, 40));
    isARuler(Raster.byPoppler(whole, 0, FINE_DPI, 0, top, 150, 40));
  }

  private static void isARuler(Raster raster) {
    assertThat(raster.rulersMm())
        .singleElement()
        .satisfies(mm -> assertThat(mm).isCloseTo(100, within(0.2)));
  }

  @Test
  void pagesHaveTheirExactSizeAndAreNotScaled() throws IOException {
    double[][] sizes = {{210, 297}, {297, 420}, {215.9, 279.4}};
    for (PaperSize paper : PaperSize.values()) {
      byte[] pdf = tiled(paper);
      double[] size = sizes[paper.ordinal()];
      try (PDDocument document = Loader.loadPDF(pdf)) {
        assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
            .isEqualTo("None");
        for (int page = 0; page < document.getNumberOfPages(); page++) {
          double[] found = sizeMm(pdf, page);
          assertThat(Math.min(found[0], found[1])).isCloseTo(size[0], within(0.01));
          assertThat(Math.max(found[0], found[1])).isCloseTo(size[1], within(0.01));
        }
      }
    }
    assertThat(sizeMm(whole, 0)).containsExactly(new double[] {WIDTH_MM, HEIGHT_MM}, within(0.01));
  }

  @Test
  void theMapComesFirstAndNamesEachPage() throws IOException {
    for (PaperSize paper : PaperSize.values()) {
      byte[] pdf = tiled(paper);
      List<String> texts = texts(pdf);
      int at = 0;
      for (HarnessBoard board : boards) {
        for (Sheet sheet : board.plan().sheets()) {
          BoardTiles tiles =
              BoardTiles.of(
                  board.plan(), sheet, board.words(), BoardTiles.Paper.valueOf(paper.name()));
          String map = texts.get(at++);
          assertThat(map).contains("map of " + tiles.tiles().size() + " page");
          for (BoardTiles.Tile tile : tiles.tiles()) {
            assertThat(map).contains(tile.name());
            String place =
                String.format(
                    Locale.ROOT,
                    "column %d of %d, row %d of %d",
                    tile.column() + 1,
                    tiles.columns(),
                    tile.row() + 1,
                    tiles.rows());
            assertThat(texts.get(at++)).contains(tile.name()).contains(place);
          }
        }
      }
      assertThat(texts).hasSize(at);
    }
  }

  @Test
  void nothingIsPrintedInTheBorder() throws Exception {
    for (PaperSize paper : List.of(PaperSize.A4, PaperSize.LETTER)) {
      byte[] pdf = tiled(paper);
      for (int page = 0; page < texts(pdf).size(); page++) {
        double[] size = sizeMm(pdf, page);
        Raster raster = Raster.byPoppler(pdf, page, 72, 0, 0, size[0], size[1]);
        int edge = raster.dots(7.5);
        int ink = 0;
        for (int y = 0; y < raster.height(); y++) {
          for (int x = 0; x < raster.width(); x++) {
            boolean isBorder =
                x < edge || y < edge || x >= raster.width() - edge || y >= raster.height() - edge;
            ink += isBorder && raster.grey(x, y) < 250 ? 1 : 0;
          }
        }
        assertThat(ink).as("page %d of %s", page, paper).isZero();
      }
    }
  }

  @Test
  void textsAreTextInAFontThatIsCarried() throws IOException {
    try (PDDocument document = Loader.loadPDF(whole)) {
      for (PDPage page : document.getPages()) {
        List<PDFont> fonts = new ArrayList<>();
        for (var name : page.getResources().getFontNames()) {
          fonts.add(page.getResources().getFont(name));
        }
        assertThat(fonts).isNotEmpty().allMatch(PDFont::isEmbedded);
      }
    }
    // Turned texts come letter by letter.
    String all = String.join("", texts(whole)).replaceAll("\\s", "");
    for (HarnessBoard board : boards) {
      board
          .tree()
          .branches()
          .forEach(it -> assertThat(all).contains(it.name() + Math.round(it.lengthMm()) + "Ø"));
    }
  }

  @Test
  void theSameBoardsGiveTheSameBytes() throws IOException {
    assertThat(BoardPdf.whole(boards, FONTS)).isEqualTo(whole);
    assertThat(BoardPdf.tiled(boards, PaperSize.A4, FONTS)).isEqualTo(tiled(PaperSize.A4));
  }

  static double[] sizeMm(byte[] pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var box = document.getPage(page).getMediaBox();
      return new double[] {box.getWidth() / 72 * 25.4, box.getHeight() / 72 * 25.4};
    }
  }

  private static List<String> texts(byte[] pdf) throws IOException {
    List<String> texts = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        texts.add(stripper.getText(document));
      }
    }
    return texts;
  }
}
