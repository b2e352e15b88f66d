package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.loomwright.drawing.CavityPen.Drawn;
import org.loomwright.drawing.CavityPen.Room;
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
  private static final double WALL_ROOM = 2.6;

  private static final double CAPTION = 5;
  private static final double CAPTION_SIZE = 2.6;

  /** Beside the caption, as browsers round widths up, mm. */
  private static final double CAPTION_ROOM = 0.8;

  private static final double LATCH_DEPTH = 2.6;

  /** Smallest side of a drawn cavity at which its number reads well, mm on paper. */
  private static final double GOOD_CAVITY = 5.6;

  /** Numbers smaller than this are left out, mm: nobody could read them. */
  private static final double LEAST_NUMBER = 1;

  /** The one meant is made larger until its number has this size, mm, where there is room. */
  private static final double GOOD_NUMBER = 2.2;

  /** Of a cavity this share of width and height is to stay in sight about its middle. */
  private static final double STILL_SEEN = 0.4;

  private static final double[] LARGER = {3, 2.5, 2, 1.6, 1.3, 1.2, 1.1, 1};

  /** How far out the ring round the one meant is, best first, mm. */
  private static final double[] RINGS = {0.85, 0.6, 0.45, 0.3};

  private Face() {}

  /**
   * Draws a face. Positions that are moulded closed are drawn as blocked, whatever the marks say.
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
    Map<String, CavityMark> all = withClosed(seen, marks);
    String caption = FaceWords.view(housing, view);
    double scale = scale(seen, widthMostMm, heightMostMm);
    double faceWidth = seen.widthMm() * scale;
    double faceHeight = seen.heightMm() * scale;
    double captionEms = LetterWidths.ems(caption);
    double captionSize = Math.min(CAPTION_SIZE, (widthMostMm - CAPTION_ROOM) / captionEms);
    double width = Math.max(faceWidth + 2 * EDGE, captionEms * captionSize + CAPTION_ROOM);
    double above = room(seen, view, LatchDirection.UP);
    double height = above + faceHeight + room(seen, view, LatchDirection.DOWN) + CAPTION;
    FacePen pen = new FacePen((width - faceWidth) / 2, above, scale);

    StringBuilder svg = new StringBuilder(4096);
    svg.append(Markup.open(width, height, housing.name() + ", " + caption + marked(all)));
    seen.lock().ifPresent(it -> svg.append(pen.lock(seen, it)));
    seen.latch().ifPresent(it -> svg.append(pen.latch(seen, it, view.latch(), LATCH_DEPTH)));
    svg.append(pen.wall(seen, view.side() == Side.MATING_SIDE));
    if (housing.sealed()) {
      svg.append(pen.seal(seen));
    }
    seen.keys().forEach(it -> svg.append(pen.key(seen, it)));
    if (!housing.latch() && seen.keys().isEmpty()) {
      svg.append(pen.bar(seen, view.latch()));
    }
    cavities(seen, pen, all, new CavityPen(lettering), svg);
    svg.append(lettering.line(width / 2, height - CAPTION / 2 + 0.4, captionSize, "#000", caption));
    return svg.append("</svg>").toString();
  }

  /**
   * Font size of the smallest cavity number of a face drawn this large, mm on paper.
   *
   * @param widthMostMm widest picture wanted, mm on paper
   * @param heightMostMm highest picture wanted, mm on paper
   */
  public static double smallestNumberMm(
      Housing housing, View view, double widthMostMm, double heightMostMm) {
    Seen seen = Seen.of(housing, view);
    FacePen pen = new FacePen(0, 0, scale(seen, widthMostMm, heightMostMm));
    return seen.cavities().stream()
        .mapToDouble(it -> CavityPen.numberSize(drawn(it, pen, 1).shape(), it.number(), null))
        .min()
        .orElse(CAPTION_SIZE);
  }

  /** The marks in the order of the cavities, with those that the housing itself gives. */
  static Map<String, CavityMark> withClosed(Seen seen, Map<String, CavityMark> marks) {
    marks.keySet().forEach(seen::spot);
    Map<String, CavityMark> all = new LinkedHashMap<>();
    for (Spot spot : seen.cavities()) {
      CavityMark mark = marks.get(spot.number());
      if (spot.closed() && mark != CavityMark.SOUGHT) {
        all.put(spot.number(), CavityMark.BLOCKED);
      } else if (mark != null) {
        all.put(spot.number(), mark);
      }
    }
    return all;
  }

  private static double scale(Seen seen, double widthMostMm, double heightMostMm) {
    double smallest =
        seen.cavities().stream()
            .mapToDouble(spot -> Math.min(spot.widthMm(), spot.heightMm()))
            .min()
            .orElse(GOOD_CAVITY);
    return Math.min(
        GOOD_CAVITY / smallest,
        Math.min(
            (widthMostMm - 2 * EDGE) / seen.widthMm(),
            (heightMostMm - 2 * EDGE - CAPTION) / seen.heightMm()));
  }

  private static double room(Seen seen, View view, LatchDirection side) {
    return seen.latch().isPresent() && view.latch() == side ? EDGE : WALL_ROOM;
  }

  private static void cavities(
      Seen seen,
      FacePen pen,
      Map<String, CavityMark> marks,
      CavityPen cavityPen,
      StringBuilder svg) {
    for (Spot spot : seen.cavities()) {
      CavityMark mark = marks.get(spot.number());
      if (mark != CavityMark.SOUGHT) {
        svg.append(cavityPen.cavity(drawn(spot, pen, 1), written(spot, pen, mark), mark, 0));
      }
    }
    // Drawn last, because they are larger than their places.
    for (Spot spot : seen.cavities()) {
      if (marks.get(spot.number()) == CavityMark.SOUGHT) {
        Larger larger = larger(spot, seen, pen, marks);
        svg.append(
            cavityPen.cavity(
                drawn(spot, pen, larger.factor()),
                spot.number(),
                CavityMark.SOUGHT,
                larger.ring()));
      }
    }
  }

  /** The number as far as it can be read. */
  private static String written(Spot spot, FacePen pen, @Nullable CavityMark mark) {
    return CavityPen.numberSize(drawn(spot, pen, 1).shape(), spot.number(), mark) < LEAST_NUMBER
        ? ""
        : spot.number();
  }

  /** How the one meant is drawn: how much larger, and how far out its ring is, mm. */
  private record Larger(double factor, double ring) {}

  /** As large as it can be without hiding another number. */
  private static Larger larger(Spot spot, Seen seen, FacePen pen, Map<String, CavityMark> marks) {
    for (double factor : LARGER) {
      double size =
          CavityPen.numberSize(drawn(spot, pen, factor).shape(), spot.number(), CavityMark.SOUGHT);
      for (double ring : RINGS) {
        Larger way = new Larger(factor, ring);
        if ((factor <= 1.3 || size <= GOOD_NUMBER) && isFree(way, spot, seen, pen, marks)) {
          return way;
        }
      }
    }
    return new Larger(1, 0.15);
  }

  private static boolean isFree(
      Larger way, Spot spot, Seen seen, FacePen pen, Map<String, CavityMark> marks) {
    Room taken = room(spot, pen, way);
    for (Spot other : seen.cavities()) {
      CavityMark mark = marks.get(other.number());
      if (other.number().equals(spot.number())) {
        continue;
      }
      Room room =
          mark == CavityMark.SOUGHT
              ? room(other, pen, way)
              : CavityPen.number(drawn(other, pen, 1), written(other, pen, mark), mark);
      // Nor may it hide a cavity, or nobody could tell which of them is meant.
      if (taken.meets(room) || taken.meets(CavityPen.room(drawn(other, pen, STILL_SEEN), 0))) {
        return false;
      }
    }
    return true;
  }

  private static Room room(Spot spot, FacePen pen, Larger way) {
    return CavityPen.room(drawn(spot, pen, way.factor()), 1.5 * way.ring());
  }

  private static Drawn drawn(Spot spot, FacePen pen, double larger) {
    return new Drawn(
        pen.left() + spot.x() * pen.scale(),
        pen.top() + spot.y() * pen.scale(),
        new CavityShape(
            spot.widthMm() * pen.scale() * larger,
            spot.heightMm() * pen.scale() * larger,
            spot.round()));
  }

  /** The marks in words, e.g. "; filled by this kit: 2, 3". */
  static String marked(Map<String, CavityMark> marks) {
    Map<CavityMark, List<String>> byMark = new EnumMap<>(CavityMark.class);
    new TreeMap<>(marks)
        .forEach(
            (number, mark) -> byMark.computeIfAbsent(mark, it -> new ArrayList<>()).add(number));
    return byMark.entrySet().stream()
        .map(it -> "; " + it.getKey().words() + ": " + String.join(", ", it.getValue()))
        .collect(Collectors.joining());
  }
}
