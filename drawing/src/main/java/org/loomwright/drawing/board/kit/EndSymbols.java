package org.loomwright.drawing.board.kit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.drawing.CavityMark;
import org.loomwright.drawing.Face;
import org.loomwright.drawing.Lettering;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

/** What is drawn at the tip of a branch. */
final class EndSymbols {
  private static final double FACE_WIDTH_MM = 72;
  private static final double FACE_HEIGHT_MM = 60;

  private static final Pattern SIZE =
      Pattern.compile("^(<svg [^>]*?)width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\"");

  private EndSymbols() {}

  /** A symbol with its size. */
  record Symbol(String svg, double widthMm, double heightMm) {}

  /** The face of a housing that the kit brings, from the wire side, latch up. */
  static Symbol face(Housing housing, SuppliedHousing supplied) {
    Map<String, CavityMark> marks = new LinkedHashMap<>();
    for (String cavity : supplied.plugged()) {
      if (housing.cavity(cavity).isPresent()) {
        marks.put(cavity, CavityMark.PLUGGED);
      }
    }
    for (String cavity : supplied.used()) {
      if (housing.cavity(cavity).isPresent()) {
        marks.put(cavity, CavityMark.FILLED);
      }
    }
    String svg =
        Face.svg(
            housing,
            new View(Side.WIRE_SIDE, LatchDirection.UP),
            marks,
            FACE_WIDTH_MM,
            FACE_HEIGHT_MM,
            Lettering.fitted());
    Matcher size = SIZE.matcher(svg);
    if (!size.find()) {
      throw new IllegalStateException("a face without a size: " + svg.substring(0, 80));
    }
    // Within the board's drawing a unit is a millimetre; "mm" would be taken as pixels' measure.
    return new Symbol(
        size.replaceFirst("$1width=\"$2\" height=\"$3\""),
        Double.parseDouble(size.group(2)),
        Double.parseDouble(size.group(3)));
  }

  /** Loose terminals, taped together: a bracket round as many pins as there are, up to eight. */
  static Symbol loose(int count) {
    int pins = Math.min(count, 8);
    double height = 6 + 3.0 * pins;
    StringBuilder svg = new StringBuilder();
    String edge = number(height - 0.5);
    svg.append(path("M4.5,0.5L0.5,0.5L0.5," + edge + "L4.5," + edge, "none", 1));
    svg.append(path("M11.5,0.5L15.5,0.5L15.5," + edge + "L11.5," + edge, "none", 1));
    for (int i = 0; i < pins; i++) {
      double y = 4.5 + 3.0 * i;
      svg.append(path("M4," + number(y) + "L12," + number(y), "none", 1.1));
    }
    return new Symbol(svg.toString(), 16, height);
  }

  /** A splice to be made in the vehicle: an open diamond. */
  static Symbol splice() {
    return new Symbol(path("M7,0.6L13.4,7L7,13.4L0.6,7Z", "#fff", 0.9), 14, 14);
  }

  /** A joint at the end of a stub: a black diamond. */
  static Symbol joint() {
    return new Symbol(path("M7,0.4L13.6,7L7,13.6L0.4,7Z", "#111", 0), 14, 14);
  }

  /** A place where leads turn back: a loop. */
  static Symbol turn() {
    String loop =
        "<circle cx=\"6\" cy=\"6\" r=\"5\" fill=\"#fff\" stroke=\"#111\" stroke-width=\"0.9\"/>";
    return new Symbol(loop + path("M6,3.4L8.6,6L6,8.6", "none", 0.7), 12, 12);
  }

  static String path(String d, String fill, double strokeMm) {
    String stroke =
        strokeMm > 0 ? " stroke=\"#111\" stroke-width=\"" + number(strokeMm) + "\"" : "";
    return "<path d=\"" + d + "\" fill=\"" + fill + "\"" + stroke + "/>";
  }

  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
