package org.loomwright.drawing.strip;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.drawing.ink.Words;

/**
 * A part with its text cut to its width: all text of a part stays in its own column.
 *
 * @param part the part
 * @param widthMm width of its column
 * @param above lines above the symbol
 * @param below lines under it
 */
record StripCell(StripPart part, double widthMm, List<String> above, List<String> below) {
  /** Font size of all text, mm. */
  static final double SIZE = 2.6;

  /** Free room on both sides of text in its column together, mm. */
  static final double ROOM_MM = 2.4;

  private static final double DEVICE_TEXT_MM = 26;
  private static final double WIRE_TEXT_MM = 36;
  private static final double DEVICE_LEAST_MM = 16;
  private static final double WIRE_LEAST_MM = 22;

  /** The narrowest column in which a part reads well. */
  static StripCell of(StripPart part) {
    boolean wire = part instanceof StripPart.Wire;
    double widest = wire ? WIRE_TEXT_MM : DEVICE_TEXT_MM;
    double text = Math.max(widest(above(part, widest)), widest(below(part, widest)));
    // The name of the place stands over the column; its words are not to be broken.
    double place = longestWord(part.place());
    double width =
        Math.max(
            wire ? WIRE_LEAST_MM : DEVICE_LEAST_MM,
            ROOM_MM + Math.max(text, Math.min(place, DEVICE_TEXT_MM)));
    return cut(part, width);
  }

  /** The same part in a wider column. */
  StripCell wider(double moreMm) {
    return cut(part, widthMm + moreMm);
  }

  private static StripCell cut(StripPart part, double width) {
    return new StripCell(part, width, above(part, width - ROOM_MM), below(part, width - ROOM_MM));
  }

  private static double widest(List<String> lines) {
    return Words.width(lines, SIZE);
  }

  private static double longestWord(String text) {
    return Words.width(List.of(text.strip().split("\\s+", 0)), SIZE);
  }

  private static List<String> above(StripPart part, double widthMm) {
    if (part instanceof StripPart.Wire wire) {
      List<String> lines = new ArrayList<>(Words.wrap(wire.lead(), SIZE, widthMm));
      lines.addAll(Words.wrap(wire.words(), SIZE, widthMm));
      return lines;
    }
    return Words.wrap(((StripPart.Device) part).words(), SIZE, widthMm);
  }

  private static List<String> below(StripPart part, double widthMm) {
    return part.figures().stream().flatMap(it -> Words.wrap(it, SIZE, widthMm).stream()).toList();
  }
}
