package org.loomwright.papers.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Gives a carried font whenever a standard font is looked up. The PDF library asks for all standard
 * fonts at its start, though no page uses them, and would read every font of the machine to find
 * them, which takes seconds and depends on the machine.
 */
final class CarriedFonts implements FontMapper {
  private final TrueTypeFont font;

  private CarriedFonts(TrueTypeFont font) {
    this.font = font;
  }

  /** Makes the library ask here, in this whole program. */
  static void use(Fonts fonts) {
    try {
      FontMappers.set(
          new CarriedFonts(
              new TTFParser().parse(new RandomAccessReadBuffer(fonts.bold().bytes()))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(
      String name, @Nullable PDFontDescriptor descriptor) {
    return new FontMapping<>(font, false);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(
      String name, @Nullable PDFontDescriptor descriptor) {
    return new FontMapping<>(font, false);
  }

  @Override
  public CIDFontMapping getCIDFont(
      String name, @Nullable PDFontDescriptor descriptor, @Nullable PDCIDSystemInfo system) {
    return new CIDFontMapping(null, font, false);
  }
}
