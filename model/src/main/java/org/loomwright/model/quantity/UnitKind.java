package org.loomwright.model.quantity;

/** What a quantity is about; carries the words for messages. Bare numbers are in the base unit. */
enum UnitKind {
  /** Base unit mm. */
  LENGTH("a length", "length", "820 mm", "mm, cm, m, in or ft"),
  /** Base unit mm². */
  WIRE_SIZE("a wire size", "wire size", "2.5 mm²", "mm² or AWG"),
  /** Base unit A. */
  CURRENT("a current", "current", "22 A", "A, mA or kA"),
  /** Base unit V. */
  VOLTAGE("a voltage", "voltage", "12.6 V", "V, mV or kV"),
  /** Base unit °C. */
  TEMPERATURE("a temperature", "temperature", "60 °C", "°C, °F or K"),
  /** Base unit s. */
  TIME("a time", "time", "90 s", "ms, s, min or h"),
  /** Base unit Ω. */
  RESISTANCE("a resistance", "resistance", "5 mΩ", "µΩ, mΩ, Ω, kΩ or MΩ"),
  /** Base unit 1. */
  PERCENT("a percentage", "percentage", "60 %", "%"),
  /** Base unit W. Known only to say so when it stands in the wrong place. */
  POWER("a power", "power", "55 W", "W or kW"),
  /** A sum of money; has currencies instead of units. */
  MONEY("a sum of money", "money", "0.42 EUR", "a currency code of three letters");

  private final String noun;
  private final String name;
  private final String example;
  private final String units;

  UnitKind(String noun, String name, String example, String units) {
    this.noun = noun;
    this.name = name;
    this.example = example;
    this.units = units;
  }

  /** With article: "a length". */
  String noun() {
    return noun;
  }

  /** Without article: "length". */
  String bareNoun() {
    return name;
  }

  /** A text that can be read. */
  String example() {
    return example;
  }

  /** The usual units, as a part of a sentence. */
  String units() {
    return units;
  }

  boolean mayBeNegative() {
    return this == TEMPERATURE || this == VOLTAGE;
  }

  /** Fractions such as 1/2 are written on tape measures and nowhere else. */
  boolean mayBeFraction() {
    return this == LENGTH;
  }
}
