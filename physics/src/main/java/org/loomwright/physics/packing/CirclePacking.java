package org.loomwright.physics.packing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.memo.Memo;

/**
 * The smallest circle round circles of given sizes.
 *
 * <p>A search of our own, not a proof: what it gives is always a real packing, so never below the
 * smallest possible, but it may lie above it. Against the best published packings it lies within 1
 * % up to 30 equal circles, 2 % up to 60, and 2 % up to 50 circles that all differ. The same sizes
 * give the same result on every machine and in every order.
 */
public final class CirclePacking {
  /** Most circles of one packing. */
  public static final int MOST = 500;

  /** Smallest radius over the largest. */
  private static final double SMALLEST_SHARE = 1e-3;

  /** A kit is packed again after each change of it, mostly from the same wires. */
  private static final Memo<List<Double>, Layout> KNOWN = new Memo<>(2000);

  private CirclePacking() {}

  /**
   * Packs circles.
   *
   * @param radiiMm radii, mm, 1 to {@value #MOST} of them, each above zero and at least a
   *     thousandth of the largest
   */
  public static Packing of(List<Double> radiiMm) {
    check(radiiMm);
    int n = radiiMm.size();
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> -radiiMm.get(i)))
            .mapToInt(i -> i)
            .toArray();
    double[] sorted = Arrays.stream(order).mapToDouble(radiiMm::get).toArray();
    double bound = PackingBound.of(sorted);
    Layout layout =
        n == 1
            ? new Layout(sorted, new double[] {0, 0, sorted[0]})
            : KNOWN.of(Arrays.stream(sorted).boxed().toList(), it -> tight(sorted));
    Circle[] circles = new Circle[n];
    for (int i = 0; i < n; i++) {
      circles[order[i]] = new Circle(layout.at()[2 * i], layout.at()[2 * i + 1], sorted[i]);
    }
    return new Packing(List.of(circles), layout.outer(), Math.min(bound, layout.outer()));
  }

  private static void check(List<Double> radiiMm) {
    if (radiiMm.isEmpty() || radiiMm.size() > MOST) {
      throw new SumException(
          "a packing needs 1 to " + MOST + " circles, but there are " + radiiMm.size());
    }
    radiiMm.forEach(radius -> Require.positive("radius of a circle", radius, "mm"));
    double largest = radiiMm.stream().mapToDouble(r -> r).max().getAsDouble();
    for (double radius : radiiMm) {
      if (radius < SMALLEST_SHARE * largest) {
        throw new SumException(
            "the smallest circle must have at least a thousandth of the radius of the largest, "
                + Require.text(largest)
                + " mm, but one has "
                + Require.text(radius)
                + " mm");
      }
    }
  }

  private static Layout tight(double[] sortedMm) {
    double unitMm = Math.sqrt(Arrays.stream(sortedMm).map(r -> r * r).sum());
    // Rounded, so that a last binary digit does not send the search another way at another scale.
    double[] radii =
        Arrays.stream(sortedMm).map(r -> Math.rint(r / unitMm * 1e12) / 1e12).toArray();
    Layout found = new PackingSearch(radii, PackingBound.of(radii)).best();
    double[] atMm = Arrays.stream(found.at()).map(place -> place * unitMm).toArray();
    return new Layout(sortedMm, atMm).madeGood();
  }
}
