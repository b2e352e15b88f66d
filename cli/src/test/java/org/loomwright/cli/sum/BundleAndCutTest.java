package org.loomwright.cli.sum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.cli.Run;
import tools.jackson.databind.JsonNode;

class BundleAndCutTest {

  /** Widths and counts of a worked example of cutting stock: 73 masters of 5600 mm, 0.401 %. */
  private static final String EXAMPLE =
      "1380x22,1520x25,1560x12,1710x14,1820x18,1880x18,1930x20,2000x10,2050x12,2100x14,2140x16,"
          + "2150x18,2200x20";

  /** Closed forms: one, two, three equal and seven equal circles. */
  @ParameterizedTest
  @CsvSource({
    "'2.1', 2.1",
    "'2.1,3', 5.1",
    "'2,2,2', 4.309401077",
    "' 2 , 2mm,2,2,2,2,2 mm ', 6",
    "'0.5,3,2', 5"
  })
  void theBundleIsAsWideAsItsClosedForm(String diameters, double diameterMm) {
    JsonNode answer = Json.answer("bundle", "--diameters", diameters);
    assertThat(answer.propertyNames()).containsExactly("diameterMm");
    assertThat(Json.number(answer, "diameterMm")).isCloseTo(diameterMm, within(1e-8));
  }

  @Test
  void theWorkedExampleOfCuttingStock() {
    JsonNode answer = Json.answer("cut", "--stock", "5600 mm", "--pieces", EXAMPLE);
    assertThat(answer.propertyNames()).containsExactly("stockUsed", "lowerBound", "wastePercent");
    assertThat(Json.number(answer, "stockUsed")).isEqualTo(73);
    assertThat(Json.number(answer, "lowerBound")).isEqualTo(73);
    assertThat(Json.number(answer, "wastePercent")).isCloseTo(0.401, within(0.0005));
  }

  @Test
  void eachCutBetweenPiecesIsLost() {
    String[] words = {"cut", "--stock", "30 cm", "--pieces", "100x3", "--kerf", "0 mm"};
    assertThat(Json.number(Json.answer(words), "stockUsed")).isEqualTo(1);
    words[6] = "2.4 mm";
    assertThat(Json.number(Json.answer(words), "stockUsed")).isEqualTo(2);
    words[6] = "1/8 in";
    assertThat(Json.number(Json.answer(words), "lowerBound")).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2.1,,3.0 | character 5, a number is missing",
        "2.1,3.0, | character 9, a number is missing",
        "'' | character 1, a number is missing",
        "2.1,3.0 A | character 9, \"A\" is not understood",
        "2.1;3.0 | character 4, \";\" is not understood",
        "2.1,0 | character 5, the number must be above zero",
        "-2.1 | character 1, a number is missing"
      })
  void diametersThatCannotBeReadAreNamedWithTheirPlace(String text, String problem) {
    Run run = Run.of("sum", "bundle", "--diameters=" + text);
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("--diameters: \"" + text + "\" can't be read")
        .contains(problem, "expected numbers in mm", "\"2.1,2.1,3.0\"")
        .hasLineCount(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1380 | character 5, \"x\" and a count must follow",
        "1380x | character 6, a count is missing",
        "1380x2,x3 | character 8, a number is missing",
        "1380x2.5 | character 7, \".\" is not understood",
        "1380x0 | character 6, the count must be above zero",
        "1380 inx3 | character 5, \"x\" and a count must follow"
      })
  void piecesThatCannotBeReadAreNamedWithTheirPlace(String text, String problem) {
    Run run = Run.of("sum", "cut", "--stock", "5600 mm", "--pieces=" + text);
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("--pieces: \"" + text + "\" can't be read")
        .contains(problem, "\"1380x22,1520x25\"")
        .hasLineCount(1);
  }

  @Test
  void aPieceLongerThanTheStockIsRefused() {
    Run run = Run.of("sum", "cut", "--stock", "2 m", "--pieces", "1500x1,2001x2");
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err()).contains("2001 mm", "2000 mm", "must not be longer than the stock");
  }
}
