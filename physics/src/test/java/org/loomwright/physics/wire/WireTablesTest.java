package org.loomwright.physics.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.SumException;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

final class WireTablesTest {
  private static final double M_PER_1000FT = 304.8;
  private static final double G_PER_LB = 453.59237;

  /** IEC 60228 largest resistance of class 5, plain and tinned; 0.5 %. */
  @Test
  void class5AgreesWithIec60228() {
    int compared = 0;
    for (Row row : ReferenceTables.iec60228Resistance().rows()) {
      double area = row.number("area_mm2");
      compared++;
      assertThat(Class5.plain(area).ohmPerM20C() * 1000)
          .as(row.where())
          .isCloseTo(row.number("class5_6_plain"), Percentage.withPercentage(0.5));
      assertThat(Class5.tinned(area).ohmPerM20C() * 1000)
          .as(row.where())
          .isCloseTo(row.number("class5_6_tinned"), Percentage.withPercentage(0.5));
    }
    assertThat(compared).isEqualTo(Class5.plain().size()).isEqualTo(Class5.tinned().size());
  }

  /** A real conductor of the nominal area would have less; the bound may exceed it by 20 %. */
  @Test
  void class5ResistanceIsPlausibleForItsArea() {
    for (Conductor c : Class5.plain()) {
      double solid = Copper.RESISTIVITY_OHM_MM2_PER_M / c.areaMm2();
      assertThat(c.ohmPerM20C() / solid).as(c.label()).isBetween(1.08, 1.20);
    }
  }

  @Test
  void class5RisesInEveryRespect() {
    for (List<Conductor> sizes : List.of(Class5.plain(), Class5.tinned())) {
      for (int i = 1; i < sizes.size(); i++) {
        assertThat(sizes.get(i).ohmPerM20C()).isLessThan(sizes.get(i - 1).ohmPerM20C());
        assertThat(sizes.get(i).overallDiameterMm())
            .isGreaterThan(sizes.get(i - 1).overallDiameterMm());
      }
    }
  }

  @Test
  void unknownClass5SizesNameTheNearest() {
    assertThatThrownBy(() -> Class5.plain(3))
        .isInstanceOf(UnknownConductorException.class)
        .hasMessageContaining("nearest: 2.5 mm² class 5 and 4 mm² class 5.");
    assertThatThrownBy(() -> Class5.tinned(0.1))
        .hasMessageContaining("nearest: 0.5 mm² class 5 tinned.");
    assertThatThrownBy(() -> Class5.plain(400)).hasMessageContaining("nearest: 300 mm² class 5.");
  }

  /** The printed areas, and that every SAE size has less copper than the AWG of its number. */
  @Test
  void saeAreasAreThePrintedOnes() {
    int compared = 0;
    for (Row row : ReferenceTables.saeAreas().rows()) {
      int gauge = row.gauge("gauge");
      compared++;
      assertThat(SaeWire.areaMm2(gauge))
          .as(row.where())
          .isCloseTo(
              row.number("sae_cmil") * SaeWire.MM2_PER_CMIL, Percentage.withPercentage(0.01));
      double awg = Conductor.awg(gauge).areaMm2();
      // The printed AWG column is that of stranded boat cable, up to 2 % off the solid geometry.
      assertThat(row.number("awg_cmil") * SaeWire.MM2_PER_CMIL)
          .as(row.where())
          .isCloseTo(awg, Percentage.withPercentage(2));
      assertThat(SaeWire.areaMm2(gauge) / awg).as(row.where()).isBetween(0.87, 0.99);
    }
    assertThat(compared).isEqualTo(SaeWire.gauges().size());
  }

  @Test
  void saeDiametersAreThoseOfTheTable() {
    int compared = 0;
    for (Row row : ReferenceTables.saeOutsideDiameters().rows()) {
      int gauge = row.gauge("awg");
      for (SaeWall wall : SaeWall.values()) {
        String column = wall.name().toLowerCase(java.util.Locale.ROOT) + "_od_mm";
        if (gauge <= 18 && !row.blank(column)) {
          compared++;
          Conductor c = SaeWire.find(gauge, wall);
          assertThat(c.overallDiameterMm()).as(row.where()).isEqualTo(row.number(column));
          assertThat(c.source()).contains("SAE J1128").contains("memory");
        }
      }
    }
    assertThat(compared).isEqualTo(17);
  }

  /** 2 % lay and 1 to 12 % less copper: an SAE wire has 3 to 16 % more resistance than its AWG. */
  @Test
  void saeWireHasMoreResistanceThanTheGaugeOfItsNumber() {
    for (int gauge = 18; gauge >= 8; gauge -= 2) {
      double ratio =
          SaeWire.find(gauge, SaeWall.GXL).ohmPerM20C() / Conductor.awg(gauge).ohmPerM20C();
      assertThat(ratio).as(gauge + " gauge").isBetween(1.03, 1.16);
    }
  }

  @Test
  void unknownSaeSizesAreRefused() {
    assertThatThrownBy(() -> SaeWire.areaMm2(20)).hasMessageContaining("nearest: SAE 18");
    assertThatThrownBy(() -> SaeWire.find(8, SaeWall.TXL))
        .hasMessageContaining("SAE 8 TXL")
        .hasMessageContaining("SAE 18 to SAE 10");
    assertThatThrownBy(() -> SaeWire.find(-1, SaeWall.GXL)).hasMessageContaining("SAE 2/0 GXL");
  }

