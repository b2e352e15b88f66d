package org.loomwright.drawing.map;

import java.util.List;
import org.loomwright.drawing.Svg;
import org.loomwright.drawing.ink.Segment;
import org.loomwright.drawing.ink.Sheet;
import org.loomwright.drawing.ink.Spot;
import org.loomwright.drawing.ink.WireInk;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.design.Lead;

/**
 * Draws leads as tracks: insulation colour between dark edges, a tracer as short marks on it, gaps
 * where a lead serves only some cases.
 *
 * @param sheet what is drawn on
 * @param widthMm width of a track with its edges
 */
record TrackPen(Sheet sheet, double widthMm) {
  private static final String GAPS = "5 1.2";
  private static final String TRACER = "0 0.7 1.2 0.9 1.2";

  /** Tracer marks that keep out of the gaps. */
  private static final String TRACER_IN_GAPS = "0 1.2 1.4 1.4 1 1.2";

  /** A track along a line. */
  void track(Lead lead, boolean always, List<Spot> line) {
    StringBuilder path = new StringBuilder();
    for (Segment it : Segment.through(line)) {
      path.append(path.isEmpty() ? "M" + point(it.from()) : "").append('L').append(point(it.to()));
    }
    track(lead.colour(), always, path.toString(), "track track-" + Svg.escape(lead.id()));
  }

  /** A track along a curve from one point to another over two handles. */
  void curve(Lead lead, boolean always, Spot from, Spot one, Spot other, Spot to) {
    String path = "M" + point(from) + "C" + point(one) + " " + point(other) + " " + point(to);
    track(lead.colour(), always, path, "track-in-stop");
  }

  private void track(Colour colour, boolean always, String path, String name) {
    double edge = Math.min(0.18, 0.16 * widthMm);
    String gaps = always ? "" : GAPS;
    sheet.curve(name, path, "none", WireInk.EDGE, widthMm, gaps);
    sheet.curve("colour", path, "none", WireInk.of(colour.base()), widthMm - 2 * edge, gaps);
    if (colour.all().size() > 1) {
      sheet.curve(
          "tracer",
          path,
          "none",
          WireInk.of(colour.all().get(1)),
          widthMm - 2 * edge,
          always ? TRACER : TRACER_IN_GAPS);
    }
  }

  private static String point(Spot at) {
    return Svg.number(at.x()) + "," + Svg.number(at.y());
  }
}
