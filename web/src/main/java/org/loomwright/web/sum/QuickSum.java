package org.loomwright.web.sum;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.quantity.Display;

/** The single sums: what each asks for and how it is done. */
public enum QuickSum {
  RESISTANCE(
      "Resistance",
      "Resistance of a length of wire at the temperature of its conductor.",
      Sums::resistance,
      Field.WIRE,
      new Field("length", "Length", "4 m", false),
      new Field("temperature", "Temperature of the conductor", "20 °C", false)),
  DROP(
      "Voltage drop",
      "Voltage drop along a lead, with or without the way back in the same wire.",
      Sums::drop,
      Field.WIRE,
      new Field("length", "Length, one way", "4 m", false),
      new Field("return-length", "Length of the way back", "4 m", true),
      new Field("current", "Steady current", "9 A", false),
      new Field("supply", "Supply", "12 V", false),
      new Field("temperature", "Temperature of the conductor", "60 °C", false)),
  GAUGE(
      "Gauge",
      "Smallest single wire that holds the voltage drop and the allowed current at once.",
      Sums::gauge,
      new Field("current", "Steady current", "9 A", false),
      new Field("length", "Length, one way", "4 m", false),
      new Field("supply", "Supply", "12 V", false),
      new Field("max-drop", "Largest drop", "3 %", false),
      new Field("ambient", "Air around", "40 °C", false),
      new Field("insulation-rating", "Rating of the insulation", "105 °C", false)),
  AMPACITY(
      "Allowed current",
      "Allowed continuous current of a single wire, by handbook table and by heat balance.",
      Sums::ampacity,
      Field.WIRE,
      new Field("insulation-rating", "Rating of the insulation", "105 °C", false),
      new Field("ambient", "Air around", "60 °C", false)),
  TEMPERATURE(
      "Temperature",
      "Temperature of the conductor of a single wire that carries a steady current.",
      Sums::temperature,
      Field.WIRE,
      new Field("current", "Steady current", "15 A", false),
      new Field("ambient", "Air around", "40 °C", false)),
  WITHSTAND(
      "Short time",
      "Current that a wire survives for a short time, up to 5 s.",
      Sums::withstand,
      Field.WIRE,
      new Field("insulation", "Insulation", "XLPE", false),
      new Field("time", "Time", "1 s", false)),
  FUSE(
      "Fuse",
      "Smallest blade fuse that carries a load and rides out its start, and whether the wire suits"
          + " it. The way back is as long as the feed; insulation PVC 105 °C.",
      Sums::fuse,
      new Field("continuous", "Steady current", "9 A", false),
      new Field("peak", "Starting current", "20 A", false),
      new Field("peak-time", "Time of the start", "1 s", false),
      Field.WIRE,
      new Field("length", "Length, one way", "4 m", false),
      new Field("ambient", "Air along the wire", "40 °C", false),
      new Field("supply", "Lowest supply", "12 V", false)),
  BUNDLE(
      "Bundle",
      "Diameter of a round bundle of wires, without covering.",
      Sums::bundle,
      new Field("diameters", "Outside diameters, with commas between", "2.1, 2.1, 3.0", false)),
  CUT(
      "Cut",
      "Fewest spools or bars from which pieces can be cut.",
      Sums::cut,
      new Field("stock", "Length of a spool or bar", "5600 mm", false),
      new Field(
          "pieces",
          "Pieces: length, x and how many, with commas between",
          "1380 x 22, 1520 x 25",
          false),
      new Field("kerf", "Lost in each cut", "2 mm", true));

  /**
   * A field of a form.
   *
   * @param key its name in addresses
   * @param label its name for people
   * @param example a good value
   * @param optional whether it may be left empty
   */
  public record Field(String key, String label, String example, boolean optional) {
    static final Field WIRE = new Field("wire", "Wire", "2.5 mm²", false);
  }

  private final String title;
  private final String words;
  private final Function<Typed, Optional<SumResult>> sum;
  private final List<Field> fields;

  QuickSum(String title, String words, Function<Typed, Optional<SumResult>> sum, Field... fields) {
    this.title = title;
    this.words = words;
    this.sum = sum;
    this.fields = List.of(fields);
  }

  /** Its name for people. */
  public String title() {
    return title;
  }

  /** What it answers. */
  public String words() {
    return words;
  }

  /** What it asks for. */
  public List<Field> fields() {
    return fields;
  }

  /** Its name in addresses. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** A sum by its name in addresses. */
  public static Optional<QuickSum> of(String key) {
    return Arrays.stream(values()).filter(it -> it.key().equals(key)).findFirst();
  }

  /**
   * Does the sum.
   *
   * @param words what was typed, by the keys of the fields; empty before anything was
   * @param units units of lengths and wire sizes in the answer
   */
  public SumResult answer(Map<String, String> words, Display units) {
    if (fields.stream().noneMatch(it -> words.containsKey(it.key()))) {
      return SumResult.blank();
    }
    Typed typed = new Typed(words, units);
    try {
      Optional<SumResult> answer = sum.apply(typed);
      return typed.errors().isEmpty() && answer.isPresent()
          ? answer.get()
          : SumResult.wrong(typed.errors());
    } catch (IllegalArgumentException wrong) {
      // A sum that can't be done with these values says which and why.
      return SumResult.wrong(Map.of("", String.valueOf(wrong.getMessage())));
    }
  }
}
