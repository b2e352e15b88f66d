package org.loomwright.model.design;

import java.math.BigInteger;
import java.util.Map;

/**
 * Builds on which something goes wrong.
 *
 * @param obligation obligation that fails
 * @param traits fewest trait values that bring it about
 * @param words those builds in words
 * @param builds number of possible builds with these values
 * @param step step at which it goes wrong, empty when no step does
 * @param what what goes wrong, with the figure
 */
public record Counterexample(
    String obligation,
    Map<String, String> traits,
    String words,
    BigInteger builds,
    String step,
    String what) {
  public Counterexample {
    traits = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(traits));
  }
}