  /** Stranded wire chart: area 2 %, resistance of bare copper 4 %, by that chart's note. */
  @Test
  void strandsGiveAreaAndResistanceOfTheChart() {
    for (Row row : ReferenceTables.awgStranded().rows()) {
      int strands = Integer.parseInt(row.text("stranding").split("/")[0]);
      Stranding s = new Stranding(strands, row.number("strand_dia_in") * 25.4);
      assertThat(s.areaMm2() / SaeWire.MM2_PER_CMIL)
          .as(row.where())
          .isCloseTo(row.number("cmil"), Percentage.withPercentage(2));
      assertThat(s.ohmPerM20C() * M_PER_1000FT)
          .as(row.where())
          .isCloseTo(row.number("ohm_per_1000ft"), Percentage.withPercentage(6));
    }
  }

  /** The strands of the GXL sheet hold the smallest area and at most 7 % more. */
  @Test
  void gxlStrandsHoldTheSmallestArea() {
    int compared = 0;
    for (Row row : ReferenceTables.saeGxl().rows()) {
      int gauge = row.gauge("awg");
      if (gauge <= 18) {
        compared++;
        assertThat(stranding(row).areaMm2() / SaeWire.areaMm2(gauge))
            .as(row.where())
            .isBetween(1.0, 1.07);
      }
    }
    assertThat(compared).isEqualTo(6);
  }

  private static Stranding stranding(Row row) {
    String[] parts = row.text("stranding").split("/");
    int strands = Integer.parseInt(parts[0]);
    return parts[1].startsWith(".")
        ? new Stranding(strands, Double.parseDouble(parts[1]) * 25.4)
        : Stranding.ofAwg(strands, Integer.parseInt(parts[1]));
  }

  /** Weights of the GXL sheet, whole pounds per 1000 ft: 10 % and the rounding. */
  @Test
  void massAgreesWithTheGxlSheet() {
    for (Row row : ReferenceTables.saeGxl().rows()) {
      Stranding s = stranding(row);
      Conductor c =
          new Conductor(
              row.text("awg"),
              s.areaMm2(),
              s.ohmPerM20C(),
              1.15 * Math.sqrt(4 * s.areaMm2() / Math.PI),
              row.number("od_mm"),
              "sheet");
      double sheet = row.number("lb_per_1000ft") * G_PER_LB / M_PER_1000FT;
      double rounding = 0.5 * G_PER_LB / M_PER_1000FT;
      assertThat(WireMass.of(c, InsulationMaterial.XLPE).totalGPerM())
          .as(row.where())
          .isCloseTo(sheet, within(0.10 * sheet + rounding));
    }
  }

  /** By hand: 2.5 mm², 2.2 and 3.0 mm: 8.89·2.5 = 22.225; 1.40·π/4·(9-4.84) = 4.574 g/m. */
  @Test
  void massByHand() {
    WireMass.Result mass = WireMass.of(Conductor.metric(2.5), InsulationMaterial.PVC);
    assertThat(mass.copperGPerM()).isCloseTo(22.225, within(1e-9));
    assertThat(mass.insulationGPerM()).isCloseTo(4.5741, within(1e-3));
    assertThat(mass.totalGPerM()).isCloseTo(26.799, within(1e-3));
    assertThat(mass.trace().lines()).hasSize(5);
  }

  @Test
  void insulationClassesAreThoseOfTheTable() {
    int compared = 0;
    for (Row row : ReferenceTables.insulationClasses().rows()) {
      InsulationClass c = InsulationClass.parse(row.text("class"));
      compared++;
      assertThat(c.highestC()).as(row.where()).isEqualTo(row.number("t_max_C"));
      assertThat(InsulationClass.LOWEST_C).isEqualTo(row.number("t_min_C"));
      assertThat(c.source().contains("memory"))
          .as(row.where())
          .isEqualTo(row.text("seen").equals("memory"));
    }
    assertThat(compared).isEqualTo(InsulationClass.values().length);
    assertThat(InsulationClass.notAbove(130)).contains(InsulationClass.C);
    assertThat(InsulationClass.notAbove(105)).contains(InsulationClass.B);
    assertThat(InsulationClass.notAbove(80)).isEmpty();
    assertThatThrownBy(() -> InsulationClass.parse("Z"))
        .isInstanceOf(SumException.class)
        .hasMessage("unknown insulation class \"Z\"; known: A, B, C, D, E, F, G, H");
  }

  @Test
  void metalsCarryThePublishedConstants() {
    for (Row row : ReferenceTables.copperConstants().rows()) {
      switch (row.text("name")) {
        case "rho20_aluminium" ->
            assertThat(ConductorMetal.ALUMINIUM.resistivityOhmMm2PerM())
                .isEqualTo(row.number("value"));
        case "inferred_zero_resistance_T_aluminium" ->
            assertThat(ConductorMetal.ALUMINIUM.zeroResistanceC()).isEqualTo(-row.number("value"));
        case "rho20_IACS" ->
            assertThat(ConductorMetal.COPPER.resistivityOhmMm2PerM())
                .isEqualTo(row.number("value"));
        default -> assertThat(row.text("value")).isNotEmpty();
      }
    }
  }

  @Test
  void materialsArePlausible() {
    for (InsulationMaterial m : InsulationMaterial.values()) {
      assertThat(m.densityGPerCm3()).isBetween(0.9, 2.3);
      assertThat(m.heatCapacityJPerCm3K()).isBetween(1.2, 2.5);
      assertThat(m.conductivityWPerMK()).isBetween(0.15, 0.35);
      assertThat(m.source()).isNotEmpty();
    }
  }
}
