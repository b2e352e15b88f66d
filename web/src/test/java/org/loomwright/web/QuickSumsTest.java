package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.web.shop.ShopSource;
import org.loomwright.model.quantity.Display;
import org.loomwright.web.sum.QuickSum;
import org.loomwright.web.sum.SumChart;
import org.loomwright.web.sum.SumResult;

class QuickSumsTest {

  @ParameterizedTest
  @EnumSource(QuickSum.class)
  void theExamplesOfTheFieldsGiveAnAnswer(QuickSum sum) {
    SumResult result = sum.answer(examples(sum), Display.METRIC);
    assertThat(result.errors()).isEmpty();
    assertThat(result.isAnswer()).isTrue();
    assertThat(result.trace()).isNotEmpty();
    for (Display units : Display.values()) {
      SumChart chart = sum.answer(examples(sum), units).chart().orElseThrow();
      assertThat(chart.markup()).contains("role=\"img\"", "<title>", "for-wide", "for-narrow");
      assertThat(chart.caption()).endsWith(".");
    }
  }

  @ParameterizedTest
  @EnumSource(QuickSum.class)
  void eachFieldThatCantBeReadSaysSo(QuickSum sum) {
    for (QuickSum.Field field : sum.fields()) {
      Map<String, String> typed = examples(sum);
      typed.put(field.key(), "rubbish");
      SumResult result = sum.answer(typed, Display.METRIC);
      assertThat(result.error(field.key())).as(field.key()).contains("rubbish");
      assertThat(result.isAnswer()).isFalse();
      if (!field.optional()) {
        typed.put(field.key(), " ");
        assertThat(sum.answer(typed, Display.METRIC).error(field.key())).contains("needed");
      }
    }
  }

  @Test
  void nothingTypedIsNoMistake() {
    assertThat(QuickSum.DROP.answer(Map.of(), Display.METRIC).errors()).isEmpty();
    assertThat(QuickSum.DROP.answer(Map.of(), Display.METRIC).isAnswer()).isFalse();
  }

  /**
   * R = rho l / A of copper, 0.017241 ohm mm2/m at 20 °C (IEC 60028), within the tolerance of
   * sizes.
   */
  @Test
  void resistanceOfCopperIsAsPublished() {
    SumResult result =
        QuickSum.RESISTANCE.answer(
            Map.of("wire", "2.5 mm²", "length", "10 m", "temperature", "20 °C"), Display.METRIC);
    double shown = Double.parseDouble(result.figures().get(0).shown().replace(" mΩ", ""));
    assertThat(shown).isBetween(0.017241 * 10 / 2.5 * 1000, 1.13 * 0.017241 * 10 / 2.5 * 1000);
  }

  @Test
  void whatWasTypedStaysInTheFormAndTheErrorBesideIt() throws PortTakenException {
    try (Pages pages = Pages.open(ShopSource.folder(Path.of("..", "demo")), 0)) {
      Browser browser = new Browser(pages);
      String page = browser.get("/sums/drop?wire=2.5+mm%C2%B2&length=7+volts&current=9+A").body();
      assertThat(page)
          .contains("value=\"2.5 mm²\"")
          .contains("value=\"7 volts\"")
          .contains("aria-invalid=\"true\"")
          .contains("can't be read as a length");
      String good =
          browser
              .get(
                  "/sums/drop?wire=14+AWG&length=4+m&return-length=&current=9+A&supply=12+V&temperature=60+%C2%B0C")
              .body();
      assertThat(good).contains("<dt>drop</dt>").contains("How it was reached");
    }
  }

  /** Outside what a chart can show the answer stands alone and the reason beside it. */
  @Test
  void withoutAChartThereIsTheReason() {
    Map<String, String> typed = examples(QuickSum.GAUGE);
    typed.put("current", "0 A");
    SumResult result = QuickSum.GAUGE.answer(typed, Display.METRIC);
    assertThat(result.isAnswer()).isTrue();
    assertThat(result.chart().orElseThrow().caption()).startsWith("There is no chart: ");
  }

  /** Two bars of 1 m hold 3 of 600 mm no more than one each; the saw takes what it takes. */
  @Test
  void cutsAreCounted() {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("stock", "1 m");
    typed.put("pieces", "600 mm x 3, 200x2");
    SumResult result = QuickSum.CUT.answer(typed, Display.METRIC);
    assertThat(result.errors()).isEmpty();
    assertThat(result.figures().get(0).shown()).isEqualTo("3");
    assertThat(result.figures().get(2).shown()).isEqualTo("26.67 %");
    typed.put("pieces", "1 ft x 3");
    assertThat(QuickSum.CUT.answer(typed, Display.US).figures().get(0).shown()).isEqualTo("1");
    typed.put("kerf", "50 mm");
    assertThat(QuickSum.CUT.answer(typed, Display.US).figures().get(0).shown()).isEqualTo("2");
    typed.put("pieces", "2 m x 1");
    assertThat(QuickSum.CUT.answer(typed, Display.METRIC).error("")).contains("longer than the stock");
  }

  private static Map<String, String> examples(QuickSum sum) {
    Map<String, String> typed = new LinkedHashMap<>();
    sum.fields().forEach(it -> typed.put(it.key(), it.example()));
    return typed;
  }
}
