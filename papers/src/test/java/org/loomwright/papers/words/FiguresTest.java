package org.loomwright.papers.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FiguresTest {

  @Test
  void writesEachUnitItsWay() {
    assertThat(Figures.mm(1379.6)).isEqualTo("1380");
    assertThat(Figures.fineMm(4.50)).isEqualTo("4.5");
    assertThat(Figures.amps(12.5)).isEqualTo("12.5");
    assertThat(Figures.amps(15)).isEqualTo("15");
    assertThat(Figures.figure(0.3, "V")).isEqualTo("0.30\u00A0V");
    assertThat(Figures.figure(0.00123456, "Ω")).isEqualTo("0.00123\u00A0Ω");
    assertThat(Figures.figure(1.72e-8, "Ω·m")).isEqualTo("1.72\u00A0×\u00A010^-8\u00A0Ω·m");
    assertThat(Figures.figure(115.2, "")).isEqualTo("115");
    assertThat(Figures.money(new BigDecimal("1234.5"), "EUR")).isEqualTo("1234.50\u00A0EUR");
    assertThat(Figures.count(new BigInteger("1048576"))).isEqualTo("1\u202F048\u202F576");
    assertThat(Figures.builds(BigInteger.ONE)).isEqualTo("1 build");
    assertThat(Figures.share(0.004)).isEqualTo("under 1\u00A0%");
    assertThat(Figures.figure(Double.NaN, "V")).isEqualTo("not known\u00A0V");
  }

  @Test
  void keepsAFailureVisible() {
    assertThat(Figures.figureBeside(0.3604, 0.36, "V")).isEqualTo("0.3604\u00A0V");
    assertThat(Figures.figureBeside(0.36, 0.3604, "V")).isEqualTo("0.3600\u00A0V");
    assertThat(Figures.margin(-0.001)).isEqualTo("under \u22121\u00A0%");
    assertThat(Figures.margin(0.17)).isEqualTo("+17\u00A0%");
    assertThat(Figures.margin(-0.3)).isEqualTo("\u221230\u00A0%");
  }

  @Property
  void differentFiguresNeverLookAlikeBesideALimit(
      @ForAll @DoubleRange(min = 0, max = 500) double figure,
      @ForAll @DoubleRange(min = 0, max = 500) double limit) {
    if (Math.abs(figure - limit) > 1e-5) {
      assertThat(Figures.figureBeside(figure, limit, "V"))
          .isNotEqualTo(Figures.figureBeside(limit, figure, "V"));
    }
  }

  @Test
  void longTimesAreHours() {
    assertThat(Figures.figure(360_000, "s")).isEqualTo("100\u00A0h");
    assertThat(Figures.figureBeside(600, 360_000, "s")).isEqualTo("600\u00A0s");
  }
}
