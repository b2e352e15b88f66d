package org.loomwright.model.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.loomwright.model.picture.PhotoMap.Pair;
import org.loomwright.model.picture.PhotoMap.Point;

class PhotoMapTest {

  /** A camera looking at the face: turned, tilted, and far enough away to see all of it. */
  private record Camera(
      double turn,
      double tiltX,
      double tiltY,
      double pxPerMm,
      double left,
      double top,
      int mirror) {
    static Camera random(Random random) {
      return new Camera(
          2 * Math.PI * random.nextDouble(),
          0.006 * (random.nextDouble() - 0.5),
          0.006 * (random.nextDouble() - 0.5),
          2 + 40 * random.nextDouble(),
          2000 * random.nextDouble(),
          2000 * random.nextDouble(),
          random.nextBoolean() ? 1 : -1);
    }

    Point sees(double x, double y) {
      double w = 1 + tiltX * x + tiltY * y;
      double across = pxPerMm * (Math.cos(turn) * mirror * x - Math.sin(turn) * y);
      double down = pxPerMm * (Math.sin(turn) * mirror * x + Math.cos(turn) * y);
      return new Point(left + across / w, top + down / w);
    }

    Pair pair(double x, double y) {
      Point at = sees(x, y);
      return new Pair(x, y, at.x(), at.y());
    }
  }

  @Test
  void threePointsGiveAnAffineMapExactly() {
    // u = 10 + 3 x - y, v = 20 + x + 2 y.
    PhotoMap map =
        PhotoMap.fit(
            List.of(new Pair(0, 0, 10, 20), new Pair(10, 0, 40, 30), new Pair(0, 10, 0, 40)));

    Point at = map.at(7, 4);
    assertThat(at.x()).isCloseTo(10 + 21 - 4, within(1e-9));
    assertThat(at.y()).isCloseTo(20 + 7 + 8, within(1e-9));
    assertThat(map.areaPx2(5, 5)).isCloseTo(3 * 2 - -1 * 1, within(1e-9));
    assertThat(map.isChecked()).isFalse();
  }

  @Test
  void fourPointsGiveAPerspectiveMapExactly() {
    // The unit square seen with its right side half as high: worked by hand, u = 2x / (1 + x),
    // v = (y + x / 2) / (1 + x): (1,0) to (1, 1/4), (1,1) to (1, 3/4), the middle to (2/3, 1/2).
    PhotoMap map =
        PhotoMap.fit(
            List.of(
                new Pair(0, 0, 0, 0),
                new Pair(1, 0, 1, 0.25),
                new Pair(1, 1, 1, 0.75),
                new Pair(0, 1, 0, 1)));

    Point middle = map.at(0.5, 0.5);
    assertThat(middle.x()).isCloseTo(2.0 / 3, within(1e-9));
    assertThat(middle.y()).isCloseTo(0.5, within(1e-9));
    assertThat(map.isInFront(0.5, 0.5)).isTrue();
    assertThat(map.isInFront(-1.5, 0.5)).isFalse();
  }

  @Property(tries = 500)
  void findsTheCameraBack(@ForAll long seed) {
    Random random = new Random(seed);
    Camera camera = Camera.random(random);
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < 4 + random.nextInt(5); i++) {
      // One in each corner, the others anywhere.
      double x = (i % 2 == 0 ? 0 : 40) + 8 * random.nextDouble();
      double y = (i / 2 % 2 == 0 ? 0 : 40) + 8 * random.nextDouble();
      pairs.add(camera.pair(x, y));
    }
    PhotoMap map = PhotoMap.fit(pairs);

