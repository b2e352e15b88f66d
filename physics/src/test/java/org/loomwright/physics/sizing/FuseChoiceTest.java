package org.loomwright.physics.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.physics.Check;
import org.loomwright.physics.SumException;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.FuseFamily;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.protection.LoadingLimit;
import org.loomwright.physics.wire.Conductor;

final class FuseChoiceTest {
  private static FuseRequest request(
      double continuousA, double peakA, double peakTimeS, double mm2) {
    return FuseRequest.of(continuousA, peakA, peakTimeS, Conductor.metric(mm2), 3, 40, 12);
  }

  private static Check check(FuseChoice.Result result, String name) {
    return result.checks().stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no check " + name + " in " + result.checks()));
  }

  /**
   * A vehicle maker's body-builder table at 40 °C, load and fuse (sections of the next ISO size at
   * or above the printed 0.5, 0.5, 0.85, 1.25, 2, 3, 5, 8, 10, 15 mm²).
   */
  @ParameterizedTest
  @CsvSource({
    "3.5, 5, 0.5",
    "5, 7.5, 0.75",
    "7, 10, 1",
    "10.5, 15, 1.5",
    "14, 20, 2.5",
    "17.5, 25, 3",
    "21, 30, 6",
    "28, 40, 8",
    "35, 50, 10",
    "42, 60, 16"
  })
  void choosesTheFuseOfTheBodyBuilderTable(double loadA, double fuseA, double mm2) {
    FuseChoice.Result result = FuseChoice.of(request(loadA, 0, 0, mm2));
    assertThat(result.fuseA()).hasValue(fuseA);
    assertThat(check(result, "conductor carries the load").verdict()).isNotEqualTo(Verdict.FAILS);
    assertThat(check(result, "voltage drop").verdict()).isNotEqualTo(Verdict.FAILS);
  }

  @Test
  void listsEveryCheckWithItsSource() {
    FuseChoice.Result result = FuseChoice.of(request(9, 20, 0.1, 2.5));
    assertThat(result.checks())
        .extracting(Check::name)
        .containsExactly(
            "loading",
            "peak",
            "conductor carries the load",
            "conductor carries the fuse",
            "voltage drop",
            "end-of-line fault",
            "short-circuit withstand");
    assertThat(result.checks()).allSatisfy(c -> assertThat(c.source()).isNotEmpty());
    assertThat(result.verdict()).isNotEqualTo(Verdict.FAILS);
    assertThat(result.trace().lines()).isNotEmpty();
  }

  /** 6 A with 18 A for 0.3 s: a 10 A fuse may open at 1.8 times its rating after 0.19 s. */
  @Test
  void thePeakMayAskForALargerFuse() {
    assertThat(FuseChoice.of(request(6, 0, 0, 2.5)).fuseA()).hasValue(10);
    assertThat(FuseChoice.of(request(6, 18, 0.1, 2.5)).fuseA()).hasValue(10);
    FuseChoice.Result result = FuseChoice.of(request(6, 18, 0.3, 2.5));
    assertThat(result.fuseA()).hasValue(15);
    assertThat(check(result, "peak").limit()).isEqualTo(0.75);
  }

  /** By hand: 12 V / (0.02 + 6 m · 7.6 mohm/m · 339.5/254.5) = 148.5 A. */
  @Test
  void faultCurrentWorkedByHand() {
    FuseChoice.Result result = FuseChoice.of(request(9, 0, 0, 2.5));
    Check fault = check(result, "end-of-line fault");
    assertThat(fault.value()).isCloseTo(12 / (0.02 + 6 * 0.0076 * 339.5 / 254.5), within(1e-9));
    assertThat(fault.limit()).isEqualTo(30); // 200 % of 15 A opens within 5 s
  }

