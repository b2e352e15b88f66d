package org.loomwright.papers.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.TraceLine;

/** Which lines a figure follows from, tried on traces made by hand. */
class RedoTest {
  private static final List<TraceLine> BASE =
      List.of(
          line("conductor area of 4 mm²", "given", 4, "mm²"),
          line("supply", "given", 12, "V"),
          line("feed drop of lamp", "given", 0.25, "V"),
          line("ground drop of lamp", "given", 0.125, "V"),
          line("k", "table", 100, ""),
          line("voltage of node rear-block", "given", 11.5, "V"),
          line("voltage of node N1.a", "given", 11, "V"),
          line("resistance of L1", "given", 0.25, "ohm"));

  private static TraceLine line(String what, String formula, double value, String unit) {
    return new TraceLine(what, formula, value, unit, "book");
  }

  private static Optional<String> sum(String formula, double value, String unit) {
    List<TraceLine> trace = new ArrayList<>(BASE);
    trace.add(line("result", formula, value, unit));
    return Redo.of(trace, BASE.size())
        .map(it -> it.text(i -> Digits.text(trace.get(Integer.parseInt(i)).value(), 5)));
  }

  @Test
  void powersAndFactorsBesideEachOther() {
    assertThat(sum("k² S²", 160000, "A²s")).contains("100² × 4²");
    assertThat(sum("k S / sqrt(4)", 200, "A")).contains("100 × 4 / √(4)");
    assertThat(sum("k (S + 1) / (2 S)", 62.5, "")).contains("100 × (4 + 1) / (2 × 4)");
    assertThat(sum("supply - (feed drop + ground drop)", 11.625, "V"))
        .contains("12 − (0.25 + 0.125)");
  }

  @Test
  void namesOfManyWordsAndOddLetters() {
    assertThat(
            sum("(voltage of node rear-block - voltage of node N1.a) / resistance of L1", 2, "A"))
        .contains("(11.5 − 11) / 0.25");
  }

  @Test
  void constantsBehindAComma() {
    assertThat(sum("S * rho, rho = 1.5e-3 ohm mm", 0.006, "ohm"))
        .contains("4 × (1.5\u00A0×\u00A010⁻³)");
  }

  @Test
  void sumsAndProductsOfLinesAbove() {
    assertThat(sum("sum", 0.375, "V")).contains("0.25 + 0.125");
    assertThat(sum("smaller of two", 0.125, "V")).contains("0.125");
  }

  @Test
  void wordsAreLeftAsWords() {
    for (String words : List.of("heat balance", "table", "given", "limit of PVC", "I² r(T) = q")) {
      assertThat(sum(words, 4, "mm²")).as(words).isEmpty();
    }
  }

  @Test
  void aSumThatDoesNotComeOutIsNotShown() {
    assertThat(sum("k² S²", 160001, "A²s")).isEmpty();
    assertThat(sum("supply - unknown thing", 11, "V")).isEmpty();
  }

  @Test
  void figuresAsPrinted() {
    assertThat(Digits.text(0.30000000000000004, 5)).isEqualTo("0.3");
    assertThat(Digits.text(26.97498841519677, 5)).isEqualTo("26.975");
    assertThat(Digits.text(122342.07606145782, 5)).isEqualTo("122342");
    assertThat(Digits.text(-0.0000123456, 5)).isEqualTo("−1.23456\u00A0×\u00A010⁻⁵");
    assertThat(Digits.text(Double.POSITIVE_INFINITY, 5)).isEqualTo("no limit");
  }
}