    for (int i = 0; i < 20; i++) {
      double x = 50 * random.nextDouble();
      double y = 50 * random.nextDouble();
      assertThat(map.at(x, y).x()).isCloseTo(camera.sees(x, y).x(), within(1e-5));
      assertThat(map.at(x, y).y()).isCloseTo(camera.sees(x, y).y(), within(1e-5));
      assertThat(Math.signum(map.areaPx2(x, y))).isEqualTo(camera.mirror());
    }
    assertThat(map.missPx(map.worst())).isLessThan(1e-5);
  }

  /** The area is the derivative: checked by small differences. */
  @Property(tries = 100)
  void areaIsThatOfASmallSquare(@ForAll long seed) {
    Random random = new Random(seed);
    Camera camera = Camera.random(random);
    PhotoMap map =
        PhotoMap.fit(
            List.of(
                camera.pair(0, 0), camera.pair(40, 2), camera.pair(3, 30), camera.pair(38, 33)));
    double step = 1e-4;
    Point at = map.at(20, 20);
    Point right = map.at(20 + step, 20);
    Point down = map.at(20, 20 + step);
    double area =
        ((right.x() - at.x()) * (down.y() - at.y()) - (right.y() - at.y()) * (down.x() - at.x()))
            / (step * step);
    assertThat(map.areaPx2(20, 20)).isCloseTo(area, within(1e-3 * Math.abs(area)));
  }

  /** With noise no small change of the photo's points brings a map with smaller squares. */
  @Property(tries = 100)
  void noOtherMapNearbyFitsBetter(@ForAll long seed) {
    Random random = new Random(seed);
    Camera camera = Camera.random(random);
    List<Pair> noisy = new ArrayList<>();
    for (double[] at :
        new double[][] {{0, 0}, {40, 0}, {0, 30}, {40, 30}, {20, 15}, {10, 22}, {31, 6}}) {
      Pair it = camera.pair(at[0], at[1]);
      noisy.add(
          new Pair(
              it.x(),
              it.y(),
              it.u() + 2 * random.nextGaussian(),
              it.v() + 2 * random.nextGaussian()));
    }
    PhotoMap map = PhotoMap.fit(noisy);
    double best = squares(map, noisy);
    for (int i = 0; i < 30; i++) {
      // Any other map through slightly moved points.
      List<Pair> moved = new ArrayList<>();
      for (Pair it : noisy) {
        Point on = map.at(it.x(), it.y());
        moved.add(
            new Pair(
                it.x(),
                it.y(),
                on.x() + 0.1 * random.nextGaussian(),
                on.y() + 0.1 * random.nextGaussian()));
      }
      assertThat(squares(PhotoMap.fit(moved), noisy)).isGreaterThan(best * (1 - 1e-7));
    }
    assertThat(map.isChecked()).isTrue();
  }

  @Test
  void namesThePairThatIsOff() {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      pairs.add(new Pair(10 * (i % 3), 10 * (i / 3), 100 * (i % 3), 100 * (i / 3)));
    }
    pairs.set(4, new Pair(10, 10, 130, 100));
    PhotoMap map = PhotoMap.fit(pairs);

    assertThat(map.worst()).isEqualTo(4);
    assertThat(map.missMm(4)).isCloseTo(map.missPx(4) / 10, within(0.3));
  }

  @Test
  void fourPointsThatFixNoPerspectiveGiveAnAffineMap() {
    PhotoMap map =
        PhotoMap.fit(
            List.of(
                new Pair(0, 0, 0, 0),
                new Pair(10, 0, 50, 0),
                new Pair(20, 0, 100, 0),
                new Pair(10, 10, 50, 50)));
    assertThat(map.at(4, 4).x()).isCloseTo(20, within(1e-9));
    assertThat(map.areaPx2(0, 0)).isCloseTo(map.areaPx2(20, 10), within(1e-9));
  }

  @Test
  void refusesTooFewAndPointsOnALine() {
    assertThatThrownBy(() -> PhotoMap.fit(List.of(new Pair(0, 0, 0, 0), new Pair(1, 0, 1, 0))))
        .hasMessageContaining("fewest");
    List<Pair> line =
        List.of(new Pair(0, 0, 0, 0), new Pair(10, 0, 50, 3), new Pair(20, 0.1, 100, 80));
    assertThatThrownBy(() -> PhotoMap.fit(line)).hasMessageContaining("on one line");
    List<Pair> lineInPhoto =
        List.of(new Pair(0, 0, 0, 0), new Pair(10, 0, 50, 50), new Pair(5, 9, 100, 100));
    assertThatThrownBy(() -> PhotoMap.fit(lineInPhoto)).hasMessageContaining("on one line");
  }

  private static double squares(PhotoMap map, List<Pair> pairs) {
    return pairs.stream()
        .mapToDouble(
            it -> {
              Point at = map.at(it.x(), it.y());
              return Math.pow(at.x() - it.u(), 2) + Math.pow(at.y() - it.v(), 2);
            })
        .sum();
  }
}
