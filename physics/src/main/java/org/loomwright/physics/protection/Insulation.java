package org.loomwright.physics.protection;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.loomwright.physics.SumException;

/**
 * Insulation materials with the temperatures between which a short circuit may heat the conductor.
 * For conductors up to 300 mm².
 */
public enum Insulation {
  /** PVC of the 70 °C class. */
  PVC("PVC", 70, 160, 115, "IEC 60364-5-54, thermoplastic 70 °C"),
  /** PVC of the 90 °C class. */
  PVC_90("PVC 90", 90, 160, 100, "IEC 60364-5-54, thermoplastic 90 °C"),
  /** Cross-linked polyethylene, also EPR. */
  XLPE("XLPE", 90, 250, 143, "IEC 60364-5-54, thermosetting 90 °C"),
  /** Rubber of the 60 °C class. */
  RUBBER_60("rubber 60", 60, 200, 141, "IEC 60364-5-54, rubber 60 °C"),
  /** Rubber of the 85 °C class. */
  RUBBER_85("rubber 85", 85, 220, 134, "IEC 60364-5-54, rubber 85 °C"),
  /** Silicone rubber. */
  SILICONE("silicone", 180, 350, 132, "IEC 60364-5-54, silicone rubber"),
  /**
   * ETFE. Not in the IEC table: rated 150 °C, end temperature kept 35 K below the start of the
   * melting range at 255 °C; k by the closed form of IEC 60949.
   */
  ETFE(
      "ETFE",
      150,
      220,
      Withstand.closedFormK(150, 220),
      "IEC 60949 closed form; 150 °C rating and 220 °C end temperature (from memory)");

  private final String label;
  private final double initialC;
  private final double finalC;
  private final double k;
  private final String source;

  Insulation(String label, double initialC, double finalC, double k, String source) {
    this.label = label;
    this.initialC = initialC;
    this.finalC = finalC;
    this.k = k;
    this.source = source;
  }

  /** As people write it. */
  public String label() {
    return label;
  }

  /** Conductor temperature at the start of the fault that {@link #k()} is made for, °C. */
  public double initialC() {
    return initialC;
  }

  /** Highest conductor temperature at the end of the fault, °C. */
  public double finalC() {
    return finalC;
  }

  /** k of copper for this pair of temperatures, A·√s/mm². */
  public double k() {
    return k;
  }

  /** Where the figures come from. */
  public String source() {
    return source;
  }

  /**
   * Reads a material as people write it: case, spaces, hyphens and underscores do not matter.
   *
   * @throws SumException naming the known materials
   */
  public static Insulation parse(String text) {
    String wanted = plain(text);
    return Arrays.stream(values())
        .filter(i -> plain(i.label).equals(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                new SumException(
                    "unknown insulation \""
                        + text
                        + "\"; known: "
                        + Arrays.stream(values())
                            .map(Insulation::label)
                            .collect(Collectors.joining(", "))));
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[ _-]", "");
  }
}
