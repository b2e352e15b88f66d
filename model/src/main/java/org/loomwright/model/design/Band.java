package org.loomwright.model.design;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * Where a measured number has to lie, limits included.
 *
 * @param low least value, in the unit; absent without a lower limit
 * @param high greatest value, in the unit; absent without an upper limit
 * @param unit unit the number is typed in: "V", "mV", "A", "mA", "Ω", "kΩ" or "MΩ"
 */
public record Band(Optional<Double> low, Optional<Double> high, String unit) {
  public Band {
    if (low.isEmpty() && high.isEmpty()) {
      throw new IllegalArgumentException("a band without limits");
    }
    if (low.isPresent() && high.isPresent() && low.get() > high.get()) {
      throw new IllegalArgumentException("a band from " + low.get() + " down to " + high.get());
    }
  }

  /** The band as people say it, such as "11.5 V or more" or "4.5 V to 5.5 V". */
  public String words() {
    if (low.isPresent() && high.isPresent()) {
      return number(low.get()) + " to " + number(high.get());
    }
    return low.map(it -> number(it) + " or more")
        .orElseGet(() -> number(high.orElseThrow()) + " or less");
  }

  private String number(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString() + " " + unit;
  }

  /** Whether a number lies in it; a number that is none does not. */
  public boolean holds(double value) {
    return !Double.isNaN(value)
        && low.map(it -> value >= it).orElse(true)
        && high.map(it -> value <= it).orElse(true);
  }
}
