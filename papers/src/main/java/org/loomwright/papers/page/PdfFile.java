package org.loomwright.papers.page;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgScriptMode;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Set;
import java.util.TimeZone;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Turns markup into a PDF file. Same markup, same bytes. */
public final class PdfFile {
  private static final long DOCUMENT_ID = 1L;

  private PdfFile() {}

  /**
   * Sets the pages.
   *
   * @param markup a whole document as XHTML
   * @param fonts fonts named in its styles
   * @return the bytes of the file
   * @throws IOException when a font or the markup can't be used
   */
  public static byte[] of(String markup, Fonts fonts) throws IOException {
    XRLog.setLoggingEnabled(false);
    CarriedFonts.use(fonts);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.withHtmlContent(markup, "");
    builder.useFastMode();
    // Pictures carry their photos inside; nothing is ever fetched and no script runs.
    builder.useSVGDrawer(new BatikSVGDrawer(SvgScriptMode.SECURE, Set.of("data")));
    builder.withProducer("Loomwright");
    PDDocument document = new PDDocument();
    builder.usePDDocument(document);
    for (Fonts.Face face : fonts.faces()) {
      builder.useFont(
          new PDFontSupplier(font(document, face)),
          face.family(),
          face.bold() ? 700 : 400,
          face.italic() ? FontStyle.ITALIC : FontStyle.NORMAL,
          true);
    }
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.layout();
      renderer.createPDFWithoutClosing();
      return bytes(document);
    }
  }

  // Without ligatures: looking for them in each piece of text takes a sixth of the time of a pack,
  // and lines are broken by the widths of single letters anyway.
  private static PDFont font(PDDocument document, Fonts.Face face) throws IOException {
    TrueTypeFont letters = new TTFParser(true).parse(new RandomAccessReadBuffer(face.bytes()));
    letters.setEnableGsub(false);
    return PDType0Font.load(document, letters, true);
  }

  /** An empty document that carries these fonts and asks no machine for others. */
  public static PDDocument begin(Fonts fonts) {
    CarriedFonts.use(fonts);
    PDDocument document = new PDDocument();
    document.getDocumentInformation().setProducer("Loomwright");
    return document;
  }

  /**
   * The bytes of a finished document, the same each time it is made.
   *
   * @throws IOException when it can't be written
   */
  public static byte[] bytes(PDDocument document) throws IOException {
    // Fixed, so that a pack made again from the same plan is the same file.
    Calendar fixed = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
    fixed.setTimeInMillis(0);
    document.setDocumentId(DOCUMENT_ID);
    document.getDocumentInformation().setCreationDate(fixed);
    document.getDocumentInformation().setModificationDate(fixed);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    document.save(bytes);
    return bytes.toByteArray();
  }
}
