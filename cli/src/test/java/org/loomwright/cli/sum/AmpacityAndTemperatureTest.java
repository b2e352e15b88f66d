package org.loomwright.cli.sum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class AmpacityAndTemperatureTest {

  /** 33 CFR 183.425 Table 5, allowable amperage of conductors, ambient 30 °C. */
  @ParameterizedTest
  @CsvSource({
    "18, 60, 10",
    "18, 105, 20",
    "16, 80, 20",
    "14, 75, 20",
    "14, 105, 35",
    "12, 125, 50",
    "10, 90, 55",
    "8, 200, 100",
    "6, 105, 120",
    "4, 80, 130",
    "2/0, 105, 330",
    "4/0, 125, 475"
  })
  void cellsOfTheTableComeBackUnchanged(String gauge, String ratingC, double tableA) {
    JsonNode answer = ampacity(gauge + " AWG", ratingC + " °C", "30 °C");
    assertThat(answer.propertyNames()).containsExactly("handbookA", "heatBalanceA", "allowedA");
    double handbookA = Json.number(answer, "handbookA");
    double heatBalanceA = Json.number(answer, "heatBalanceA");
    assertThat(handbookA).isCloseTo(tableA, within(1e-9));
    assertThat(Json.number(answer, "allowedA")).isEqualTo(Math.min(handbookA, heatBalanceA));
  }

  /** 33 CFR 183.425 note 1: 0.85 of the table for 105 °C insulation in engine spaces (50 °C). */
  @Test
  void engineSpaceFactorIsMetByTheSquareRoot() {
    double at50 = Json.number(ampacity("14 AWG", "105 °C", "50 °C"), "handbookA");
    assertThat(at50 / 35).isCloseTo(0.85, within(0.01));
  }

  /** 33 CFR 183.425 note 2: factors for bundled conductors. */
  @ParameterizedTest
  @CsvSource({"1, 1.0", "2, 1.0", "3, 0.7", "4, 0.6", "6, 0.6", "7, 0.5", "24, 0.5", "25, 0.4"})
  void bundleNoteIsApplied(String wires, double factor) {
    JsonNode answer = ampacity("14 AWG", "105 °C", "30 °C", "--wires", wires);
    assertThat(Json.number(answer, "handbookA")).isCloseTo(35 * factor, within(1e-9));
  }

  /** AC 43.13-1B figure 11-5, reading of the circular itself: 8 wires at 60 % loading, 0.6. */
  @Test
  void loadedBundleFollowsThePublishedCurve() {
    JsonNode answer = ampacity("14 AWG", "105 °C", "30 °C", "--wires", "8", "--loaded", "60%");
    assertThat(Json.number(answer, "handbookA") / 35).isCloseTo(0.6, within(0.015));
  }

  @Test
  void aSizeBelowTheTableHasNoHandbookValue() {
    JsonNode answer = ampacity("0.5 mm²", "105 °C", "30 °C");
    assertThat(answer.get("handbookA").isNull()).isTrue();
    assertThat(Json.number(answer, "allowedA"))
        .isEqualTo(Json.number(answer, "heatBalanceA"))
        .isPositive();
  }

  /** The current at which a wire reaches a temperature heats it to that temperature. */
  @ParameterizedTest
  @CsvSource({"14 AWG, 105", "2.5 mm², 90", "6 mm², 125", "0.5 mm², 80"})
  void temperatureIsTheOtherWayRound(String wire, double ratingC) {
    double heatBalanceA = Json.number(ampacity(wire, ratingC + " °C", "30 °C"), "heatBalanceA");
    JsonNode answer =
        Json.answer(
            "temperature",
            "--wire",
            wire,
            "--current",
            String.format(Locale.ROOT, "%.6f A", heatBalanceA),
            "--ambient",
            "30 °C");
    assertThat(answer.propertyNames()).containsExactly("conductorC");
    assertThat(Json.number(answer, "conductorC")).isCloseTo(ratingC, within(0.001));
  }

  @Test
  void withoutCurrentTheConductorIsAsWarmAsTheAir() {
    JsonNode answer =
        Json.answer("temperature", "--wire", "1 mm²", "--current", "0 A", "--ambient", "140 °F");
    assertThat(Json.number(answer, "conductorC")).isCloseTo(60, within(1e-6));
  }

  private static JsonNode ampacity(String wire, String rating, String ambient, String... more) {
    String[] words = new String[7 + more.length];
    words[0] = "ampacity";
    words[1] = "--wire";
    words[2] = wire;
    words[3] = "--insulation-rating";
    words[4] = rating;
    words[5] = "--ambient";
    words[6] = ambient;
    System.arraycopy(more, 0, words, 7, more.length);
    return Json.answer(words);
  }
}
