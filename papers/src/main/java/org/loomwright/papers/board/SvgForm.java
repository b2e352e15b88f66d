package org.loomwright.papers.board;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.RenderingHints;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.util.XMLResourceDescriptor;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.w3c.dom.Element;
import org.w3c.dom.svg.SVGDocument;

/**
 * One of our drawings as vector graphics in a PDF, kept once however many pages show a part of it.
 * A unit of the form is a unit of the drawing, a millimetre; the form's y goes up.
 *
 * @param form all shapes
 * @param words all texts
 * @param widthMm width of the drawing, mm
 * @param heightMm height of the drawing, mm
 */
record SvgForm(PDFormXObject form, List<SvgTexts.Words> words, double widthMm, double heightMm) {

  SvgForm {
    words = List.copyOf(words);
  }

  /**
   * Reads a drawing whose view box begins at 0, 0.
   *
   * @throws IOException when the document can't take it
   */
  static SvgForm of(PDDocument document, String svg) throws IOException {
    SAXSVGDocumentFactory factory =
        new SAXSVGDocumentFactory(XMLResourceDescriptor.getXMLParserClassName());
    SVGDocument drawing = factory.createSVGDocument("", new StringReader(svg));
    Element root = drawing.getDocumentElement();
    String[] box = root.getAttribute("viewBox").split(" ", 4);
    // A unit of the drawing becomes a unit of the form, without going through pixels.
    root.setAttribute("width", box[2]);
    root.setAttribute("height", box[3]);
    List<SvgTexts.Words> words = SvgTexts.takeFrom(root);

    double widthMm = Double.parseDouble(box[2]);
    double heightMm = Double.parseDouble(box[3]);
    PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, (float) widthMm, (float) heightMm);
    try {
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      new GVTBuilder().build(new BridgeContext(new UserAgentAdapter()), drawing).paint(graphics);
    } finally {
      graphics.dispose();
    }
    return new SvgForm(graphics.getXFormObject(), words, widthMm, heightMm);
  }
}
