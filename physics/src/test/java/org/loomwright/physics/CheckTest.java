package org.loomwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CheckTest {
  @ParameterizedTest
  @CsvSource({
    "8.9, HOLDS, 0.11",
    "9.0, HOLDS, 0.10",
    "9.01, MARGINAL, 0.099",
    "10, MARGINAL, 0",
    "10.001, FAILS, -0.0001",
    "20, FAILS, -1"
  })
  void valueBelowALimit(double value, Verdict verdict, double margin) {
    Check check = Check.atMost("n", value, 10, "A", "r", "s");
    assertThat(check.verdict()).isEqualTo(verdict);
    assertThat(check.margin()).isCloseTo(margin, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"11.1, HOLDS", "11, HOLDS", "10.9, MARGINAL", "10, MARGINAL", "9.99, FAILS"})
  void valueAboveALimit(double value, Verdict verdict) {
    assertThat(Check.atLeast("n", value, 10, "A", "r", "s").verdict()).isEqualTo(verdict);
  }

  @Test
  void limitsOfZeroAndInfinity() {
    assertThat(Check.atMost("n", 0, 0, "A", "r", "s").verdict()).isEqualTo(Verdict.MARGINAL);
    assertThat(Check.atMost("n", 1, 0, "A", "r", "s").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(Check.atLeast("n", 1, Double.POSITIVE_INFINITY, "A", "r", "s").verdict())
        .isEqualTo(Verdict.FAILS);
    assertThat(Check.atMost("n", Double.POSITIVE_INFINITY, 1, "A", "r", "s").verdict())
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  void worstOfAList() {
    Check holds = Check.atMost("n", 1, 10, "A", "r", "s");
    Check marginal = Check.atMost("n", 9.5, 10, "A", "r", "s");
    Check fails = Check.atMost("n", 11, 10, "A", "r", "s");
    assertThat(Check.worst(List.of())).isEqualTo(Verdict.HOLDS);
    assertThat(Check.worst(List.of(holds, marginal))).isEqualTo(Verdict.MARGINAL);
    assertThat(Check.worst(List.of(fails, marginal, holds))).isEqualTo(Verdict.FAILS);
  }

  @Test
  void aTraceRefusesWhatIsNotANumber() {
    assertThatThrownBy(() -> Trace.builder().given("x", Double.NaN, "A"))
        .hasMessageContaining("\"x\" is not a number");
  }

  @Test
  void inputsAreRefusedInWords() {
    assertThatThrownBy(() -> Require.positive("current", -2.50, "A"))
        .isInstanceOf(SumException.class)
        .hasMessage("current must be above zero, but is -2.5 A");
    assertThatThrownBy(() -> Require.notNegative("length", Double.NaN, "m"))
        .hasMessage("length must not be below zero, but is not a number m");
    assertThatThrownBy(() -> Require.within("share", 120, 0, 100, "%"))
        .hasMessage("share must be from 0 to 100 %, but is 120 %");
  }
}
