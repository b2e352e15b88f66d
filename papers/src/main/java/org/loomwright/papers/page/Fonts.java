package org.loomwright.papers.page;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The fonts the papers carry, so that they look the same on every machine. */
public final class Fonts {
  /** Family of running text and tables. */
  public static final String TEXT = "Loom Text";

  /** Family of headings. */
  public static final String HEAD = "Loom Head";

  /**
   * One font file.
   *
   * @param family name used in styles
   * @param bold whether it is the bold face
   * @param italic whether it is the slanted face
   * @param bytes the file
   */
  record Face(String family, boolean bold, boolean italic, byte[] bytes) {
    InputStream open() {
      return new ByteArrayInputStream(bytes);
    }
  }

  private final List<Face> faces;

  private Fonts(List<Face> faces) {
    this.faces = faces;
  }

  /**
   * Loads the fonts.
   *
   * @throws UncheckedIOException when this program is incomplete
   */
  public static Fonts load() {
    return new Fonts(
        List.of(
            face(TEXT, false, false, "DejaVuSansCondensed.ttf"),
            face(TEXT, true, false, "DejaVuSansCondensed-Bold.ttf"),
            face(TEXT, false, true, "DejaVuSansCondensed-Oblique.ttf"),
            face(HEAD, true, false, "DejaVuSans-Bold.ttf")));
  }

  List<Face> faces() {
    return faces;
  }

  /** The file of the bold face of running text. */
  public InputStream openBold() {
    return bold().open();
  }

  /** The bold face of running text. */
  Face bold() {
    return faces.get(1);
  }

  private static Face face(String family, boolean bold, boolean italic, String file) {
    try (InputStream in = Fonts.class.getResourceAsStream("/fonts/" + file)) {
      if (in == null) {
        throw new IOException("the font " + file + " is missing from this program");
      }
      return new Face(family, bold, italic, in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
