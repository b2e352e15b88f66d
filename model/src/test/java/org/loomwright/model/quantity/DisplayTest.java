package org.loomwright.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayTest {

  @ParameterizedTest
  @CsvSource({
    "820 mm, 820 mm, 32 9/32 in",
    "1.2 m, 1.2 m, 47 1/4 in",
    "32 1/2 in, 825.5 mm, 32 1/2 in",
    "3 ft 6 in, 1066.8 mm, 3 ft 6 in",
    "7 ft, 2133.6 mm, 7 ft",
    "1.35 mm, 1.35 mm, 0.053 in",
    "0.053 in, 1.35 mm, 0.053 in",
    "12.7 mm, 12.7 mm, 1/2 in",
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

  @Property(tries = 500)
  void whatIsShownCanBeReadAndIsShownTheSameAgain(
      @ForAll @IntRange(max = 9_999_999) int thousandths) {
    for (Display display : Display.values()) {
      String shown = display.lengthMm(thousandths / 1000.0);
      assertThat(display.show(Length.of(shown))).isEqualTo(shown);
    }
  }
}
