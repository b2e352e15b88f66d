package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.web.shop.ShopSource;
import org.loomwright.web.sum.QuickSum;
import org.loomwright.web.sum.SumResult;

class QuickSumsTest {

  @ParameterizedTest
  @EnumSource(QuickSum.class)
  void theExamplesOfTheFieldsGiveAnAnswer(QuickSum sum) {
    SumResult result = sum.answer(examples(sum));
    assertThat(result.errors()).isEmpty();
    assertThat(result.isAnswer()).isTrue();
    assertThat(result.trace()).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource(QuickSum.class)
  void eachFieldThatCantBeReadSaysSo(QuickSum sum) {
    for (QuickSum.Field field : sum.fields()) {
      Map<String, String> typed = examples(sum);
      typed.put(field.key(), "rubbish");
      SumResult result = sum.answer(typed);
      assertThat(result.error(field.key())).as(field.key()).contains("rubbish");
      assertThat(result.isAnswer()).isFalse();
      if (!field.optional()) {
        typed.put(field.key(), " ");
        assertThat(sum.answer(typed).error(field.key())).contains("needed");
      }
    }
  }

  @Test
  void nothingTypedIsNoMistake() {
    assertThat(QuickSum.DROP.answer(Map.of()).errors()).isEmpty();
    assertThat(QuickSum.DROP.answer(Map.of()).isAnswer()).isFalse();
  }

  /**
   * R = rho l / A of copper, 0.017241 ohm mm2/m at 20 °C (IEC 60028), within the tolerance of
   * sizes.
   */
  @Test
  void resistanceOfCopperIsAsPublished() {
    SumResult result =
        QuickSum.RESISTANCE.answer(
            Map.of("wire", "2.5 mm²", "length", "10 m", "temperature", "20 °C"));
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

  private static Map<String, String> examples(QuickSum sum) {
    Map<String, String> typed = new LinkedHashMap<>();
    sum.fields().forEach(it -> typed.put(it.key(), it.example()));
    return typed;
  }
}
