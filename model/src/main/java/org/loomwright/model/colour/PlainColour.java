package org.loomwright.model.colour;

import java.util.Locale;

/**
 * Plain wire colours with their letter codes in the order of IEC 60757, which is also the order in
 * which the codes of a two-coloured wire are joined.
 */
public enum PlainColour {
  BLACK("BK"),
  BROWN("BN"),
  RED("RD"),
  ORANGE("OG"),
  YELLOW("YE"),
  GREEN("GN"),
  BLUE("BU"),
  VIOLET("VT"),
  GREY("GY"),
  WHITE("WH"),
  PINK("PK"),
  GOLD("GD"),
  TURQUOISE("TQ"),
  SILVER("SR");

  private final String code;

  PlainColour(String code) {
    this.code = code;
  }

  /** IEC 60757 letter code. */
  public String code() {
    return code;
  }

  /** The colour as a lower-case word. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
