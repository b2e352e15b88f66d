package org.loomwright.cli.sum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.cli.Run;
import tools.jackson.databind.JsonNode;

class ProtectionTest {

  /** k of copper, A·√s/mm², up to 300 mm²: IEC 60364-5-54. */
  @ParameterizedTest
  @CsvSource({
    "PVC, 115",
    "pvc 90, 100",
    "XLPE, 143",
    "rubber 60, 141",
    "rubber-85, 134",
    "silicone, 132"
  })
  void withstandFollowsThePublishedFactors(String insulation, double k) {
    JsonNode answer =
        Json.answer("withstand", "--wire", "2.5 mm²", "--insulation", insulation, "--time", "1 s");
    assertThat(answer.propertyNames()).containsExactly("currentA");
    assertThat(Json.number(answer, "currentA")).isCloseTo(k * 2.5, within(1e-6));
    JsonNode shorter =
        Json.answer(
            "withstand", "--wire", "2.5 mm²", "--insulation", insulation, "--time", "250 ms");
    assertThat(Json.number(shorter, "currentA")).isCloseTo(2 * k * 2.5, within(1e-6));
  }

  @Test
  void withstandIsRefusedWhereItDoesNotHold() {
    Run run = Run.of("sum", "withstand", "--wire=2.5mm2", "--insulation=PVC", "--time=6s");
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err()).contains("5 s").hasLineCount(1);
  }

  /**
   * Load, fuse and least section of a vehicle maker's body-builder table, 40 °C, load at most 70 %
   * of the fuse.
   */
  @ParameterizedTest
  @CsvSource({
    "3.5, 5, 0.5",
    "5, 7.5, 0.5",
    "7, 10, 0.85",
    "10.5, 15, 1.25",
    "14, 20, 2",
    "17.5, 25, 3",
    "21, 30, 5"
  })
  void fuseFollowsThePublishedLoadTable(double continuousA, double fuseA, double areaMm2) {
    // The next larger catalogue size where the published section is none of ours.
    double sizeMm2 = areaMm2 == 0.85 ? 1 : areaMm2 == 1.25 ? 1.5 : areaMm2 == 5 ? 6 : areaMm2;
    Run run = fuse(continuousA + " A", "0 A", "0 s", sizeMm2 + " mm²", "1 m");
    JsonNode answer = Json.read(run.out());
    assertThat(Json.number(answer, "fuseA")).isEqualTo(fuseA);
  }

  @Test
  void fuseListsItsChecksWithExactlyTheseKeys() {
    JsonNode answer = Json.read(fuse("10 A", "30 A", "100 ms", "2.5 mm²", "3 m").out());
    assertThat(answer.propertyNames()).containsExactly("fuseA", "checks");
    List<String> names = new ArrayList<>();
    for (JsonNode check : answer.get("checks")) {
      assertThat(check.propertyNames()).containsExactly("name", "verdict", "value", "limit");
      assertThat(check.get("verdict").asString()).isIn("holds", "marginal", "fails");
      names.add(check.get("name").asString());
    }
    assertThat(names)
        .containsExactly(
            "loading",
            "peak",
            "conductor carries the load",
            "conductor carries the fuse",
            "voltage drop",
            "end-of-line fault",
            "short-circuit withstand");
  }

  @Test
  void aThickWireIsProtectedAndEndsWithZero() {
    Run run = fuse("10 A", "30 A", "100 ms", "4 mm²", "3 m");
    assertThat(run.exitCode()).as(run.out()).isZero();
    assertThat(verdicts(run)).doesNotContain("fails");
  }

  @Test
  void aThinWireBehindTheSameFuseEndsWithOneAndStillAnswers() {
    Run run = fuse("10 A", "30 A", "100 ms", "0.35 mm²", "3 m");
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.err()).isEmpty();
    assertThat(verdicts(run)).contains("fails");
    assertThat(Json.number(Json.read(run.out()), "fuseA")).isEqualTo(15);
  }

  @Test
  void aLoadAboveEveryFuseHasNoFuseAndEndsWithOne() {
    Run run = fuse("200 A", "0 A", "0 s", "50 mm²", "3 m");
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(Json.read(run.out()).get("fuseA").isNull()).isTrue();
    Run shown = Run.of(fuseWords("200 A", "0 A", "0 s", "50 mm²", "3 m").subList(0, 16));
    assertThat(shown.exitCode()).isEqualTo(1);
    assertThat(shown.out()).startsWith("fuse  none: ").contains("fails");
  }

  /**
   * Gauge for 3 % drop at 12 V by length there and back, as marine handbooks print it. Ours reckons
   * with the conductor at its highest temperature, so it is never thinner, and at most two even
   * gauges thicker.
   */
  @ParameterizedTest
  @CsvSource({"5, 20, 14", "10, 20, 10", "10, 30, 10", "15, 25, 8", "15, 50, 6"})
  void gaugeIsNeverThinnerThanThePublishedTable(
      double currentA, double lengthFt, int publishedAwg) {
    JsonNode answer = gauge(currentA + " A", lengthFt + " ft", "12 V", "3%", "30 °C", "105 °C");
    assertThat(answer.propertyNames()).containsExactly("areaMm2", "awg");
    assertThat(Json.number(answer, "awg")).isBetween(publishedAwg - 4.0, (double) publishedAwg);
  }

  @Test
  void bothChosenSizesPassAndTheNextSmallerMetricOneFails() {
    JsonNode answer = gauge("12 A", "6 m", "12 V", "3 %", "40 °C", "105 °C");
    double areaMm2 = Json.number(answer, "areaMm2");
    assertThat(dropPercent(areaMm2 + " mm²")).isLessThanOrEqualTo(3);
    assertThat(dropPercent((int) Json.number(answer, "awg") + " AWG")).isLessThanOrEqualTo(3);
    double[] sizes = {1, 1.5, 2, 2.5, 3, 4, 6, 10};
    double smaller = 0;
    for (double size : sizes) {
      smaller = size < areaMm2 ? size : smaller;
    }
    assertThat(dropPercent(smaller + " mm²")).isGreaterThan(3);
  }

  @Test
  void thickGaugesCountBelowZero() {
    JsonNode answer = gauge("150 A", "10 m", "12 V", "3%", "30 °C", "105 °C");
    assertThat(Json.number(answer, "awg")).isNegative();
  }

  @Test
  void whereNoSizeServesTheAnswerIsNoneAndTheEndIsOne() {
    Run run =
        Run.of(
            "sum",
            "gauge",
            "--current=900 A",
            "--length=100 m",
            "--supply=12 V",
            "--max-drop=1%",
            "--ambient=30 °C",
            "--insulation-rating=105 °C",
            "--json");
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).isEqualTo("{\"areaMm2\":null,\"awg\":null}\n");
  }

  private static double dropPercent(String wire) {
    return Json.number(
        Json.answer(
            "drop",
            "--wire",
            wire,
            "--length=6 m",
            "--current=12 A",
            "--supply=12 V",
            "--temperature=105 °C"),
        "dropPercent");
  }

  private static JsonNode gauge(
      String current, String length, String supply, String drop, String ambient, String rating) {
    return Json.answer(
        "gauge",
        "--current",
        current,
        "--length",
        length,
        "--supply",
        supply,
        "--max-drop",
        drop,
        "--ambient",
        ambient,
        "--insulation-rating",
        rating);
  }

  private static Run fuse(
      String continuous, String peak, String peakTime, String wire, String length) {
    Run run = Run.of(fuseWords(continuous, peak, peakTime, wire, length));
    assertThat(run.exitCode()).as(run.err()).isIn(0, 1);
    return run;
  }

  private static List<String> fuseWords(
      String continuous, String peak, String peakTime, String wire, String length) {
    return List.of(
        "sum",
        "fuse",
        "--continuous",
        continuous,
        "--peak",
        peak,
        "--peak-time",
        peakTime,
        "--wire",
        wire,
        "--length",
        length,
        "--ambient",
        "40 °C",
        "--supply",
        "12 V",
        "--json");
  }

  private static List<String> verdicts(Run run) {
    List<String> verdicts = new ArrayList<>();
    for (JsonNode check : Json.read(run.out()).get("checks")) {
      verdicts.add(check.get("verdict").asString());
    }
    return verdicts;
  }
}
