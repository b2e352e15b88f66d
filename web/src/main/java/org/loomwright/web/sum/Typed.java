package org.loomwright.web.sum;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.cutting.Piece;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.wire.Conductor;

/** What was typed into a form, read field by field; all that is wrong is kept beside its field. */
final class Typed {
  /** Less than this of a tenth of a mm is rounding. */
  private static final double ROUNDING = 1e-6;

  private static final Pattern PIECE = Pattern.compile("(.+?)\\s*[xX×]\\s*(\\d{1,5})");

  private final Map<String, String> words;
  private final Map<String, String> errors = new LinkedHashMap<>();

  private final Display units;

  Typed(Map<String, String> words, Display units) {
    this.words = words;
    this.units = units;
  }

  /** Units of lengths and wire sizes in the answer. */
  Display units() {
    return units;
  }

  /** What is wrong, by the key of the field. */
  Map<String, String> errors() {
    return errors;
  }

  Optional<Conductor> wire() {
    return read(
        "wire",
        text -> {
          WireSize size = WireSize.of(text);
          return size.awg().isPresent()
              ? Conductor.awg(size.awg().getAsInt())
              : Conductor.metric(size.areaMm2());
        });
  }

  Optional<Double> metres(String key) {
    return read(key, text -> Length.of(text).mm() / 1000);
  }

  Optional<Double> amperes(String key) {
    return read(key, text -> Current.of(text).amperes());
  }

  Optional<Double> volts(String key) {
    return read(key, text -> Voltage.of(text).volts());
  }

  Optional<Double> celsius(String key) {
    return read(key, text -> Temperature.of(text).celsius());
  }

  Optional<Double> percent(String key) {
    return read(key, text -> 100 * Percent.of(text).fraction());
  }

  Optional<Double> seconds(String key) {
    return read(key, text -> TimeSpan.of(text).seconds());
  }

  Optional<Insulation> insulation(String key) {
    return read(key, Insulation::parse);
  }

  /** Lengths with commas between, mm. */
  Optional<List<Double>> lengthsMm(String key) {
    return read(
        key,
        text -> {
          List<Double> lengths = new ArrayList<>();
          for (String part : text.split(",", -1)) {
            lengths.add(plainLengthMm(part.strip()));
          }
          return lengths;
        });
  }

  /** A length, mm. */
  Optional<Double> millimetres(String key) {
    return read(key, text -> Length.of(text).mm());
  }

  /** Pieces to cut, each a length in mm or with its unit, "x" and a count. */
  Optional<List<Piece>> pieces(String key) {
    return read(
        key,
        text -> {
          List<Piece> pieces = new ArrayList<>();
          for (String part : text.split(",", -1)) {
            Matcher piece = PIECE.matcher(part.strip());
            if (!piece.matches()) {
              throw new IllegalArgumentException(
                  "\""
                      + part.strip()
                      + "\" can't be read as pieces: a length, \"x\" and how many are expected,"
                      + " such as \"1380 x 22\"");
            }
            double lengthMm = plainLengthMm(piece.group(1));
            // A piece is cut at least as long as asked for; lengths count in tenths of a mm.
            pieces.add(
                new Piece(
                    Math.ceil(10 * lengthMm - ROUNDING) / 10, Integer.parseInt(piece.group(2))));
          }
          return pieces;
        });
  }

  private static double plainLengthMm(String word) {
    return Length.of(word.matches("[0-9.]+") ? word + " mm" : word).mm();
  }

  /** Whether a field was left empty. */
  boolean isEmpty(String key) {
    return text(key).isEmpty();
  }

  private String text(String key) {
    return words.getOrDefault(key, "").strip();
  }

  private <T> Optional<T> read(String key, Function<String, T> reader) {
    if (isEmpty(key)) {
      errors.put(key, "This is needed for the sum.");
      return Optional.empty();
    }
    try {
      return Optional.of(reader.apply(text(key)));
    } catch (IllegalArgumentException wrong) {
      errors.put(key, String.valueOf(wrong.getMessage()));
      return Optional.empty();
    }
  }
}
