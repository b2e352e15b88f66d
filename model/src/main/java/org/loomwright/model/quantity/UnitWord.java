package org.loomwright.model.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One spelling of a unit. A number n in this unit is (n − shift) · factor / divisor in the base
 * unit of its kind, without rounding.
 *
 * <p>Source of the factors: the SI brochure (prefixes, minute, hour, degree Celsius), and for the
 * inch (25.4 mm), foot (12 in), yard (3 ft) and degree Fahrenheit NIST Special Publication 811; all
 * exact by definition.
 */
record UnitWord(
    String symbol,
    UnitKind kind,
    BigDecimal factor,
    BigDecimal shift,
    BigInteger divisor,
    UnitSystem system,
    int chain) {

  /** Where a unit is at home; decides whether a text is shown as written. */
  enum UnitSystem {
    METRIC,
    US,
    BOTH
  }

  /** Feet then inches may be written one after the other. */
  private static final int FEET_INCHES = 1;

  /** Hours, minutes, seconds likewise. */
  private static final int CLOCK = 2;

  /** All spellings, longest first, so that the first match is the longest one. */
  private static final List<UnitWord> ALL =
      List.of(
              metric(UnitKind.LENGTH, "0.001", "µm"),
              metric(UnitKind.LENGTH, "1", "mm"),
              metric(UnitKind.LENGTH, "10", "cm"),
              metric(UnitKind.LENGTH, "1000", "m"),
              metric(UnitKind.LENGTH, "1000000", "km"),
              us("25.4", FEET_INCHES, "in", "inch", "inches", "\"", "″"),
              us("304.8", FEET_INCHES, "ft", "foot", "feet", "'", "′"),
              us("914.4", 0, "yd"),
              metric(UnitKind.WIRE_SIZE, "1", "mm²", "mm2", "mm^2"),
              // Read by AwgReader; here only to be recognised where another kind is wanted.
              both(UnitKind.WIRE_SIZE, "1", 0, "AWG", "awg"),
              both(UnitKind.CURRENT, "0.000001", 0, "µA"),
              both(UnitKind.CURRENT, "0.001", 0, "mA"),
              both(UnitKind.CURRENT, "1", 0, "A"),
              both(UnitKind.CURRENT, "1000", 0, "kA"),
              both(UnitKind.VOLTAGE, "0.000001", 0, "µV"),
              both(UnitKind.VOLTAGE, "0.001", 0, "mV"),
              both(UnitKind.VOLTAGE, "1", 0, "V"),
              both(UnitKind.VOLTAGE, "1000", 0, "kV"),
              degrees("1", "0", 1, UnitSystem.METRIC, "°C", "℃", "degC", "C"),
              degrees("5", "32", 9, UnitSystem.US, "°F", "℉", "degF", "F"),
              degrees("1", "273.15", 1, UnitSystem.METRIC, "K"),
              both(UnitKind.TIME, "0.000001", 0, "µs"),
              both(UnitKind.TIME, "0.001", 0, "ms"),
              both(UnitKind.TIME, "1", CLOCK, "s"),
              both(UnitKind.TIME, "60", CLOCK, "min"),
              both(UnitKind.TIME, "3600", CLOCK, "h"),
              both(UnitKind.RESISTANCE, "0.000001", 0, "µΩ", "µohm"),
              both(UnitKind.RESISTANCE, "0.001", 0, "mΩ", "mohm"),
              both(UnitKind.RESISTANCE, "1", 0, "Ω", "ohm", "ohms", "Ohm"),
              both(UnitKind.RESISTANCE, "1000", 0, "kΩ", "kohm"),
              both(UnitKind.RESISTANCE, "1000000", 0, "MΩ", "Mohm"),
              both(UnitKind.PERCENT, "0.01", 0, "%"),
              both(UnitKind.POWER, "1", 0, "W"),
              both(UnitKind.POWER, "1000", 0, "kW"))
          .stream()
          .flatMap(List::stream)
          .sorted(
              Comparator.comparingInt((UnitWord w) -> -w.symbol().length())
                  .thenComparing(UnitWord::symbol))
          .toList();

  /** The longest unit that starts at a place of a text. */
  static Optional<UnitWord> longestAt(String text, int at) {
    return ALL.stream().filter(w -> text.startsWith(w.symbol, at)).findFirst();
  }

  /** A unit of the kind that is spelt the same but for upper and lower case. */
  static Optional<UnitWord> sameLetters(String token, UnitKind kind) {
    return ALL.stream().filter(w -> w.kind == kind && w.symbol.equalsIgnoreCase(token)).findFirst();
  }

  Exact toBase(Exact number) {
    return number.minus(shift).times(factor).dividedBy(divisor);
  }

  /** Whether the other unit may follow this one, as inches follow feet. */
  boolean mayBeFollowedBy(UnitWord other) {
    return chain != 0 && chain == other.chain && other.factor.compareTo(factor) < 0;
  }

  boolean startsChain() {
    return chain != 0;
  }

  private static List<UnitWord> metric(UnitKind kind, String factor, String... symbols) {
    return words(kind, factor, "0", 1, UnitSystem.METRIC, 0, symbols);
  }

  private static List<UnitWord> us(String factor, int chain, String... symbols) {
    return words(UnitKind.LENGTH, factor, "0", 1, UnitSystem.US, chain, symbols);
  }

  private static List<UnitWord> both(UnitKind kind, String factor, int chain, String... symbols) {
    return words(kind, factor, "0", 1, UnitSystem.BOTH, chain, symbols);
  }

  private static List<UnitWord> degrees(
      String factor, String shift, int divisor, UnitSystem system, String... symbols) {
    return words(UnitKind.TEMPERATURE, factor, shift, divisor, system, 0, symbols);
  }

  private static List<UnitWord> words(
      UnitKind kind,
      String factor,
      String shift,
      int divisor,
      UnitSystem system,
      int chain,
      String... symbols) {
    return List.of(symbols).stream()
        .map(
            s ->
                new UnitWord(
                    s,
                    kind,
                    new BigDecimal(factor),
                    new BigDecimal(shift),
                    BigInteger.valueOf(divisor),
                    system,
                    chain))
        .toList();
  }
}
