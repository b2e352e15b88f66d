package org.loomwright.physics.heat;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.physics.TestConductors;
import org.loomwright.physics.packing.EqualWires;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class SurfaceHeatTest {
  /**
   * Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, example of the horizontal steam
   * pipe (from memory): 0.1 m, surface 165 °C, air 23 °C, emissivity 0.85: Ra 5.073e6, Nu 23.3,
   * convection 325 W/m, radiation 441 W/m. The book's air is at 1 bar, which lowers Ra by 2.6 %.
   */
  @Test
  void agreesWithTheTextbookSteamPipe() {
    SurfaceHeat heat = SurfaceHeat.of(100, 165, 23, 0.85);
    assertThat(heat.rayleigh() / (1.01325 * 1.01325))
        .isCloseTo(5.073e6, Percentage.withPercentage(1));
    assertThat(heat.nusselt()).isCloseTo(23.3, Percentage.withPercentage(1));
    assertThat(heat.convectionWPerM()).isCloseTo(325, Percentage.withPercentage(1));
    assertThat(heat.radiationWPerM()).isCloseTo(441, Percentage.withPercentage(0.5));
  }

  /**
   * Properties of air at atmospheric pressure, Incropera and DeWitt table A.4 (from memory):
   * kelvin, kinematic viscosity 1e-6 m²/s at 1 bar, conductivity 1e-3 W/(m·K), Prandtl number.
   */
  @ParameterizedTest
  @CsvSource({
    "250, 11.44, 22.3, 0.720",
    "300, 15.89, 26.3, 0.707",
    "350, 20.92, 30.0, 0.700",
    "400, 26.41, 33.8, 0.690",
    "450, 32.39, 37.3, 0.686"
  })
  void airAgreesWithTheTextbookTable(
      double kelvin, double viscosity, double conductivity, double prandtl) {
    assertThat(Air.kinematicViscosity(kelvin) * 1e6 * 1.01325)
        .isCloseTo(viscosity, Percentage.withPercentage(1.5));
    assertThat(Air.conductivity(kelvin) * 1e3)
        .isCloseTo(conductivity, Percentage.withPercentage(1.5));
    assertThat(Air.prandtl(kelvin)).isCloseTo(prandtl, Percentage.withPercentage(3));
  }

  /**
   * ECSS-Q-ST-30-11C Rev.2 Annex C: wire in vacuum, 70 °C around, wire at 150 °C, emissivity 0.75,
   * 24 AWG of 0.8 mm and 105 mohm/m carries 3.4 A (printed to one decimal, so 3 %).
   */
  @Test
  void radiationAgreesWithTheSpaceStandard() {
    double q = SurfaceHeat.of(0.8, 150, 70, 0.75).radiationWPerM();
    double ohmPerM = 0.105 * (1 + 0.00396 * 130);
    Row row =
        ReferenceTables.ecssSingleWire().rows().stream()
            .filter(r -> r.text("awg").equals("24"))
            .findFirst()
            .orElseThrow();
    assertThat(Math.sqrt(q / ohmPerM))
        .isCloseTo(row.number("I_sw_A"), Percentage.withPercentage(3));
  }

  @Provide
  Arbitrary<Double> diameters() {
    return TestConductors.from(0.8, 80);
  }

  @Provide
  Arbitrary<Double> rises() {
    return TestConductors.from(2, 200);
  }

  @Provide
  Arbitrary<Double> ambients() {
    return TestConductors.from(-40, 120);
  }

  /**
   * Morgan 1975, another fit to measurements of horizontal cylinders, Nu = C Ra^n (from memory).
   * Churchill and Chu lie up to a quarter below it for thin wires: the cautious side.
   */
  private static double morganNusselt(double rayleigh) {
    if (rayleigh < 1e-2) {
      return 0.675 * Math.pow(rayleigh, 0.058);
    }
    if (rayleigh < 1e2) {
      return 1.02 * Math.pow(rayleigh, 0.148);
    }
    if (rayleigh < 1e4) {
      return 0.850 * Math.pow(rayleigh, 0.188);
    }
    return rayleigh < 1e7 ? 0.480 * Math.pow(rayleigh, 0.250) : 0.125 * Math.pow(rayleigh, 0.333);
  }

  @Property
  void convectionAgreesWithAnotherPublishedFit(
      @ForAll("diameters") double diameterMm,
      @ForAll("rises") double rise,
      @ForAll("ambients") double ambientC) {
    SurfaceHeat heat = SurfaceHeat.of(diameterMm, ambientC + rise, ambientC, 0.9);
    assertThat(heat.nusselt() / morganNusselt(heat.rayleigh())).isBetween(0.75, 1.20);
  }

  @Property
  void growsWithRiseAndDiameter(
      @ForAll("diameters") double diameterMm,
      @ForAll("rises") double rise,
      @ForAll("ambients") double ambientC) {
    double base = SurfaceHeat.of(diameterMm, ambientC + rise, ambientC, 0.8).totalWPerM();
    assertThat(SurfaceHeat.of(diameterMm, ambientC + rise * 1.05, ambientC, 0.8).totalWPerM())
        .isGreaterThan(base);
    assertThat(SurfaceHeat.of(diameterMm * 1.05, ambientC + rise, ambientC, 0.8).totalWPerM())
        .isGreaterThan(base);
  }

  @Test
  void nothingFlowsWithoutARise() {
    assertThat(SurfaceHeat.of(3, 40, 40, 0.8).totalWPerM()).isZero();
  }

  @Test
  void bundleDiametersAreThePublishedPackingsAndNeverRoomier() {
    for (Row row : ReferenceTables.equalCircles().rows()) {
      int n = (int) row.number("n");
      double published = row.number("ratio_R_over_r");
      if (n <= 19) {
        assertThat(EqualWires.ratio(n)).isCloseTo(published, Percentage.withPercentage(1e-6));
      }
      assertThat(EqualWires.ratio(n))
          .as(n + " wires")
          .isBetween(0.90 * published, published * (1 + 1e-8));
    }
    for (int n = 2; n <= 300; n++) {
      assertThat(EqualWires.ratio(n)).isGreaterThanOrEqualTo(EqualWires.ratio(n - 1));
    }
  }
}
