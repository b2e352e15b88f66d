package org.loomwright.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.loomwright.drawing.Seen.Spot;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

/**
 * The face of a housing as SVG: outline and cavities at true relative places, numbers upright in
 * every view. The mating side is drawn with a double wall, so that the sides differ by more than
 * their words. Same input, same bytes.
 */
public final class Face {
  /** Room round the face for wall and latch, mm. */
  private static final double EDGE = 4.5;

  /** Room on a side without a latch, mm. */
  private static final double WALL_ROOM = 2.4;

  private static final double CAPTION = 5;
  private static final double CAPTION_SIZE = 2.6;
  private static final double LATCH_DEPTH = 2.6;

  /** Smallest side of a drawn cavity at which its number reads well, mm on paper. */
  private static final double GOOD_CAVITY = 5.6;

  private static final double LARGER = 1.3;

  private Face() {}

  /**
   * Draws a face.
   *
   * @param housing housing
   * @param view side looked at and where the latch points
   * @param marks cavities to mark, by number
   * @param widthMostMm widest picture wanted, mm on paper
   * @param heightMostMm highest picture wanted, mm on paper
   * @param lettering how numbers and caption are written
   * @throws IllegalArgumentException when a mark names a cavity the housing does not have
   */
  public static String svg(
      Housing housing,
      View view,
      Map<String, CavityMark> marks,
      double widthMostMm,
      double heightMostMm,
      Lettering lettering) {
    Seen seen = Seen.of(housing, view);
    marks.keySet().forEach(seen::spot);
    String caption = FaceWords.view(housing, view);
    double smallest =
        seen.cavities().stream()
            .mapToDouble(spot -> Math.min(spot.widthMm(), spot.heightMm()))
            .min()
            .orElse(GOOD_CAVITY);
    double scale =
        Math.min(
            GOOD_CAVITY / smallest,
            Math.min(
                (widthMostMm - 2 * EDGE) / seen.widthMm(),
                (heightMostMm - 2 * EDGE - CAPTION) / seen.heightMm()));
    double faceWidth = seen.widthMm() * scale;
    double faceHeight = seen.heightMm() * scale;
    double captionWidth = caption.length() * CAPTION_SIZE * 0.6;
    double width = Math.max(faceWidth + 2 * EDGE, captionWidth);
    double above = housing.latch() && view.latch() == LatchDirection.UP ? EDGE : WALL_ROOM;
    double below = housing.latch() && view.latch() == LatchDirection.DOWN ? EDGE : WALL_ROOM;
    double height = above + faceHeight + below + CAPTION;
    FacePen pen = new FacePen((width - faceWidth) / 2, above, scale, lettering);

    StringBuilder svg = new StringBuilder(4096);
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
        .append(Svg.number(width))
        .append("mm\" height=\"")
        .append(Svg.number(height))
        .append("mm\" viewBox=\"0 0 ")
        .append(Svg.number(width))
        .append(' ')
        .append(Svg.number(height))
        .append("\" role=\"img\"><title>")
        .append(Svg.escape(housing.name() + ", " + caption + marked(marks)))
        .append("</title>");
    if (housing.latch()) {
      svg.append(pen.latch(seen, view.latch(), LATCH_DEPTH));
    }
    svg.append(pen.wall(seen, housing.round(), view.side() == Side.MATING_SIDE));
    if (!housing.latch()) {
      svg.append(pen.key(seen, view.latch()));
    }
    for (Spot spot : seen.cavities()) {
      if (marks.get(spot.number()) != CavityMark.SOUGHT) {
        svg.append(pen.cavity(spot, marks.get(spot.number()), housing.round(), 1));
      }
    }
    // Drawn last, because it is larger than its place.
    for (Spot spot : seen.cavities()) {
      if (marks.get(spot.number()) == CavityMark.SOUGHT) {
        svg.append(pen.cavity(spot, CavityMark.SOUGHT, housing.round(), LARGER));
      }
    }
    svg.append(
        lettering.line(width / 2, height - CAPTION / 2 + 0.4, CAPTION_SIZE, "#000", caption));
    return svg.append("</svg>").toString();
  }

  private static String marked(Map<String, CavityMark> marks) {
    Map<CavityMark, String> byMark =
        marks.entrySet().stream()
            .collect(
                Collectors.groupingBy(
                    Map.Entry::getValue,
                    java.util.TreeMap::new,
                    Collectors.mapping(
                        Map.Entry::getKey,
                        Collectors.collectingAndThen(
                            Collectors.toList(),
                            numbers ->
                                numbers.stream().sorted().collect(Collectors.joining(", "))))));
    return new LinkedHashMap<>(byMark)
        .entrySet().stream()
            .map(it -> "; " + it.getKey().words() + ": " + it.getValue())
            .collect(Collectors.joining());
  }
}
