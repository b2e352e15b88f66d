package org.loomwright.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

class WireSizeTest {

  @ParameterizedTest
  @CsvSource({
    "14 AWG, 14, 14 AWG",
    "14AWG, 14, 14 AWG",
    "14 awg, 14, 14 AWG",
    "AWG 14, 14, 14 AWG",
    "awg14, 14, 14 AWG",
    "' 14  AWG ', 14, 14 AWG",
    "1 AWG, 1, 1 AWG",
    "40 AWG, 40, 40 AWG",
    "0 AWG, 0, 1/0 AWG",
    "1/0 AWG, 0, 1/0 AWG",
    "00 AWG, -1, 2/0 AWG",
    "2/0 AWG, -1, 2/0 AWG",
    "2/0AWG, -1, 2/0 AWG",
    "000 AWG, -2, 3/0 AWG",
    "3/0 AWG, -2, 3/0 AWG",
    "0000 AWG, -3, 4/0 AWG",
    "4/0 AWG, -3, 4/0 AWG"
  })
  void readsGauges(String text, int gauge, String label) {
    WireSize size = WireSize.of(text);
    assertThat(size.isAwg()).isTrue();
    assertThat(size.awg()).hasValue(gauge);
    assertThat(size.label()).isEqualTo(label);
    assertThat(size.text()).isEqualTo(text);
    assertThat(WireSize.ofAwg(gauge).text()).isEqualTo(label);
    assertThat(size.compareTo(WireSize.ofAwg(gauge))).isZero();
  }

  /**
   * Diameters in mil and areas in circular mil (1 cmil is a circle of 1 mil diameter). Rows 4/0 to
   * 6: a published table of solid annealed copper wire, its last digit cut off, so to 0.02 mil.
   * Rows 8 to 30: diameters of ASTM B258 as in NBS Handbook 100 (from memory), to 0.1 mil.
   */
  @ParameterizedTest
  @CsvSource({
    "-3, 459.99, 211592, 0.02",
    "-1, 364.79, 133072, 0.02",
    "0, 324.85, 105531, 0.02",
    "2, 257.62, 66369, 0.02",
    "3, 229.42, 52633, 0.02",
    "5, 181.94, 33101, 0.02",
    "6, 162.02, 26251, 0.02",
    "8, 128.5, 16512, 0.1",
    "12, 80.8, 6529, 0.1",
    "14, 64.1, 4109, 0.1",
    "18, 40.3, 1624, 0.1",
    "20, 32.0, 1024, 0.1",
    "24, 20.1, 404, 0.1",
    "30, 10.0, 100, 0.1"
  })
  void areasAreThoseOfAstmB258(
      int gauge, double diameterMil, double areaCmil, double toleranceMil) {
    double areaMm2 = WireSize.ofAwg(gauge).areaMm2();
    double diameter = Math.sqrt(areaMm2 * 4 / Math.PI) / 0.0254;
    assertThat(diameter).isCloseTo(diameterMil, within(toleranceMil));
    double cmil = areaMm2 / (Math.PI / 4 * 0.0254 * 0.0254);
    assertThat(cmil).isCloseTo(areaCmil, within(2 * diameterMil * toleranceMil + 1));
  }

  @Test
  void theTwoGaugesThatDefineTheScaleAreExact() {
    // ASTM B258: 4/0 is 0.4600 in and 36 is 0.0050 in; between them 39 equal ratios.
    assertThat(diameterMm(-3)).isCloseTo(11.684, within(1e-12));
    assertThat(diameterMm(36)).isCloseTo(0.127, within(1e-15));
  }

  private static double diameterMm(int gauge) {
    return Math.sqrt(WireSize.ofAwg(gauge).areaMm2() * 4 / Math.PI);
  }

  @Test
  void metricSizesHaveNoGauge() {
    WireSize size = WireSize.of("2.5mm2");
    assertThat(size.isAwg()).isFalse();
    assertThat(size.awg()).isEqualTo(OptionalInt.empty());
    assertThat(size.label()).isEqualTo("2.5 mm²");
    assertThat(size).isGreaterThan(WireSize.of("14 AWG")).isLessThan(WireSize.of("12 AWG"));
  }

  @Test
  void gaugesOutsideTheScaleAreRefused() {
    assertThatThrownBy(() -> WireSize.ofAwg(-4)).isInstanceOf(QuantityException.class);
    assertThatThrownBy(() -> WireSize.ofAwg(41)).isInstanceOf(QuantityException.class);
  }

  @Test
  void jsonKeepsTheTextAsWritten() {
    record Lead(WireSize wire, Length length, Current load, Money price, Percent loaded) {}
    JsonMapper mapper = JsonMapper.builder().build();
    String json =
        "{\"wire\":\"2/0AWG\",\"length\":\"32 1/2 in\",\"load\":\"350 mA\",\"price\":\"0.420"
            + " EUR\",\"loaded\":\"60%\"}";
    Lead read = mapper.readValue(json, Lead.class);
    assertThat(read.length().mm()).isEqualTo(825.5);
    assertThat(mapper.writeValueAsString(read)).isEqualTo(json);
    assertThat(mapper.readValue(mapper.writeValueAsString(read), Lead.class)).isEqualTo(read);
    assertThatThrownBy(() -> mapper.readValue("{\"length\":\"820\"}", Lead.class))
        .isInstanceOf(JacksonException.class)
        .hasRootCauseInstanceOf(QuantityException.class);
    // A bare number has no unit.
    assertThatThrownBy(() -> mapper.readValue("{\"length\":820}", Lead.class))
        .isInstanceOf(JacksonException.class);
  }

  @Test
  void textAndValueCantDisagree() {
    assertThatThrownBy(() -> new Length("7 ft", Length.of("7 in").quantity()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("7 ft");
    assertThatThrownBy(() -> new Money("1 EUR", BigDecimal.TEN, "EUR"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(new Length("7 ft", Length.ofMm(2133.6).quantity())).isEqualTo(Length.of("7 ft"));
  }
}
