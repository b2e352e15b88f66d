package org.loomwright.planner.builds;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.condition.Condition;
import org.loomwright.planner.fixture.VehicleBuilder;

/** Counts that no listing of builds could give. */
class ManyBuildsTest {
  @ParameterizedTest
  @ValueSource(ints = {20, 40, 60})
  void independentTraitsMultiply(int traits) {
    Builds builds = Builds.of(vehicle(traits).build());
    assertThat(builds.possible().count()).isEqualTo(BigInteger.TWO.pow(traits));

    // Of eight equal parts: two of "t1 and t2", four of "t9", one of them both.
    Region region = builds.where(Condition.of("t1 = x and t2 = x or t9 = y"));
    assertThat(region.count()).isEqualTo(BigInteger.TWO.pow(traits - 3).multiply(five()));
    assertThat(region.share()).isCloseTo(0.625, Offset.offset(1e-12));
    assertThat(region.traits()).containsExactly("t1", "t2", "t9");
    Described described = Described.of(region);
    assertThat(described.when()).isEqualTo(Condition.of("t9 = y or t1 = x and t2 = x"));
    assertThat(builds.where(described.when())).isEqualTo(region);
  }

  // Rows of two values without two equal neighbours "x": Fibonacci numbers (OEIS A000045), the
  // 22nd for 20 traits and the 42nd for 40.
  @ParameterizedTest
  @ValueSource(ints = {20, 40})
  void rulesBetweenNeighboursGiveFibonacciNumbers(int traits) {
    VehicleBuilder builder = vehicle(traits);
    for (int i = 1; i < traits; i++) {
      builder.exclude(Condition.of("t" + i + " = x and t" + (i + 1) + " = x"));
    }
    Builds builds = Builds.of(builder.build());
    long expected = traits == 20 ? 17_711L : 267_914_296L;
    assertThat(builds.possible().count()).isEqualTo(BigInteger.valueOf(expected));
    // Each end fixed to x leaves the row without it and its neighbour: two places earlier.
    long shorter = traits == 20 ? 6_765L : 102_334_155L;
    assertThat(builds.where(Condition.of("t1 = x")).count()).isEqualTo(BigInteger.valueOf(shorter));
    assertThat(builds.where(Condition.of("t1 = x")).share())
        .isCloseTo((double) shorter / expected, Offset.offset(1e-12));
  }

  @Test
  void threeValuedTraitsMultiply() {
    VehicleBuilder builder = new VehicleBuilder();
    for (int i = 1; i <= 26; i++) {
      builder.trait("t" + i, "x", "y", "z");
    }
    Builds builds = Builds.of(builder.build());
    assertThat(builds.possible().count()).isEqualTo(BigInteger.valueOf(3).pow(26));
    Region region = builds.where(Condition.of("t5 in (x, z) and t20 != z"));
    assertThat(region.count())
        .isEqualTo(BigInteger.valueOf(3).pow(24).multiply(BigInteger.valueOf(4)));
    assertThat(region.share()).isCloseTo(4.0 / 9, Offset.offset(1e-12));
  }

  @Test
  void aVehicleWithoutTraitsHasOneBuild() {
    Builds builds = Builds.of(new VehicleBuilder().build());
    assertThat(builds.possible().count()).isEqualTo(BigInteger.ONE);
    assertThat(builds.where(Condition.never()).isEmpty()).isTrue();
    assertThat(Described.of(builds.possible()).words()).isEqualTo("every build");
    assertThat(builds.possible().sample()).isEmpty();
    assertThat(builds.possible().share()).isEqualTo(1);
  }

  private static VehicleBuilder vehicle(int traits) {
    VehicleBuilder builder = new VehicleBuilder();
    for (int i = 1; i <= traits; i++) {
      builder.trait("t" + i, "x", "y");
    }
    return builder;
  }

  private static BigInteger five() {
    return BigInteger.valueOf(5);
  }
}
