package org.loomwright.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayTest {

  @ParameterizedTest
  @CsvSource({
    "820 mm, 820 mm, 32.28 in",
    "1.2 m, 1.2 m, 47.24 in",
    "32 1/2 in, 825.5 mm, 32 1/2 in",
    "3 ft 6 in, 1066.8 mm, 3 ft 6 in",
    "7 ft, 2133.6 mm, 7 ft",
    "1.35 mm, 1.35 mm, 0.053 in",
    "0.053 in, 1.35 mm, 0.053 in",
    "12.7 mm, 12.7 mm, 0.5 in",
    "25.4 mm, 25.4 mm, 1 in",
    "0 mm, 0 mm, 0 in"
  })
  void lengths(String text, String metric, String us) {
    assertThat(Display.METRIC.show(Length.of(text))).isEqualTo(metric);
    assertThat(Display.US.show(Length.of(text))).isEqualTo(us);
  }

  @ParameterizedTest
  @CsvSource({
    "14 AWG, 2.08 mm² (14 AWG), 14 AWG",
    "2/0 AWG, 67.43 mm² (2/0 AWG), 2/0 AWG",
    "22 AWG, 0.326 mm² (22 AWG), 22 AWG",
    "2.5 mm², 2.5 mm², 2.5 mm² (nearest 13 AWG)",
    "2.08 mm², 2.08 mm², 14 AWG",
    "2.1 mm², 2.1 mm², 14 AWG",
    "2.11 mm², 2.11 mm², 2.11 mm² (nearest 14 AWG)",
    "0.35 mm², 0.35 mm², 0.35 mm² (nearest 22 AWG)",
    "500 mm², 500 mm², 500 mm² (nearest 4/0 AWG)"
  })
  void wireSizes(String text, String metric, String us) {
    assertThat(Display.METRIC.show(WireSize.of(text))).isEqualTo(metric);
    assertThat(Display.US.show(WireSize.of(text))).isEqualTo(us);
  }

  @ParameterizedTest
  @CsvSource({
    "60 °C, 60 °C, 140 °F",
    "140 °F, 60 °C, 140 °F",
    "-40 °C, -40 °C, -40 °F",
    "0 °F, -17.8 °C, 0 °F"
  })
  void temperatures(String text, String metric, String us) {
    assertThat(Display.METRIC.show(Temperature.of(text))).isEqualTo(metric);
    assertThat(Display.US.show(Temperature.of(text))).isEqualTo(us);
  }

  @Property(tries = 1000)
  void wholeMillimetresCanBeToldApartInInches(@ForAll @IntRange(max = 20_000) int mm) {
    Length shown = Length.of(Display.US.lengthMm(mm));
    assertThat(Math.round(shown.mm())).isEqualTo(mm);
  }

  @Property(tries = 1000)
  void thirtySecondsOfAnInchCanBeToldApartInMillimetres(
      @ForAll @IntRange(max = 20_000) int thirtySeconds) {
    Length length = Length.of(thirtySeconds + "/32 in");
    Length shown = Length.of(Display.METRIC.show(length));
    assertThat(Math.round(shown.mm() / 25.4 * 32)).isEqualTo(thirtySeconds);
    assertThat(shown.mm()).isCloseTo(length.mm(), within(0.0501));
  }

  /** No figure in inches is further from the truth than half its last digit. */
  @Property(tries = 2000)
  void inchesAreRightToHalfTheirLastDigit(@ForAll @IntRange(max = 99_999_999) int tenThousandths) {
    double lengthMm = tenThousandths / 10_000.0;
    BigDecimal shown = new BigDecimal(Display.US.bareLengthMm(lengthMm));
    double half = lengthMm < 10 ? 0.0005 : 0.005;
    assertThat(shown.scale()).isLessThanOrEqualTo(lengthMm < 10 ? 3 : 2);
    assertThat(shown.doubleValue()).isCloseTo(lengthMm / 25.4, within(half + 1e-9));
  }

  /** A size is shown as a gauge alone only where it is that gauge within 1 %. */
  @Property(tries = 2000)
  void aGaugeAloneIsTheSize(@ForAll @IntRange(min = 1, max = 120_000) int thousandths) {
    double areaMm2 = thousandths / 1000.0;
    String shown = Display.US.areaMm2(areaMm2);
    if (shown.contains("mm²")) {
      assertThat(shown).contains("(nearest ").endsWith(" AWG)");
    } else {
      assertThat(WireSize.of(shown).areaMm2() / areaMm2).isBetween(0.99, 1.0102);
    }
  }

  @Property(tries = 500)
  void whatIsShownCanBeReadAndIsShownTheSameAgain(
      @ForAll @IntRange(max = 9_999_999) int thousandths) {
    for (Display display : Display.values()) {
      String shown = display.lengthMm(thousandths / 1000.0);
      assertThat(display.show(Length.of(shown))).isEqualTo(shown);
    }
  }
}
