package org.loomwright.physics.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

/** The checker passes a published packing and finds faults planted in it. */
final class PackingCheckTest {
  private static final double OUTER = 9.001397746050;

  private static Packing published(double outer) {
    List<Circle> circles = new ArrayList<>();
    for (Row row : ReferenceTables.fiveUnequalCircles().rows()) {
      double radius = row.number("radius");
      circles.add(new Circle(OUTER * row.number("x_unit"), OUTER * row.number("y_unit"), radius));
    }
    return new Packing(circles, outer, 5);
  }

  private static final List<Double> RADII = List.of(1.0, 2.0, 3.0, 4.0, 5.0);

  @Test
  void aPublishedPackingHolds() {
    assertThat(PackingCheck.problems(published(OUTER + 1e-8), RADII)).isEmpty();
  }

  @Test
  void circlesThatOverlapAreFound() {
    List<Circle> circles = new ArrayList<>(published(OUTER).circles());
    Circle moved = circles.get(3);
    circles.set(3, new Circle(moved.xMm(), moved.yMm() - 0.001, moved.radiusMm()));
    assertThat(PackingCheck.problems(new Packing(circles, OUTER + 1, 5), RADII))
        .anyMatch(problem -> problem.startsWith("circles 4 and 5 overlap by 0.000999"));
  }

  @Test
  void aCircleThatSticksOutIsFound() {
    assertThat(PackingCheck.problems(published(OUTER - 0.001), RADII))
        .isNotEmpty()
        .allMatch(problem -> problem.contains("sticks out by 0.00"));
  }

  @Test
  void otherCirclesThanThoseGivenAreFound() {
    assertThat(PackingCheck.problems(published(10), List.of(1.0, 2.0, 3.0, 4.0)))
        .singleElement()
        .asString()
        .contains("not those given");
  }

  @Test
  void aBoundAboveTheRadiusIsFound() {
    Packing packing = new Packing(List.of(new Circle(0, 0, 1)), 1, 1.5);
    assertThat(PackingCheck.problems(packing, List.of(1.0)))
        .containsExactly("the lower bound lies above the radius");
  }
}
