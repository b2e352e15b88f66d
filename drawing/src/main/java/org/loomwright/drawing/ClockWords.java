package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.drawing.Seen.Spot;

/** Positions in a round face, as on a clock with 12 at the top of the view. */
final class ClockWords {
  /** A cavity whose centre is this near to the middle, as share of its size, is the middle one. */
  private static final double MIDDLE = 0.25;

  /** A cavity that is neither in the middle nor this far away has no plain direction. */
  private static final double AWAY = 0.5;

  /** Degrees left of the top that still are the top. */
  private static final double AT_TOP = 0.5;

  /** Degrees left of the top in which a cavity could be taken for the first or the last. */
  private static final double UNCLEAR = 5;

  private ClockWords() {}

  /** Words for every cavity, or nothing when rings are not plain to see. */
  static Map<String, String> of(Seen seen) {
    double middleX = seen.widthMm() / 2;
    double middleY = seen.heightMm() / 2;
    Map<String, String> words = new LinkedHashMap<>();
    List<Spot> around = new ArrayList<>();
    for (Spot spot : seen.cavities()) {
      double radius = radius(spot, middleX, middleY);
      if (radius <= MIDDLE * size(spot)) {
        words.put(spot.number(), "in the middle");
      } else if (radius < AWAY * size(spot)) {
        return Map.of();
      } else {
        around.add(spot);
      }
    }
    if (words.size() > 1) {
      return Map.of();
    }
    Optional<List<List<Spot>>> rings =
        Bands.of(around, spot -> radius(spot, middleX, middleY), ClockWords::size);
    if (rings.isEmpty()) {
      return Map.of();
    }
    for (int ring = 0; ring < rings.get().size(); ring++) {
      String name = ringName(ring, rings.get().size());
      Map<String, String> inRing = ring(rings.get().get(ring), middleX, middleY);
      if (inRing.isEmpty()) {
        return Map.of();
      }
      inRing.forEach((number, at) -> words.put(number, name.isEmpty() ? at : at + ", " + name));
    }
    return words;
  }

  private static String ringName(int ring, int rings) {
    return rings == 1
        ? ""
        : Ordinals.inLine(
            ring, rings, "inner ring", "outer ring", "middle ring", " ring", "middle", "outside");
  }

  private static Map<String, String> ring(List<Spot> ring, double middleX, double middleY) {
    Map<String, String> byClock = new LinkedHashMap<>();
    Set<String> used = new HashSet<>();
    for (Spot spot : ring) {
      String at = clock(angle(spot, middleX, middleY));
      byClock.put(spot.number(), at);
      used.add(at);
    }
    if (used.size() == ring.size()) {
      return byClock;
    }
    // Too close for the clock: count round instead, if the first one is plain to see.
    List<Spot> sorted = new ArrayList<>(ring);
    sorted.sort(Comparator.comparingDouble(spot -> fromTop(spot, middleX, middleY)));
    Map<String, String> byCount = new LinkedHashMap<>();
    for (int i = 0; i < sorted.size(); i++) {
      double next =
          i + 1 < sorted.size()
              ? fromTop(sorted.get(i + 1), middleX, middleY)
              : fromTop(sorted.get(0), middleX, middleY) + 360;
      if (next - fromTop(sorted.get(i), middleX, middleY) < 1) {
        return Map.of();
      }
      byCount.put(
          sorted.get(i).number(), Ordinals.of(i + 1) + " clockwise, counted from 12 o'clock");
    }
    double last = fromTop(sorted.get(sorted.size() - 1), middleX, middleY);
    return last > 360 - UNCLEAR ? Map.of() : byCount;
  }

  /** The nearest half hour: "at 2 o'clock" or "between 2 and 3 o'clock". */
  private static String clock(double angleDegrees) {
    int halfHours = (int) Math.round(angleDegrees / 15) % 24;
    int hour = halfHours / 2 == 0 ? 12 : halfHours / 2;
    return halfHours % 2 == 0
        ? "at " + hour + " o'clock"
        : "between " + hour + " and " + (hour % 12 + 1) + " o'clock";
  }

  private static double radius(Spot spot, double middleX, double middleY) {
    return Math.hypot(spot.x() - middleX, spot.y() - middleY);
  }

  private static double size(Spot spot) {
    return Math.min(spot.widthMm(), spot.heightMm());
  }

  /** Clockwise from the top, 0 to 360. */
  private static double angle(Spot spot, double middleX, double middleY) {
    double degrees = Math.toDegrees(Math.atan2(spot.x() - middleX, middleY - spot.y()));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  /** Clockwise from just left of the top, so that a hair to the left of 12 o'clock is first. */
  private static double fromTop(Spot spot, double middleX, double middleY) {
    double angle = angle(spot, middleX, middleY);
    return angle > 360 - AT_TOP ? angle - 360 : angle;
  }
}
