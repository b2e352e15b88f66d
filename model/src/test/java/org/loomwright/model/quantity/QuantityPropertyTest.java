package org.loomwright.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class QuantityPropertyTest {

  private static final List<Function<String, Quantity<?>>> READERS =
      List.of(
          t -> Length.of(t).quantity(),
          t -> WireSize.of(t).quantity(),
          t -> Current.of(t).quantity(),
          t -> Voltage.of(t).quantity(),
          t -> Temperature.of(t).quantity(),
          t -> TimeSpan.of(t).quantity(),
          t -> Resistance.of(t).quantity(),
          t -> Percent.of(t).quantity());

  @Property(tries = 3000)
  void aValueWrittenIsReadBackExactly(@ForAll("values") double value) {
    exact(value, v -> Length.ofMm(v).text(), t -> Length.of(t).mm());
    exact(value, v -> WireSize.ofMm2(v).text(), t -> WireSize.of(t).areaMm2());
    exact(value, v -> Current.ofAmperes(v).text(), t -> Current.of(t).amperes());
    exact(value, v -> Voltage.ofVolts(v).text(), t -> Voltage.of(t).volts());
    exact(-value, v -> Voltage.ofVolts(v).text(), t -> Voltage.of(t).volts());
    exact(value, v -> Temperature.ofCelsius(v).text(), t -> Temperature.of(t).celsius());
    exact(value, v -> TimeSpan.ofSeconds(v).text(), t -> TimeSpan.of(t).seconds());
    exact(value, v -> Resistance.ofOhms(v).text(), t -> Resistance.of(t).ohms());
    exact(value, v -> Percent.ofFraction(v).text(), t -> Percent.of(t).fraction());
  }

  private static void exact(
      double value, DoubleFunction<String> write, ToDoubleFunction<String> read) {
    String text = write.apply(value);
    assertThat(text).doesNotContainIgnoringCase("e");
    assertThat(read.applyAsDouble(text)).as(text).isEqualTo(value);
  }

  @Property(tries = 2000)
  void moneyKeepsEveryDigit(@ForAll("amounts") BigDecimal amount) {
    Money money = Money.of(amount, "EUR");
    assertThat(Money.of(money.text()).amount()).isEqualTo(amount);
  }

  @Property(tries = 20_000)
  void garbageIsRefusedInOneWayOnly(@ForAll("garbage") String text) {
    int read = 0;
    for (Function<String, Quantity<?>> reader : READERS) {
      try {
        assertThat(reader.apply(text).getValue().doubleValue()).isFinite();
        read++;
      } catch (QuantityException e) {
        assertThat(e.position()).isBetween(0, text.length());
        assertThat(e.text()).isEqualTo(text);
        assertThat(e.getMessage()).doesNotContain("\n").doesNotContain("\0");
      }
    }
    try {
      assertThat(Money.of(text).amount()).isNotNegative();
      read++;
    } catch (QuantityException e) {
      assertThat(e.position()).isBetween(0, text.length());
    }
    // No text means two things.
    assertThat(read).as("readings of \"%s\"", text).isLessThanOrEqualTo(1);
    Statistics.label("read")
        .collect(read)
        .coverage(
            c -> {
              c.check(1).percentage(p -> p > 3);
              c.check(0).percentage(p -> p > 3);
            });
  }

  @Property(tries = 1000)
  void agreesWithTheConversionOfTheUnitsLibrary(
      @ForAll @IntRange(max = 10_000_000) int thousandths) {
    BigDecimal number = BigDecimal.valueOf(thousandths, 3);
    String n = number.toPlainString() + " ";
    Unit<javax.measure.quantity.Length> mm = MetricPrefix.MILLI(Units.METRE);
    Unit<javax.measure.quantity.Length> inch = MetricPrefix.CENTI(Units.METRE).multiply(2.54);
    Map.of(
            "µm", MetricPrefix.MICRO(Units.METRE),
            "mm", mm,
            "cm", MetricPrefix.CENTI(Units.METRE),
            "m", Units.METRE,
            "km", MetricPrefix.KILO(Units.METRE),
            "in", inch,
            "ft", inch.multiply(12),
            "yd", inch.multiply(36))
        .forEach((u, unit) -> same(Length.of(n + u).mm(), number, unit, mm));
    Map.of(
            "mA", MetricPrefix.MILLI(Units.AMPERE),
            "A", Units.AMPERE,
            "kA", MetricPrefix.KILO(Units.AMPERE))
        .forEach((u, unit) -> same(Current.of(n + u).amperes(), number, unit, Units.AMPERE));
    Map.of(
            "mV", MetricPrefix.MILLI(Units.VOLT),
            "V", Units.VOLT,
            "kV", MetricPrefix.KILO(Units.VOLT))
        .forEach((u, unit) -> same(Voltage.of(n + u).volts(), number, unit, Units.VOLT));
    Map.of(
            "ms", MetricPrefix.MILLI(Units.SECOND),
            "s", Units.SECOND,
            "min", Units.MINUTE,
            "h", Units.HOUR)
        .forEach((u, unit) -> same(TimeSpan.of(n + u).seconds(), number, unit, Units.SECOND));
    Map.of(
            "µΩ", MetricPrefix.MICRO(Units.OHM),
            "mΩ", MetricPrefix.MILLI(Units.OHM),
            "Ω", Units.OHM,
            "kΩ", MetricPrefix.KILO(Units.OHM),
            "MΩ", MetricPrefix.MEGA(Units.OHM))
        .forEach((u, unit) -> same(Resistance.of(n + u).ohms(), number, unit, Units.OHM));
    Map.of(
            "°C", Units.CELSIUS,
            "K", Units.KELVIN,
            "°F", Units.KELVIN.multiply(5).divide(9).shift(459.67))
        .forEach((u, unit) -> same(Temperature.of(n + u).celsius(), number, unit, Units.CELSIUS));
    same(Percent.of(n + "%").fraction(), number, Units.PERCENT, AbstractUnit.ONE);
  }

  private static <Q extends Quantity<Q>> void same(
      double ours, BigDecimal number, Unit<Q> from, Unit<Q> to) {
    double theirs = Quantities.getQuantity(number, from).to(to).getValue().doubleValue();
    assertThat(ours).as("%s %s", number, from).isCloseTo(theirs, within(1e-9 + 1e-12 * theirs));
  }

  @Property(tries = 1000)
  void fractionsOfAnInchAreExact(
      @ForAll @IntRange(max = 500) int whole, @ForAll @IntRange(max = 63) int parts) {
    double mm = (whole + parts / 64.0) * 127 / 5;
    assertThat(Length.of(whole + " " + parts + "/64 in").mm()).isCloseTo(mm, within(1e-12 * mm));
    int feet = whole / 12;
    String feetAndInches = feet + " ft " + (whole % 12) + " " + parts + "/64 in";
    assertThat(Length.of(feetAndInches).mm())
        .isEqualTo(Length.of(whole + " " + parts + "/64 in").mm());
  }

  @Provide
  Arbitrary<Double> values() {
    // WireSize takes no zero, and the range ends at 1e15.
    return Arbitraries.oneOf(
        // Neighbouring doubles have neighbouring bits, so this takes every magnitude alike.
        Arbitraries.longs().between(1, Double.doubleToLongBits(1e15)).map(Double::longBitsToDouble),
        Arbitraries.integers().between(1, 100_000).map(i -> i / 1000.0),
        Arbitraries.of(Double.MIN_VALUE, Double.MIN_NORMAL, 1e15, 0.1, 1 / 3.0));
  }

  @Provide
  Arbitrary<BigDecimal> amounts() {
    return Arbitraries.bigDecimals()
        .between(BigDecimal.ZERO, new BigDecimal("1000000000"))
        .ofScale(4)
        .map(b -> b.setScale(4));
  }

  @Provide
  Arbitrary<String> garbage() {
    Arbitrary<String> pieces =
        Arbitraries.of(
                "1",
                "22",
                "0.5",
                "1/2",
                "-",
                "\u2212",
                "+",
                " ",
                "\u00a0",
                ",",
                ".",
                "/",
                "e3",
                "mm",
                "mm²",
                "in",
                "ft",
                "m",
                "A",
                "mA",
                "V",
                "°C",
                "°F",
                "F",
                "K",
                "s",
                "min",
                "h",
                "Ω",
                "%",
                "EUR",
                "AWG",
                "NaN",
                "Infinity",
                "½",
                "'",
                "\"",
                "µ",
                "\u03bcm",
                "\n",
                "\0",
                "x")
            .list()
            .ofMinSize(1)
            .ofMaxSize(6)
            .map(l -> String.join("", l));
    Arbitrary<String> longDigits =
        Arbitraries.strings().numeric().ofMinLength(1).ofMaxLength(420).map(s -> s + " mm");
    return Arbitraries.oneOf(pieces, pieces, longDigits, Arbitraries.strings().ofMaxLength(20));
  }
}
