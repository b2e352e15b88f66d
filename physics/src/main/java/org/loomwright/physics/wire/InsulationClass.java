package org.loomwright.physics.wire;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomwright.physics.SumException;

/**
 * Temperature classes of ISO 6722-1 / ISO 19642: the conductor temperature that the insulation
 * stands for 3000 h. Class B was read in a cable maker's data sheet, the others are from memory.
 */
public enum InsulationClass {
  /** 85 °C. */
  A(85, true),
  /** 105 °C, the common PVC class. */
  B(105, false),
  /** 125 °C. */
  C(125, true),
  /** 150 °C. */
  D(150, true),
  /** 175 °C. */
  E(175, true),
  /** 200 °C. */
  F(200, true),
  /** 225 °C. */
  G(225, true),
  /** 250 °C. */
  H(250, true);

  /** Lowest temperature of every class, °C. */
  public static final double LOWEST_C = -40;

  private final double highestC;
  private final boolean fromMemory;

  InsulationClass(double highestC, boolean fromMemory) {
    this.highestC = highestC;
    this.fromMemory = fromMemory;
  }

  /** Highest continuous conductor temperature, °C. */
  public double highestC() {
    return highestC;
  }

  /** Where the figure comes from, with its mark. */
  public String source() {
    return fromMemory
        ? "ISO 6722-1 class " + name() + " (from memory)"
        : "ISO 6722-1 class " + name() + ", a cable maker's data sheet";
  }

  /** The highest class that is not above a temperature; empty below 85 °C. */
  public static Optional<InsulationClass> notAbove(double temperatureC) {
    return Arrays.stream(values())
        .filter(c -> c.highestC <= temperatureC)
        .reduce((lower, higher) -> higher);
  }

  /**
   * Reads a class letter, upper or lower case.
   *
   * @throws SumException naming the known classes
   */
  public static InsulationClass parse(String text) {
    String wanted = text.strip().toUpperCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(c -> c.name().equals(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                new SumException(
                    "unknown insulation class \""
                        + text
                        + "\"; known: "
                        + Arrays.stream(values())
                            .map(Enum::name)
                            .collect(Collectors.joining(", "))));
  }
}
