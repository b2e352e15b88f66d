package org.loomwright.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of texts that are read and texts that are refused; \\u escapes are written out. */
class QuantityTextTest {

  private static final Map<String, ToDoubleFunction<String>> READERS =
      Map.of(
          "length", t -> Length.of(t).mm(),
          "wire", t -> WireSize.of(t).areaMm2(),
          "current", t -> Current.of(t).amperes(),
          "voltage", t -> Voltage.of(t).volts(),
          "temperature", t -> Temperature.of(t).celsius(),
          "time", t -> TimeSpan.of(t).seconds(),
          "resistance", t -> Resistance.of(t).ohms(),
          "percent", t -> Percent.of(t).fraction(),
          "money", t -> Money.of(t).amount().doubleValue());

  @ParameterizedTest
  @CsvFileSource(resources = "accepted.txt", delimiter = '|', quoteCharacter = '`')
  void readsExactly(String kind, String written, double value) {
    String text = unescaped(written);
    // Exact: the value is rounded once, so no tolerance is needed.
    assertThat(reader(kind).applyAsDouble(text)).isEqualTo(value);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "refused.txt", delimiter = '|', quoteCharacter = '`')
  void refuses(String kind, String written, int position, String problem, String expected) {
    String text = unescaped(written);
    QuantityException e =
        catchThrowableOfType(QuantityException.class, () -> reader(kind).applyAsDouble(text));
    assertThat(e).as("refusal of \"%s\"", text).isNotNull();
    assertThat(e.problem()).contains(problem);
    assertThat(e.expected()).contains(expected);
    assertThat(e.position()).isEqualTo(position);
    assertThat(e.text()).isEqualTo(text);
    assertThat(e)
        .hasMessageContaining("at character " + (position + 1) + ",")
        .hasMessageContaining(e.problem())
        .hasMessageContaining(e.expected());
  }

  @Test
  void messageReadsAsOneSentence() {
    assertThatThrownBy(() -> Length.of("1,5 m"))
        .hasMessage(
            "\"1,5 m\" can't be read as a length: at character 2, a comma is not read, as its meaning"
                + " differs by country; use a point; expected \"1.5 m\"");
    assertThatThrownBy(() -> Current.of("22 V"))
        .hasMessage(
            "\"22 V\" can't be read as a current: at character 4, V is a unit of voltage, not of"
                + " current; expected A, mA or kA, such as \"22 A\"");
  }

  @Test
  void longTextsAreRefusedAndCutInTheMessage() {
    String text = "1".repeat(399) + " mm";
    QuantityException e = catchThrowableOfType(QuantityException.class, () -> Length.of(text));
    assertThat(e.position()).isEqualTo(400);
    assertThat(e.text()).isEqualTo(text);
    assertThat(e.getMessage()).hasSizeLessThan(250);
  }

  @ParameterizedTest
  @CsvSource({"NaN", "Infinity", "-Infinity", "-1", "1e16", "1e300"})
  void valuesThatAreNoneAreRefusedWhenWritten(double value) {
    for (Function<Double, Object> writer :
        List.<Function<Double, Object>>of(
            Length::ofMm,
            WireSize::ofMm2,
            Current::ofAmperes,
            TimeSpan::ofSeconds,
            Resistance::ofOhms,
            Percent::ofFraction)) {
      assertThatThrownBy(() -> writer.apply(value)).isInstanceOf(QuantityException.class);
    }
  }

  @Test
  void writesPlainly() {
    assertThat(Length.ofMm(820)).hasToString("820 mm");
    assertThat(Length.ofMm(1e7)).hasToString("10000000 mm");
    assertThat(Length.ofMm(-0.0)).hasToString("0 mm");
    assertThat(WireSize.ofMm2(2.5)).hasToString("2.5 mm²");
    assertThat(Current.ofAmperes(0.35)).hasToString("0.35 A");
    assertThat(Voltage.ofVolts(-0.5)).hasToString("-0.5 V");
    assertThat(Temperature.ofCelsius(-40)).hasToString("-40 °C");
    assertThat(TimeSpan.ofSeconds(1e-3)).hasToString("0.001 s");
    assertThat(Resistance.ofOhms(1.5e-5)).hasToString("0.000015 Ω");
    assertThat(Percent.ofFraction(0.07)).hasToString("7 %");
    assertThat(Money.of(new BigDecimal("0.40"), "EUR")).hasToString("0.40 EUR");
  }

  @Test
  void theLocaleOfTheMachineChangesNothing() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(Length.ofMm(1234.5)).hasToString("1234.5 mm");
      assertThat(Length.of("1 in").mm()).isEqualTo(25.4);
      assertThatThrownBy(() -> Length.of("12 V")).hasMessageContaining("character 4");
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertThat(Length.of("1 in").mm()).isEqualTo(25.4);
      assertThatThrownBy(() -> Length.of("1 IN")).hasMessageContaining("\"in\"");
    } finally {
      Locale.setDefault(before);
    }
  }

  private static ToDoubleFunction<String> reader(String kind) {
    return Objects.requireNonNull(READERS.get(kind), kind);
  }

  /** Characters that can't be told apart on a page are written as escapes in the tables. */
  private static String unescaped(String written) {
    return Pattern.compile("\\\\u([0-9a-f]{4})")
        .matcher(written)
        .replaceAll(
            m -> Matcher.quoteReplacement(Character.toString(Integer.parseInt(m.group(1), 16))));
  }
}
