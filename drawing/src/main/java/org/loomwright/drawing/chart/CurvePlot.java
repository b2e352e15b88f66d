package org.loomwright.drawing.chart;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a chart of one quantity over another shows.
 *
 * @param title what it is about, for those who can't see it
 * @param across quantity to the right
 * @param up quantity upwards
 * @param curves lines, each with its name
 * @param limits straight lines that must not be passed
 * @param dots single values, such as sizes on sale
 * @param here the point asked about
 */
public record CurvePlot(
    String title,
    Axis across,
    Axis up,
    List<Curve> curves,
    List<Limit> limits,
    List<Dot> dots,
    Optional<Here> here) {

  /** Copies the lists and checks that there is something to show. */
  public CurvePlot {
    curves = List.copyOf(curves);
    limits = List.copyOf(limits);
    dots = List.copyOf(dots);
    if (curves.stream().allMatch(it -> it.points().size() < 2) && dots.isEmpty()) {
      throw new IllegalArgumentException("the chart \"" + title + "\" has nothing to show");
    }
  }

  /**
   * An axis.
   *
   * @param words the quantity with its unit, e.g. "length in m"
   * @param logarithmic whether decades are alike; values are then above zero
   * @param fromZero whether it begins at zero; only where it is not logarithmic
   */
  public record Axis(String words, boolean logarithmic, boolean fromZero) {
    /** From the smallest value to the largest. */
    public static Axis linear(String words) {
      return new Axis(words, false, false);
    }

    /** From zero on. */
    public static Axis fromZero(String words) {
      return new Axis(words, false, true);
    }

    /** In decades. */
    public static Axis decades(String words) {
      return new Axis(words, true, false);
    }
  }

  /** A point; finite, above zero where the axis is logarithmic. */
  public record Point(double x, double y) {}

  /**
   * A line.
   *
   * @param name its name
   * @param points its points, x rising
   * @param broken whether it is drawn in dashes
   */
  public record Curve(String name, List<Point> points, boolean broken) {
    /** Copies the points. */
    public Curve {
      points = List.copyOf(points);
    }
  }

  /**
   * A limit.
   *
   * @param name what it is
   * @param at its value
   * @param upright whether it is one of the quantity to the right
   */
  public record Limit(String name, double at, boolean upright) {}

  /**
   * A single value.
   *
   * @param name its name; may be empty
   * @param at where it is
   * @param holds whether it keeps to all limits; drawn full, else hollow
   */
  public record Dot(String name, Point at, boolean holds) {}

  /**
   * The point asked about.
   *
   * @param name what it is, with its figures
   * @param at where it is
   */
  public record Here(String name, Point at) {}

  /** All values along an axis. */
  Stream<Double> values(boolean right) {
    Stream<Point> points =
        Stream.of(
                curves.stream().flatMap(it -> it.points().stream()),
                dots.stream().map(Dot::at),
                here.stream().map(Here::at))
            .flatMap(it -> it);
    return Stream.concat(
        points.map(it -> right ? it.x() : it.y()),
        limits.stream().filter(it -> it.upright() == right).map(Limit::at));
  }
}
