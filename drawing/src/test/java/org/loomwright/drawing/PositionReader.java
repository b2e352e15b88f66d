package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;

/**
 * Finds a cavity from words as a person does: looks at the face, counts, points. Slow, and shares
 * nothing with the code that makes the words.
 */
final class PositionReader {
  record Point(String number, double x, double y, double across, double down) {}

  private static final Pattern COUNTED =
      Pattern.compile("(\\w+)(?: row| column| ring)? from the (\\w+)");
  private static final List<String> ORDINALS =
      List.of(
          "first",
          "second",
          "third",
          "fourth",
          "fifth",
          "sixth",
          "seventh",
          "eighth",
          "ninth",
          "tenth",
          "eleventh",
          "twelfth");

  private static final double HALF_HOUR = 7.5001;
  private static final double NEAR_IN_RING = 11.2499;
  private static final double NEAR_AT_ALL = 22.4999;

  private final List<Point> points;
  private final List<List<Point>> rows;
  private final List<List<Point>> columns;
  private final List<Point> around;
  private final List<List<Point>> rings;

  PositionReader(List<Point> points) {
    this.points = points;
    rows = level(points, Point::y, Point::down);
    columns = level(points, Point::x, Point::across);
    around =
        points.stream()
            .filter(it -> Math.hypot(it.x(), it.y()) >= 0.4 * Math.min(it.across(), it.down()))
            .toList();
    rings = level(around, it -> Math.hypot(it.x(), it.y()), it -> Math.min(it.across(), it.down()));
  }

  /** Turns the face by matrices about its middle, quarter by quarter. */
  static List<Point> look(Housing housing, View view) {
    double halfX = housing.width().mm() / 2;
    double halfY = housing.height().mm() / 2;
    int quarters = view.latch().ordinal();
    List<Point> points = new ArrayList<>();
    for (Cavity cavity : housing.cavities()) {
      double x = cavity.x().mm() - halfX;
      double y = cavity.y().mm() - halfY;
      if (view.side() == Side.MATING_SIDE) {
        x = -x;
      }
      double across = cavity.width().mm();
      double down = cavity.height().mm();
      for (int i = 0; i < quarters; i++) {
        double turned = -y;
        y = x;
        x = turned;
        double swap = across;
        across = down;
        down = swap;
      }
      points.add(new Point(cavity.number(), x, y, across, down));
    }
    return points;
  }

  /** Numbers of all cavities the words could mean. */
  List<String> find(String words) {
    if (words.startsWith("cavity number ")) {
      return List.of(words.replace("cavity number ", "").split(",", 2)[0]);
    }
    if (words.equals("the only cavity")) {
      return points.stream().map(Point::number).toList();
    }
    if (words.equals("in the middle")) {
      return points.stream().filter(it -> !around.contains(it)).map(Point::number).toList();
    }
    if (words.endsWith(" of all")) {
      return extreme(words.split(" ")[1]);
    }
    if (words.endsWith(" corner")) {
      String[] corner = words.split(" ");
      List<Point> row = pick(corner[0], rows);
      List<Point> column = pick(corner[1], columns);
      return row.stream().filter(column::contains).map(Point::number).toList();
    }
    String[] parts = words.split(", ");
    if (words.contains("o'clock")) {
      return clock(words, parts);
    }
    if (parts[0].endsWith("column") || parts[0].contains(" column ")) {
      List<Point> column = pick(parts[0].replace(" column", ""), columns);
      return inLine(parts[1], sorted(column, Point::y));
    }
    if (parts[0].endsWith("row") || parts[0].contains(" row ")) {
      List<Point> row = pick(parts[0].replace(" row", ""), rows);
      return inLine(parts[1], sorted(row, Point::x));
    }
    boolean upright = words.contains("top") || words.contains("bottom");
    boolean sideways = words.contains("left") || words.contains("right");
    if (!sideways && isOneLine(columns, Point::x, Point::across)) {
      return inLine(words, sorted(points, Point::y));
    }
    if (!upright && isOneLine(rows, Point::y, Point::down)) {
      return inLine(words, sorted(points, Point::x));
    }
    return List.of();
  }

  /** Whether all stand in one row or column so straight that nobody would see two. */
  private boolean isOneLine(
      List<List<Point>> bands, ToDoubleFunction<Point> at, ToDoubleFunction<Point> size) {
    double first = points.stream().mapToDouble(at).min().orElse(0);
    double last = points.stream().mapToDouble(at).max().orElse(0);
    return bands.size() == 1
        && last - first <= 0.35 * points.stream().mapToDouble(size).min().orElse(0);
  }

  /** Whoever could be taken for the extreme one, by centre, by edge or by size. */
  private List<String> extreme(String word) {
    return points.stream()
        .filter(it -> points.stream().noneMatch(other -> other != it && isPlainly(word, other, it)))
        .map(Point::number)
        .toList();
  }

  /** Whether one is plainly more so than the other. */
  private static boolean isPlainly(String word, Point one, Point other) {
    double least = Math.min(one.across(), other.across());
    double low = Math.min(one.down(), other.down());
    return switch (word) {
      case "leftmost" ->
          other.x() - one.x() >= 0.5 * least
              && (other.x() - other.across() / 2) - (one.x() - one.across() / 2) >= 0.25 * least;
      case "rightmost" ->
          one.x() - other.x() >= 0.5 * least
              && (one.x() + one.across() / 2) - (other.x() + other.across() / 2) >= 0.25 * least;
      case "highest" ->
          other.y() - one.y() >= 0.5 * low
              && (other.y() - other.down() / 2) - (one.y() - one.down() / 2) >= 0.25 * low;
      case "lowest" ->
          one.y() - other.y() >= 0.5 * low
              && (one.y() + one.down() / 2) - (other.y() + other.down() / 2) >= 0.25 * low;
      case "largest" -> isLarger(one, other);
      case "smallest" -> isLarger(other, one);
      default -> throw new AssertionError(word);
    };
  }

