package org.loomwright.model.vehicle;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Where the number on a meter has to lie, limits included: "11.5 V or more", "1 V or less" or "4.5
 * V to 5.5 V".
 *
 * @param low least value, in the unit; absent without a lower limit
 * @param high greatest value, in the unit; absent without an upper limit
 * @param unit unit the meter is read in
 */
public record MeterBand(Optional<BigDecimal> low, Optional<BigDecimal> high, Unit unit) {
  private static final String NUMBER = "(\\d{1,9}(?:\\.\\d{1,9})?)\\s+(\\S+)";
  private static final Pattern OPEN = Pattern.compile(NUMBER + "\\s+or\\s+(more|less)");
  private static final Pattern CLOSED = Pattern.compile(NUMBER + "\\s+to\\s+" + NUMBER);

  /** What is measured. */
  public enum Sort {
    VOLTAGE,
    CURRENT,
    RESISTANCE;

    /** The sort in words. */
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Units a meter is read in. */
  public enum Unit {
    V("V", Sort.VOLTAGE, "1"),
    MV("mV", Sort.VOLTAGE, "0.001"),
    A("A", Sort.CURRENT, "1"),
    MA("mA", Sort.CURRENT, "0.001"),
    OHM("Ω", Sort.RESISTANCE, "1"),
    KOHM("kΩ", Sort.RESISTANCE, "1000"),
    MOHM("MΩ", Sort.RESISTANCE, "1000000");

    private final String word;
    private final Sort sort;
    private final BigDecimal factor;

    Unit(String word, Sort sort, String factor) {
      this.word = word;
      this.sort = sort;
      this.factor = new BigDecimal(factor);
    }

    /** The unit as written. */
    public String word() {
      return word;
    }

    /** What is measured in it. */
    public Sort sort() {
      return sort;
    }

    /** A value in this unit, in V, A or Ω. */
    public BigDecimal toBase(BigDecimal value) {
      return value.multiply(factor);
    }

    /** A value in V, A or Ω, in this unit. */
    public BigDecimal fromBase(BigDecimal value) {
      // Exact: the factors are powers of ten.
      return value.divide(factor);
    }

    /** The unit that is written so; empty for none of these. */
    public static Optional<Unit> of(String written) {
      // The Ohm sign is the Greek letter to every reader; "ohm" is for keyboards without it.
      String level = written.replace('\u2126', 'Ω').replaceFirst("^([kM]?)ohm$", "$1Ω");
      return Arrays.stream(values()).filter(it -> it.word.equals(level)).findFirst();
    }

    private static String all() {
      return Arrays.stream(values()).map(Unit::word).collect(Collectors.joining(", "));
    }
  }

  public MeterBand {
    if (low.isEmpty() && high.isEmpty()) {
      throw new IllegalArgumentException("a band needs a limit, such as \"11.5 V or more\"");
    }
    if (low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) > 0) {
      throw new IllegalArgumentException(
          "the band goes down from "
              + low.get().toPlainString()
              + " to "
              + high.get().toPlainString()
              + "; write the smaller number first");
    }
  }

  /** Whether some number lies in both, whatever units they are written in. */
  public boolean meets(MeterBand other) {
    return unit.sort() == other.unit.sort() && !above(other) && !other.above(this);
  }

  private boolean above(MeterBand other) {
    return low.isPresent()
        && other.high.isPresent()
        && unit.toBase(low.get()).compareTo(other.unit.toBase(other.high.get())) > 0;
  }

  /** As written in a document. */
  @JsonValue
  public String text() {
    if (low.isPresent() && high.isPresent()) {
      return one(low.get()) + " to " + one(high.get());
    }
    return low.map(it -> one(it) + " or more")
        .orElseGet(() -> one(high.orElseThrow()) + " or less");
  }

  private String one(BigDecimal value) {
    return value.toPlainString() + " " + unit.word();
  }

  /**
   * Reads it.
   *
   * @throws IllegalArgumentException when the text has none of these forms
   */
  @JsonCreator
  public static MeterBand of(String text) {
    String strip = text.strip();
    Matcher open = OPEN.matcher(strip);
    if (open.matches()) {
      Optional<BigDecimal> limit = Optional.of(new BigDecimal(open.group(1)));
      boolean more = open.group(3).equals("more");
      return new MeterBand(
          more ? limit : Optional.empty(), more ? Optional.empty() : limit, unit(open.group(2)));
    }
    Matcher closed = CLOSED.matcher(strip);
    if (closed.matches()) {
      Unit unit = unit(closed.group(2));
      if (unit(closed.group(4)) != unit) {
        throw new IllegalArgumentException(
            "'" + text + "' has two units; write both limits in one of them");
      }
      return new MeterBand(
          Optional.of(new BigDecimal(closed.group(1))),
          Optional.of(new BigDecimal(closed.group(3))),
          unit);
    }
    throw new IllegalArgumentException(
        "'"
            + text
            + "' is no band of a meter; write \"11.5 V or more\", \"1 V or less\" or \"4.5 V to 5.5"
            + " V\", with a point in broken numbers and "
            + Unit.all()
            + " as units");
  }

  private static Unit unit(String written) {
    return Unit.of(written)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'" + written + "' is no unit of a meter here; the units are " + Unit.all()));
  }
}
