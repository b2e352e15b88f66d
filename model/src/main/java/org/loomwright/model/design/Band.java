package org.loomwright.model.design;

import java.util.Optional;

/**
 * Where a measured number has to lie, limits included.
 *
 * @param low least value, in the unit; absent without a lower limit
 * @param high greatest value, in the unit; absent without an upper limit
 * @param unit unit the number is typed in: "V", "mV", "A", "mA", "Ω" or "kΩ"
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

  /** Whether a number lies in it; a number that is none does not. */
  public boolean holds(double value) {
    return !Double.isNaN(value)
        && low.map(it -> value >= it).orElse(true)
        && high.map(it -> value <= it).orElse(true);
  }
}
