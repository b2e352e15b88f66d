package org.loomwright.papers.page;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.loomwright.drawing.Lettering;

/** Writes the letters of pictures as outlines, so that no font of the machine is asked for. */
public final class OutlineLettering implements Lettering {
  /** Height of a capital letter as share of the font size, measured in the font's "H". */
  private static final double CAPITAL = 0.729;

  private final TrueTypeFont font;

  /**
   * Lettering in the bold text face.
   *
   * @throws UncheckedIOException when the font can't be read
   */
  public OutlineLettering(Fonts fonts) {
    try {
      font = new TTFParser().parse(new RandomAccessReadBuffer(fonts.bold().bytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String line(double x, double y, double sizeMm, String fill, String text) {
    try {
      return "<path d=\"" + outline(x, y, sizeMm, text) + "\" fill=\"" + fill + "\"/>";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String outline(double x, double y, double sizeMm, String text) throws IOException {
    CmapLookup glyphs = font.getUnicodeCmapLookup();
    double scale = sizeMm / font.getUnitsPerEm();
    int[] ids = text.codePoints().map(glyphs::getGlyphId).toArray();
    double width = 0;
    for (int id : ids) {
      width += font.getAdvanceWidth(id) * scale;
    }
    double left = x - width / 2;
    double baseline = y + CAPITAL * sizeMm / 2;
    StringBuilder path = new StringBuilder();
    for (int id : ids) {
      GlyphData glyph = font.getGlyph().getGlyph(id);
      if (glyph != null) {
        GeneralPath shape = glyph.getPath();
        append(path, shape, new AffineTransform(scale, 0, 0, -scale, left, baseline));
      }
      left += font.getAdvanceWidth(id) * scale;
    }
    return path.toString();
  }

  private static void append(StringBuilder path, GeneralPath shape, AffineTransform place) {
    double[] at = new double[6];
    for (PathIterator it = shape.getPathIterator(place); !it.isDone(); it.next()) {
      switch (it.currentSegment(at)) {
        case PathIterator.SEG_MOVETO -> points(path.append('M'), at, 2);
        case PathIterator.SEG_LINETO -> points(path.append('L'), at, 2);
        case PathIterator.SEG_QUADTO -> points(path.append('Q'), at, 4);
        case PathIterator.SEG_CUBICTO -> points(path.append('C'), at, 6);
        default -> path.append('Z');
      }
    }
  }

  private static void points(StringBuilder path, double[] at, int count) {
    for (int i = 0; i < count; i++) {
      if (i > 0) {
        path.append(' ');
      }
      thousandths(path, Math.round(at[i] * 1000));
    }
  }

  // A pack has half a million of these numbers, which a format string takes seconds to write.
  private static void thousandths(StringBuilder path, long number) {
    long size = Math.abs(number);
    path.append(number < 0 ? "-" : "").append(size / 1000);
    long part = size % 1000;
    if (part > 0) {
      String digits = Long.toString(1000 + part);
      int end = digits.length();
      while (digits.charAt(end - 1) == '0') {
        end--;
      }
      path.append('.').append(digits, 1, end);
    }
  }
}
