package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  /** Another cavity of the ring nearer than this to the direction named makes it unclear. */
  private static final double CLEAR_IN_RING = 11.25;

  /** The same for any cavity, where the ring is not named. */
  private static final double CLEAR_AT_ALL = 22.5;

  private static final Ordinals.Line RINGS =
      new Ordinals.Line("inner ring", "outer ring", "middle ring", " ring", "middle", "outside");

  private ClockWords() {}

  /** Words for every cavity, or nothing when rings are not plain to see. */
  static Map<String, Phrase> of(Seen seen) {
    double middleX = seen.widthMm() / 2;
    double middleY = seen.heightMm() / 2;
    Map<String, Phrase> words = new LinkedHashMap<>();
    List<Spot> around = new ArrayList<>();
    for (Spot spot : seen.cavities()) {
      double radius = radius(spot, middleX, middleY);
      if (radius <= MIDDLE * size(spot)) {
        words.put(spot.number(), Phrase.plain("in the middle"));
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
    int count = rings.get().size();
    for (int i = 0; i < count; i++) {
      List<Spot> ring = rings.get().get(i);
      Optional<Phrase> name =
          count == 1 ? Optional.empty() : Optional.of(Ordinals.inLine(i, count, RINGS));
      Map<String, Phrase> counted = byCount(ring, middleX, middleY);
      for (Spot spot : ring) {
        Phrase at = Phrase.plain(clock(halfHours(angle(spot, middleX, middleY))));
        Phrase inRing =
            isClear(spot, ring, CLEAR_IN_RING, middleX, middleY) ? at : counted.get(spot.number());
        if (isClear(spot, around, CLEAR_AT_ALL, middleX, middleY)) {
          words.put(spot.number(), at);
        } else if (inRing == null) {
          return Map.of();
        } else {
          words.put(spot.number(), name.map(inRing::and).orElse(inRing));
        }
      }
    }
    return words;
  }

  /** True when no other cavity is near the direction that names one. */
  private static boolean isClear(
      Spot spot, List<Spot> among, double degrees, double middleX, double middleY) {
    double named = 15 * halfHours(angle(spot, middleX, middleY));
    return among.stream()
        .filter(it -> it != spot)
        .allMatch(
            it -> {
              double off = Math.abs(angle(it, middleX, middleY) - named);
              return Math.min(off, 360 - off) >= degrees;
            });
  }

  /** Counted round, if the first one is plain to see; else nothing. */
  private static Map<String, Phrase> byCount(List<Spot> ring, double middleX, double middleY) {
    List<Spot> sorted = new ArrayList<>(ring);
    sorted.sort(Comparator.comparingDouble(spot -> fromTop(spot, middleX, middleY)));
    Map<String, Phrase> words = new LinkedHashMap<>();
    for (int i = 0; i < sorted.size(); i++) {
      double next =
          i + 1 < sorted.size()
              ? fromTop(sorted.get(i + 1), middleX, middleY)
              : fromTop(sorted.get(0), middleX, middleY) + 360;
      if (next - fromTop(sorted.get(i), middleX, middleY) < 1) {
        return Map.of();
      }
      words.put(
          sorted.get(i).number(),
          new Phrase(Ordinals.of(i + 1) + " clockwise, counted from 12 o'clock", i + 1));
    }
    double last = fromTop(sorted.get(sorted.size() - 1), middleX, middleY);
    return last > 360 - UNCLEAR ? Map.of() : words;
  }

  /** The nearest half hour, 0 to 23. */
  private static int halfHours(double angleDegrees) {
    return (int) Math.round(angleDegrees / 15) % 24;
  }

  /** "at 2 o'clock" or "between 2 and 3 o'clock". */
  private static String clock(int halfHours) {
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
