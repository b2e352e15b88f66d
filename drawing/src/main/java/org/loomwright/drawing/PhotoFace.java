package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.loomwright.drawing.Seen.Spot;
import org.loomwright.drawing.Stroke.At;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.PhotoFit;
import org.loomwright.model.picture.PhotoMap;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

/**
 * A photo of the real part with its cavities marked on it, as SVG. Every line has a light edge, so
 * that it is seen on light and dark plastic alike.
 */
public final class PhotoFace {
  private static final double CASING = 0.5;
  private static final double LEAST_NUMBER = 1.4;
  private static final double LARGEST_NUMBER = 2.8;
  private static final double LARGER = 1.25;
  private static final double RING_MM = 0.9;

  private PhotoFace() {}

  /**
   * Draws a photo with marks.
   *
   * @param housing housing in the photo
   * @param photo its points
   * @param picture its picture
   * @param marks cavities to mark, by number; the others get a thin outline
   * @param widthMostMm widest picture wanted, mm on paper
   * @param heightMostMm highest picture wanted, mm on paper
   * @param lettering how numbers are written
   * @throws IllegalArgumentException when the points don't fit the housing, which reading the
   *     documents would have found, or a mark names a cavity the housing does not have
   */
  public static String svg(
      Housing housing,
      FacePhoto photo,
      Picture picture,
      Map<String, CavityMark> marks,
      double widthMostMm,
      double heightMostMm,
      Lettering lettering) {
    if (!(PhotoFit.of(housing, photo) instanceof PhotoFit.Fits fits)) {
      throw new IllegalArgumentException("the points of " + photo.file() + " do not fit");
    }
    Seen onFile = Seen.of(housing, new View(Side.WIRE_SIDE, LatchDirection.UP));
    Map<String, CavityMark> all = Face.withClosed(onFile, marks);
    double mmPerPx = Math.min(widthMostMm / picture.widthPx(), heightMostMm / picture.heightPx());
    double width = picture.widthPx() * mmPerPx;
    double height = picture.heightPx() * mmPerPx;
    StringBuilder svg = new StringBuilder(4096);
    svg.append(
            Markup.open(
                width,
                height,
                housing.name() + ", photo of the " + photo.side().words() + Face.marked(all)))
        .append(Markup.image(width, height, picture.dataUri()));
    List<Spot> spots = new ArrayList<>(onFile.cavities());
    // The one meant is drawn last, over its neighbours' lines.
    spots.sort(Comparator.comparing(it -> all.get(it.number()) == CavityMark.SOUGHT));
    for (Spot it : spots) {
      outline(it, all, fits.map(), mmPerPx, svg);
    }
    for (Spot it : spots) {
      number(it, all, fits.map(), mmPerPx, lettering, svg);
    }
    return svg.append("</svg>").toString();
  }

  private static void outline(
      Spot spot, Map<String, CavityMark> marks, PhotoMap map, double mmPerPx, StringBuilder svg) {
    CavityMark mark = marks.get(spot.number());
    double larger = mark == CavityMark.SOUGHT ? LARGER : 1;
    CavityShape shape =
        new CavityShape(spot.widthMm() * larger, spot.heightMm() * larger, spot.round());
    double ring = RING_MM / paperScale(spot, map, mmPerPx);
    List<Stroke> strokes = new ArrayList<>();
    for (Stroke it : shape.strokes(mark, ring)) {
      // The part is to be seen: areas are left out, but for the dark corners.
      if (!it.stroke().equals("none")) {
        strokes.add(
            (it.name().equals("corner") ? it : it.hollow())
                .moved(
                    at -> {
                      PhotoMap.Point point = map.at(spot.x() + at.x(), spot.y() + at.y());
                      return new At(point.x() * mmPerPx, point.y() * mmPerPx);
                    }));
      }
    }
    strokes.forEach(it -> svg.append(it.casing(it.widthMm() + CASING).svg()));
    strokes.forEach(it -> svg.append(it.svg()));
  }

  private static void number(
      Spot spot,
      Map<String, CavityMark> marks,
      PhotoMap map,
      double mmPerPx,
      Lettering lettering,
      StringBuilder svg) {
    CavityMark mark = marks.get(spot.number());
    boolean dark = mark == CavityMark.FILLED || mark == CavityMark.SOUGHT;
    double scale = paperScale(spot, map, mmPerPx);
    double ems = LetterWidths.ems(spot.number());
    double wanted = Math.min(0.42 * spot.heightMm() * scale, 0.6 * spot.widthMm() * scale / ems);
    double most = Math.min(0.62 * spot.heightMm() * scale, 0.86 * spot.widthMm() * scale / ems);
    double size = Math.min(most, Math.max(LEAST_NUMBER, Math.min(LARGEST_NUMBER, wanted)));
    PhotoMap.Point middle = map.at(spot.x(), spot.y());
    double x = middle.x() * mmPerPx;
    double y = middle.y() * mmPerPx;
    double half = size * ems / 2 + 0.12 * size;
    svg.append(
            Markup.rect(
                "plate",
                x - half,
                y - 0.5 * size,
                2 * half,
                size,
                0.15 * size,
                dark ? Stroke.INK : "#fff",
                dark ? "#fff" : Stroke.INK,
                0.15,
                ""))
        .append(lettering.line(x, y, size, dark ? "#fff" : Stroke.INK, spot.number()));
  }

  /** Mm on paper for a mm of the face, about a cavity. */
  private static double paperScale(Spot spot, PhotoMap map, double mmPerPx) {
    return Math.sqrt(Math.abs(map.areaPx2(spot.x(), spot.y()))) * mmPerPx;
  }
}