  private static boolean isLarger(Point one, Point other) {
    double area = one.across() * one.down();
    return 1.5 * other.across() * other.down() <= area * (1 + 1e-12)
        && Math.max(other.across(), other.down()) <= Math.max(one.across(), one.down())
        && Math.min(other.across(), other.down()) <= Math.min(one.across(), one.down());
  }

  private List<String> clock(String words, String[] parts) {
    String last = parts[parts.length - 1];
    boolean named = last.contains("ring");
    List<Point> ring =
        named
            ? pick(
                last.replace(" ring", "").replace("inner", "top").replace("outer", "bottom"),
                rings,
                "middle",
                "outside")
            : around;
    if (words.contains("clockwise")) {
      if (!named && rings.size() > 1) {
        return List.of();
      }
      List<Point> round = sorted(ring, it -> degrees(it) > 359.5 ? degrees(it) - 360 : degrees(it));
      int place = ordinal(words.split(" ")[0]);
      return place < round.size() ? List.of(round.get(place).number()) : List.of();
    }
    Matcher between = Pattern.compile("between (\\d+) and \\d+ o'clock").matcher(words);
    Matcher at = Pattern.compile("at (\\d+) o'clock").matcher(words);
    double hour;
    if (between.find()) {
      hour = Integer.parseInt(between.group(1)) + 0.5;
    } else if (at.find()) {
      hour = Integer.parseInt(at.group(1));
    } else {
      return List.of();
    }
    List<String> meant = within(ring, hour, HALF_HOUR);
    // What lies near by could be meant as well; with no ring named, more so.
    return meant.isEmpty()
        ? List.of()
        : within(ring, hour, named || rings.size() == 1 ? NEAR_IN_RING : NEAR_AT_ALL);
  }

  private static List<String> within(List<Point> ring, double hour, double degrees) {
    return ring.stream()
        .filter(
            it -> {
              double off = Math.abs(degrees(it) - hour * 30 % 360);
              return Math.min(off, 360 - off) <= degrees;
            })
        .map(Point::number)
        .toList();
  }

  private static double degrees(Point point) {
    double degrees = Math.toDegrees(Math.atan2(point.x(), -point.y()));
    return (degrees + 360) % 360;
  }

  private static List<String> inLine(String words, List<Point> line) {
    // One that is alone is called so: "leftmost" would make one look for others.
    if (words.equals("alone") || line.size() == 1) {
      return words.equals("alone") && line.size() == 1 ? List.of(line.get(0).number()) : List.of();
    }
    return pick(words, line.stream().map(List::of).toList()).stream().map(Point::number).toList();
  }

  private static List<Point> pick(String words, List<List<Point>> bands) {
    return pick(words, bands, "top", "bottom");
  }

  private static List<Point> pick(String words, List<List<Point>> bands, String start, String end) {
    if (bands.isEmpty()) {
      return List.of();
    }
    switch (words) {
      case "top", "left", "leftmost" -> {
        return bands.get(0);
      }
      case "bottom", "right", "rightmost" -> {
        return bands.get(bands.size() - 1);
      }
      case "middle" -> {
        return bands.size() % 2 == 1 ? bands.get(bands.size() / 2) : List.of();
      }
      default -> {
        Matcher counted = COUNTED.matcher(words);
        if (!counted.matches()) {
          return List.of();
        }
        int place = ordinal(counted.group(1));
        String from = counted.group(2);
        boolean forward = from.equals(start) || from.equals("left");
        boolean backward = from.equals(end) || from.equals("right");
        if (forward == backward) {
          return List.of();
        }
        if (place >= bands.size()) {
          return List.of();
        }
        return forward ? bands.get(place) : bands.get(bands.size() - 1 - place);
      }
    }
  }

  private static int ordinal(String word) {
    int known = ORDINALS.indexOf(word);
    return known >= 0 ? known : Integer.parseInt(word.replaceAll("\\D", "")) - 1;
  }

  private static List<Point> sorted(List<Point> points, ToDoubleFunction<Point> by) {
    return points.stream().sorted(Comparator.comparingDouble(by)).toList();
  }

  /** Sets of points that are level, by joining pair after pair until nothing changes. */
  private static List<List<Point>> level(
      List<Point> points, ToDoubleFunction<Point> at, ToDoubleFunction<Point> size) {
    List<List<Point>> sets = new ArrayList<>();
    points.forEach(point -> sets.add(new ArrayList<>(List.of(point))));
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < sets.size() && !changed; i++) {
        for (int k = i + 1; k < sets.size() && !changed; k++) {
          if (touch(sets.get(i), sets.get(k), at, size)) {
            sets.get(i).addAll(sets.remove(k));
            changed = true;
          }
        }
      }
    }
    sets.sort(Comparator.comparingDouble(set -> set.stream().mapToDouble(at).average().orElse(0)));
    return sets;
  }

  private static boolean touch(
      List<Point> one,
      List<Point> other,
      ToDoubleFunction<Point> at,
      ToDoubleFunction<Point> size) {
    return one.stream()
        .anyMatch(
            a ->
                other.stream()
                    .anyMatch(
                        b ->
                            Math.abs(at.applyAsDouble(a) - at.applyAsDouble(b))
                                < 0.45 * Math.min(size.applyAsDouble(a), size.applyAsDouble(b))));
  }
}
