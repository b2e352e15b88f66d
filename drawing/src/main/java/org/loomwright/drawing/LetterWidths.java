package org.loomwright.drawing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** How wide text is in the bold condensed face that pictures are lettered in. */
public final class LetterWidths {
  private static final double UNITS = 2048;

  /** Widest character of the face; taken for characters the table leaves out, em. */
  private static final double WIDEST = 1.82;

  private static final int IDEOGRAPHS_FROM = 0x2E80;
  private static final int IDEOGRAPHS_TO = 0xFFFF;

  private static final TreeMap<Integer, Run> RUNS = read();

  private LetterWidths() {}

  private record Run(int last, double ems) {}

  /**
   * Width of a line of text as a multiple of its font size; never less than the face needs.
   *
   * @param text text, not escaped
   */
  public static double ems(String text) {
    return text.codePoints().mapToDouble(LetterWidths::ems).sum();
  }

  private static double ems(int character) {
    if (character < ' ') {
      return ems(' ');
    }
    Map.Entry<Integer, Run> run = RUNS.floorEntry(character);
    if (run != null && character <= run.getValue().last()) {
      return run.getValue().ems();
    }
    return character >= IDEOGRAPHS_FROM && character <= IDEOGRAPHS_TO ? 1 : WIDEST;
  }

  private static TreeMap<Integer, Run> read() {
    TreeMap<Integer, Run> runs = new TreeMap<>();
    try (InputStream in = LetterWidths.class.getResourceAsStream("letter-widths.txt")) {
      if (in == null) {
        throw new IOException("the table of letter widths is missing from this program");
      }
      BufferedReader lines =
          new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII));
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (!line.startsWith("#")) {
          String[] words = line.split(" ", 3);
          runs.put(
              Integer.parseInt(words[0], 16),
              new Run(Integer.parseInt(words[1], 16), Integer.parseInt(words[2]) / UNITS));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return runs;
  }
}
