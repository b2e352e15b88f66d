package org.loomwright.web.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.quantity.Display;

class UnitWordsTest {
  private final UnitWords inch = new UnitWords(Display.US, List.of());
  private final UnitWords metric = new UnitWords(Display.METRIC, List.of());

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "at least 40 mm from any splice | at least 1.57 in from any splice",
        "cut 2.5 m of it | cut 98.43 in of it",
        "20 to 30 mm wide | 0.79 to 1.18 in wide",
        "a hole of 3–5 mm | a hole of 0.118–0.197 in",
        "2 × 40 mm | 0.079 × 1.57 in",
        "wire 2.5 mm² | wire 2.5 mm² (nearest 13 AWG)",
        "wire 2.08 mm² | wire 14 AWG",
        "0.5 to 1 mm² | 0.5 to 1 mm² (nearest 20 to 17 AWG)",
        "(820 mm) | (32.28 in)",
        "820 mm, 30 mm; 4 mm. | 32.28 in, 1.18 in; 0.157 in."
      })
  void metricBecomesInches(String words, String shown) {
    assertThat(inch.of(words).replace('\u00A0', ' ')).isEqualTo(shown);
    assertThat(metric.of(words)).isEqualTo(words);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "7.6 mΩ/m",
        "120 A/mm²",
        "3 mm/s",
        "2 m²",
        "M6 bolt",
        "A1.5 mm",
        "1.2 EUR/m",
        "5 min",
        "2.5 mm² (nearest 13 AWG)",
        "2.08 mm² (14 AWG)",
        "step 2 in the guide",
        "12 A for 3 s",
        "10^6 mm"
      })
  void otherWordsStay(String words) {
    assertThat(inch.of(words)).isEqualTo(words);
    assertThat(metric.of(words)).isEqualTo(words);
  }

  @Test
  void gaugesBecomeAreas() {
    assertThat(metric.of("feed of 14 AWG, ground of 2/0 AWG"))
        .isEqualTo("feed of 2.08 mm² (14 AWG), ground of 67.43 mm² (2/0 AWG)");
    assertThat(inch.of("feed of 14 AWG")).isEqualTo("feed of 14 AWG");
  }

  @Test
  void tradeNamesStayAsTheyAre() {
    UnitWords named = new UnitWords(Display.US, Set.of("Thin wire 2.5 mm² red", "4 mm"));
    assertThat(named.of("Thin wire 2.5\u00A0mm² red, 2.5 mm², 4 mm"))
        .isEqualTo("Thin wire 2.5\u00A0mm² red, 2.5 mm² (nearest 13 AWG), 0.157\u00A0in");
  }

  /** No figure in inches is further from the truth than half its last digit. */
  @Property(tries = 1000)
  void isRightToHalfTheLastDigit(@ForAll @IntRange(max = 9_999_999) int hundredths) {
    String mm = BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString();
    String shown = inch.of("about " + mm + " mm here");
    assertThat(shown).startsWith("about ").endsWith("\u00A0in here");
    BigDecimal inches = new BigDecimal(shown.substring(6, shown.indexOf('\u00A0')));
    double lengthMm = Double.parseDouble(mm);
    assertThat(inches.doubleValue())
        .isCloseTo(lengthMm / 25.4, within((lengthMm < 10 ? 0.0005 : 0.005) + 1e-9));
  }

  /** What is shown in inches is never worked out again, nor is it in millimetres. */
  @Property(tries = 500)
  void whatIsShownStays(@ForAll @IntRange(min = 1, max = 99_999) int hundredths) {
    String words = BigDecimal.valueOf(hundredths, 2) + " mm and " + hundredths / 100.0 + " mm²";
    String shown = inch.of(words);
    assertThat(inch.of(shown)).isEqualTo(shown);
    assertThat(metric.of(metric.of(words))).isEqualTo(words);
  }

  @Test
  void onlyTextBetweenTagsIsWorkedOut() {
    PageUnits page = new PageUnits(inch);
    assertThat(page.of("<p title=\"40 mm > 4\">40 mm</p><input value=\"40 mm\">40 mm"))
        .isEqualTo("<p title=\"40 mm > 4\">1.57\u00A0in</p><input value=\"40 mm\">1.57\u00A0in");
    for (String kept :
        List.of(
            "<textarea>40 mm</textarea>",
            "<select><option>40 mm</option></select>",
            "<td class=\"evidence\">told: <b>40 mm</b></td>",
            "<div class=\"x as-written\"><div>40 mm</div>40 mm</div>",
            "<p class=\"error\" id=\"e\">40 mm</p>",
            "<svg><text>40 mm</text></svg>",
            "<!-- 40 mm -->")) {
      assertThat(page.of(kept + "<i>40 mm</i>")).isEqualTo(kept + "<i>1.57\u00A0in</i>");
    }
  }
}
