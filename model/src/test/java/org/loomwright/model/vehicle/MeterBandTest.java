package org.loomwright.model.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeterBandTest {
  @ParameterizedTest
  @CsvSource({
    "11.5 V or more, 11.5 V or more",
    "1 V or less, 1 V or less",
    "4.5 V to 5.5 V, 4.5 V to 5.5 V",
    "0 mV to 200 mV, 0 mV to 200 mV",
    "'  100 kΩ   or more ', 100 kΩ or more",
    "100 kohm or more, 100 kΩ or more",
    "1 ohm or less, 1 Ω or less",
    "1 \u2126 or less, 1 Ω or less",
    "20 mA or less, 20 mA or less",
    "2 A to 2 A, 2 A to 2 A"
  })
  void isReadAndWritten(String text, String written) {
    assertThat(MeterBand.of(text).text()).isEqualTo(written);
    assertThat(MeterBand.of(written)).isEqualTo(MeterBand.of(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "11.5 V",
        "11,5 V or more",
        "more than 11.5 V",
        "11.5 or more",
        "11.5V or more",
        "-1 V or more",
        "1e3 V or more",
        "11.5 V or more or less",
        "NaN V or more",
        ".5 V or less",
        "5 V - 6 V"
      })
  void whatIsNoBandIsToldWhatWouldBe(String text) {
    assertThatThrownBy(() -> MeterBand.of(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("'" + text + "' is no band of a meter; write \"11.5 V or more\"")
        .hasMessageContaining("V, mV, A, mA, Ω, kΩ, MΩ as units");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "5 W or more | 'W' is no unit of a meter here; the units are V, mV, A, mA, Ω, kΩ, MΩ",
        "5 v or more | 'v' is no unit of a meter here",
        "5 V to 6 mV | has two units; write both limits in one of them",
        "6 V to 5 V | goes down from 6 to 5; write the smaller number first"
      })
  void wrongUnitsAndLimitsAreNamed(String text, String message) {
    assertThatThrownBy(() -> MeterBand.of(text)).hasMessageContaining(message);
  }

  @ParameterizedTest
  @CsvSource({
    "1 V or less, 11.5 V or more, false",
    "1 V or less, 1 V or more, true",
    "1 V or less, 1000 mV to 2000 mV, true",
    "1 V or less, 1001 mV to 2000 mV, false",
    "1 Ω or less, 100 kΩ or more, false",
    "1000 Ω or more, 1 kΩ or less, true",
    "1 V or more, 1 V or more, true",
    "1 V or more, 5 A or more, false"
  })
  void meetsWhereANumberLiesInBoth(String one, String other, boolean meets) {
    assertThat(MeterBand.of(one).meets(MeterBand.of(other))).isEqualTo(meets);
    assertThat(MeterBand.of(other).meets(MeterBand.of(one))).isEqualTo(meets);
  }

  /** Two bands meet exactly if some whole number of millivolts lies in both. */
  @Property(tries = 500)
  void meetsAsEveryNumberTriedSays(
      @ForAll @IntRange(min = 0, max = 30) int low,
      @ForAll @IntRange(min = 0, max = 30) int width,
      @ForAll @IntRange(min = 0, max = 30) int other,
      @ForAll @IntRange(min = 0, max = 2) int form) {
    MeterBand closed = MeterBand.of(low + " mV to " + (low + width) + " mV");
    Optional<BigDecimal> limit = Optional.of(new BigDecimal(other).movePointLeft(3));
    MeterBand open =
        new MeterBand(
            form == 1 ? Optional.empty() : limit,
            form == 0 ? Optional.empty() : limit,
            MeterBand.Unit.V);
    boolean some = false;
    for (int mv = low; mv <= low + width; mv++) {
      some |= (form == 1 || mv >= other) && (form == 0 || mv <= other);
    }
    assertThat(closed.meets(open)).isEqualTo(some);
    assertThat(MeterBand.of(open.text())).isEqualTo(open);
  }
}
