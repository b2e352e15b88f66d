package org.loomwright.model.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;

/** Values against bands and against values taken before; the oracle counts in whole thousandths. */
class ValueStandingTest {
  private static final Optional<Double> NONE = Optional.empty();

  private static Reading number(String unit, Optional<Double> low, Optional<Double> high) {
    return reading(
        ReadingKind.NUMBER, Optional.of(unit), Optional.of(new Band(low, high, unit)), NONE);
  }

  private static Reading rise(double most) {
    return reading(ReadingKind.NUMBER, Optional.of("mA"), Optional.empty(), Optional.of(most));
  }

  private static Reading reading(
      ReadingKind kind, Optional<String> unit, Optional<Band> band, Optional<Double> mostRise) {
    return new Reading(
        "it",
        "it",
        kind,
        unit,
        band,
        mostRise.map(it -> "before"),
        mostRise,
        Condition.always(),
        "",
        "",
        "");
  }

  private static ValueStanding of(Reading reading, String value) {
    return ValueStanding.of(reading, value, Optional.empty());
  }

  @Property
  void aVoltageIsJudgedAlikeInEveryUnit(
      @ForAll @IntRange(min = 0, max = 20_000) int milli,
      @ForAll @IntRange(min = 1, max = 20_000) int low,
      @ForAll @IntRange(min = 0, max = 20_000) int wide) {
    Reading band = number("V", Optional.of(low / 1000.0), Optional.of((low + wide) / 1000.0));
    ValueStanding right =
        milli >= low && milli <= low + wide ? ValueStanding.HOLDS : ValueStanding.OUTSIDE;
    String volts = BigDecimal.valueOf(milli, 3).toPlainString();
    assertThat(of(band, milli + " mV")).isEqualTo(right);
    assertThat(of(band, volts + " V")).isEqualTo(right);
    assertThat(of(band, volts)).isEqualTo(right);
  }

  @Property
  void aRiseIsJudgedAgainstTheValueBefore(
      @ForAll @IntRange(min = 0, max = 9_000) int before,
      @ForAll @IntRange(min = 0, max = 9_000) int now) {
    ValueStanding right = now - before <= 50 ? ValueStanding.HOLDS : ValueStanding.OUTSIDE;
    String amperes = BigDecimal.valueOf(now, 3).toPlainString() + " A";
    for (String value : new String[] {now + " mA", amperes, "" + now}) {
      assertThat(ValueStanding.of(rise(50), value, Optional.of(before + " mA"))).isEqualTo(right);
    }
  }

  @Test
  void aRiseWithoutAValueBeforeIsNotJudged() {
    assertThat(of(rise(50), "14 mA")).isEqualTo(ValueStanding.NO_BEFORE);
    assertThat(ValueStanding.of(rise(50), "14 mA", Optional.of("little")))
        .isEqualTo(ValueStanding.NO_BEFORE);
  }

  @Test
  void swappedLeadsOfTheMeterAreNoSmallDrop() {
    assertThat(of(number("V", NONE, Optional.of(0.18)), "-3 V")).isEqualTo(ValueStanding.OUTSIDE);
    assertThat(of(number("V", Optional.of(-1.0), Optional.of(0.18)), "-0.5 V"))
        .isEqualTo(ValueStanding.HOLDS);
  }

  @Test
  void whatIsNoNumberOfTheUnitLiesOutside() {
    Reading drop = number("V", NONE, Optional.of(0.18));
    for (String value : new String[] {"0.1 A", "0.1 Ω", "none", "0,1", "0.1 V or so", "1e-3 V"}) {
      assertThat(of(drop, value)).as(value).isEqualTo(ValueStanding.OUTSIDE);
    }
    assertThat(of(drop, " ")).isEqualTo(ValueStanding.OPEN);
  }

  @Test
  void resistanceIsReadInOhmsKiloohmsAndMegohms() {
    Reading open = number("kΩ", Optional.of(100.0), NONE);
    assertThat(of(open, "40 MΩ")).isEqualTo(ValueStanding.HOLDS);
    assertThat(of(open, "0.04 MΩ")).isEqualTo(ValueStanding.OUTSIDE);
    assertThat(of(open, "100000 Ω")).isEqualTo(ValueStanding.HOLDS);
    assertThat(of(open, "99999 Ω")).isEqualTo(ValueStanding.OUTSIDE);
  }

  @Test
  void wordsAndYesOrNo() {
    Reading words = reading(ReadingKind.WORDS, Optional.empty(), Optional.empty(), NONE);
    Reading works = reading(ReadingKind.WORKS, Optional.empty(), Optional.empty(), NONE);
    assertThat(of(words, "P0123")).isEqualTo(ValueStanding.TAKEN);
    assertThat(of(works, "yes")).isEqualTo(ValueStanding.HOLDS);
    assertThat(of(works, "no")).isEqualTo(ValueStanding.OUTSIDE);
    assertThat(of(works, "perhaps")).isEqualTo(ValueStanding.OUTSIDE);
  }
}
