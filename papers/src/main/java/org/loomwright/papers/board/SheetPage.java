package org.loomwright.papers.board;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;
import org.loomwright.drawing.board.Box;
import org.loomwright.papers.page.Fonts;
import org.loomwright.papers.page.PdfFile;

/** Pages of exact size with drawings on them at true scale. */
final class SheetPage implements AutoCloseable {
  /** A point is 1/72 of an inch of 25.4 mm. */
  private static final double POINTS_PER_MM = 72 / 25.4;

  /** Largest page that readers show at true size, 14 400 points; ISO 32000-1, annex C. */
  static final double LARGEST_MM = 14_400 / POINTS_PER_MM;

  private static final String UNKNOWN = "?";

  private final PDPageContentStream out;
  private final PDFont font;
  private final double heightMm;

  /**
   * A new page at the end of a document.
   *
   * @throws IOException when the document can't take it
   */
  SheetPage(PDDocument document, PDFont font, double widthMm, double heightMm) throws IOException {
    PDPage page =
        new PDPage(
            new PDRectangle((float) (widthMm * POINTS_PER_MM), (float) (heightMm * POINTS_PER_MM)));
    document.addPage(page);
    this.out = new PDPageContentStream(document, page);
    this.font = font;
    this.heightMm = heightMm;
  }

  /** The font of all texts, kept in the document with the letters used. */
  static PDFont font(PDDocument document, Fonts fonts) throws IOException {
    return PDType0Font.load(document, fonts.openBold(), true);
  }

  /** A whole drawing from the page's upper left corner. */
  void draw(SvgForm drawing) throws IOException {
    Box all = new Box(0, 0, drawing.widthMm(), drawing.heightMm());
    draw(drawing, all, all);
  }

  /**
   * A part of a drawing.
   *
   * @param shown the part, mm in the drawing
   * @param window where it lies on the page, mm from the upper left corner; as large as the part
   */
  void draw(SvgForm drawing, Box shown, Box window) throws IOException {
    double right = window.xMm() - shown.xMm();
    double down = window.yMm() - shown.yMm();
    out.saveGraphicsState();
    out.transform(Matrix.getScaleInstance((float) POINTS_PER_MM, (float) POINTS_PER_MM));
    out.addRect(
        (float) window.xMm(),
        (float) (heightMm - window.bottomMm()),
        (float) window.widthMm(),
        (float) window.heightMm());
    out.clip();
    out.saveGraphicsState();
    out.transform(
        Matrix.getTranslateInstance((float) right, (float) (heightMm - down - drawing.heightMm())));
    out.drawForm(drawing.form());
    out.restoreGraphicsState();
    Rectangle2D part =
        new Rectangle2D.Double(shown.xMm(), shown.yMm(), shown.widthMm(), shown.heightMm());
    for (SvgTexts.Words words : drawing.words()) {
      if (around(words).intersects(part)) {
        text(words, right, down);
      }
    }
    out.restoreGraphicsState();
  }

  private static Rectangle2D around(SvgTexts.Words words) {
    Rectangle2D box =
        new Rectangle2D.Double(
            words.x() - words.length() / 2,
            words.y() - words.size(),
            words.length(),
            1.3 * words.size());
    return words.place().createTransformedShape(box).getBounds2D();
  }

  private void text(SvgTexts.Words words, double right, double down) throws IOException {
    String text = known(words.text());
    double naturally = font.getStringWidth(text) / 1000 * words.size();
    if (naturally <= 0) {
      return;
    }
    AffineTransform place = new AffineTransform(1, 0, 0, -1, 0, heightMm);
    place.translate(right, down);
    place.concatenate(words.place());
    place.translate(words.x() - words.length() / 2, words.y());
    place.scale(words.length() / naturally, -1);
    out.beginText();
    out.setNonStrokingColor(words.fill());
    out.setFont(font, (float) words.size());
    out.setTextMatrix(new Matrix(place));
    out.showText(text);
    out.endText();
  }

  /** The text with a question mark for each letter that the font does not have. */
  private String known(String text) {
    StringBuilder known = new StringBuilder();
    text.codePoints()
        .mapToObj(Character::toString)
        .forEach(letter -> known.append(has(letter) ? letter : UNKNOWN));
    return known.toString();
  }

  private boolean has(String letter) {
    try {
      return font.encode(letter).length > 0;
    } catch (IOException | IllegalArgumentException e) {
      // The font says so by an exception, and no other way.
      return false;
    }
  }

  @Override
  public void close() throws IOException {
    out.close();
  }

  /** A document whose pages are printed at their size. */
  static PDDocument document(Fonts fonts, String title) {
    PDDocument document = PdfFile.begin(fonts);
    document.getDocumentInformation().setTitle(title);
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(preferences);
    return document;
  }
}