  @Test
  void raisedLoadFailsByName() {
    FuseChoice.Result result = FuseChoice.of(request(25, 0, 0, 1.5));
    assertThat(result.fuseA()).hasValue(40);
    assertThat(check(result, "conductor carries the load").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check(result, "conductor carries the fuse").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(result.verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void aLongThinLineFailsDropAndFault() {
    FuseChoice.Result result =
        FuseChoice.of(FuseRequest.of(14, 0, 0, Conductor.metric(0.5), 20, 40, 12));
    assertThat(check(result, "voltage drop").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check(result, "end-of-line fault").verdict()).isEqualTo(Verdict.FAILS);
    // The way back counts: with a short one the fault current rises.
    FuseChoice.Result shortBack =
        FuseChoice.of(
            FuseRequest.of(14, 0, 0, Conductor.metric(0.5), 20, 40, 12).withReturnLengthM(0.5));
    assertThat(check(shortBack, "end-of-line fault").value())
        .isGreaterThan(check(result, "end-of-line fault").value());
  }

  @Test
  void anOversizeFuseOnAThinWireFailsTheWithstand() {
    FuseChoice.Result result =
        FuseChoice.check(request(3, 0, 0, 0.5), new Fuse(FuseFamily.REGULAR_BLADE, 30));
    assertThat(check(result, "short-circuit withstand").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(check(result, "loading").verdict()).isEqualTo(Verdict.HOLDS);
  }

  @Test
  void withoutAStandardFuseTheFailingCheckComesFirst() {
    FuseChoice.Result load = FuseChoice.of(request(70, 0, 0, 25));
    assertThat(load.fuse()).isEmpty();
    assertThat(load.fuseA()).isEmpty();
    assertThat(load.checks().get(0).name()).isEqualTo("loading");
    assertThat(load.checks().get(0).verdict()).isEqualTo(Verdict.FAILS);
    assertThat(load.checks().get(0).rule()).contains("80 A blade type E");

    FuseChoice.Result peak = FuseChoice.of(request(5, 600, 1, 25));
    assertThat(peak.fuse()).isEmpty();
    assertThat(peak.checks().get(0).name()).isEqualTo("peak");
    assertThat(peak.verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void theSlotLimitsTheRating() {
    FuseRequest request =
        request(12, 0, 0, 2.5).withFuses(List.of(FuseFamily.SMALL_BLADE), OptionalDouble.of(15));
    FuseChoice.Result result = FuseChoice.of(request);
    assertThat(result.fuse()).isEmpty();
    assertThat(result.checks().get(0).value()).isCloseTo(0.8, within(1e-12));
    assertThatThrownBy(
            () ->
                FuseChoice.of(
                    request.withFuses(List.of(FuseFamily.LARGE_BLADE), OptionalDouble.of(10))))
        .isInstanceOf(SumException.class)
        .hasMessageContaining("largest rating is 10 A");
  }

  @Test
  void limitsAreTheShops() {
    FuseLimits loose =
        new FuseLimits(new LoadingLimit(0.8, "shop", "shop rule"), 1.0, 3, 0.01, 0.5);
    FuseChoice.Result result = FuseChoice.of(request(8, 0, 0, 2.5).withLimits(loose));
    assertThat(result.fuseA()).hasValue(10);
    assertThat(check(result, "loading").source()).isEqualTo("shop rule");
    assertThat(check(result, "voltage drop").limit()).isEqualTo(3);
    assertThat(check(result, "end-of-line fault").limit()).isEqualTo(35);
  }

  @Test
  void aBundleLowersWhatTheConductorCarries() {
    FuseRequest alone = request(14, 0, 0, 2.5);
    double single = check(FuseChoice.of(alone), "conductor carries the load").limit();
    FuseChoice.Result bundled = FuseChoice.of(alone.withBundle(8, OptionalDouble.of(0.4)));
    assertThat(check(bundled, "conductor carries the load").limit()).isLessThan(single);
    assertThat(check(bundled, "conductor carries the fuse").value())
        .isCloseTo(single, within(1e-9));
  }

  /** The overload of one lead adds to the heat of its loaded neighbours. */
  @Test
  void theFuseIsAlsoHeldAgainstTheBundle() {
    String name = "conductor carries the fuse in its bundle";
    FuseRequest alone = request(14, 0, 0, 2.5);
    assertThat(FuseChoice.of(alone).checks()).extracting(Check::name).doesNotContain(name);
    Check few = check(FuseChoice.of(alone.withBundle(3, OptionalDouble.of(0.4))), name);
    Check many = check(FuseChoice.of(alone.withBundle(12, OptionalDouble.of(0.4))), name);
    assertThat(few.limit()).isEqualTo(65);
    assertThat(few.verdict()).isNotEqualTo(Verdict.FAILS);
    assertThat(many.value()).isGreaterThan(few.value());
    // The rise is at least that of the single wire at the overload of 110 % of 20 A.
    double singleC =
        WireHeat.temperature(WireHeat.Lying.single(Conductor.metric(2.5), 40), 22).conductorC();
    assertThat(few.value()).isGreaterThanOrEqualTo(singleC - 40 - 1e-6);
    Check molten =
        check(
            FuseChoice.check(
                request(14, 0, 0, 0.13).withBundle(12, OptionalDouble.empty()),
                new Fuse(FuseFamily.REGULAR_BLADE, 40)),
            name);
    assertThat(molten.verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void betterInsulationWithstandsMore() {
    FuseRequest pvc = request(14, 0, 0, 2.5);
    FuseRequest xlpe = pvc.withInsulation(105, Insulation.XLPE);
    assertThat(check(FuseChoice.of(xlpe), "short-circuit withstand").limit())
        .isGreaterThan(check(FuseChoice.of(pvc), "short-circuit withstand").limit());
  }

  @Provide
  Arbitrary<Double> loads() {
    return TestConductors.from(0.1, 27);
  }

  @Provide
  Arbitrary<Double> peakShares() {
    return TestConductors.from(1, 6);
  }

  @Provide
  Arbitrary<Double> peakTimes() {
    return TestConductors.from(0.01, 1.2);
  }

  /** The chosen fuse carries load and peak, and the next smaller one does not. */
  @Property(tries = 200)
  void theChoiceIsMinimal(
      @ForAll("loads") double loadA,
      @ForAll("peakShares") double peakShare,
      @ForAll("peakTimes") double peakTimeS) {
    FuseRequest request =
        request(loadA, loadA * peakShare, peakTimeS, 6)
            .withFuses(List.of(FuseFamily.REGULAR_BLADE), OptionalDouble.empty());
    OptionalDouble expected = OptionalDouble.empty();
    for (double rating :
        List.of(1.0, 2.0, 3.0, 4.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0)) {
      Fuse fuse = new Fuse(FuseFamily.REGULAR_BLADE, rating);
      // 0.7 · 3 is a binary digit below 2.1: a load exactly at the limit is within it.
      boolean carries = loadA <= 0.7 * rating * (1 + 1e-9);
      if (carries && peakTimeS <= fuse.shortestOpeningS(loadA * peakShare)) {
        expected = OptionalDouble.of(rating);
        break;
      }
    }
    assertThat(FuseChoice.of(request).fuseA()).isEqualTo(expected);
  }

  /** A longer line never raises a verdict. */
  @Property(tries = 100)
  void aLongerLineIsNeverBetter(
      @ForAll("loads") double loadA, @ForAll("peakShares") double lengthM) {
    FuseRequest near = FuseRequest.of(loadA, 0, 0, Conductor.metric(2.5), lengthM, 40, 12);
    FuseRequest far = FuseRequest.of(loadA, 0, 0, Conductor.metric(2.5), lengthM * 2, 40, 12);
    assertThat(FuseChoice.of(far).fuseA()).isEqualTo(FuseChoice.of(near).fuseA());
    for (String name : List.of("voltage drop", "end-of-line fault")) {
      assertThat(check(FuseChoice.of(far), name).margin())
          .isLessThan(check(FuseChoice.of(near), name).margin());
    }
  }
}
