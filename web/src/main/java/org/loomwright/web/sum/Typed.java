package org.loomwright.web.sum;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.wire.Conductor;

/** What was typed into a form, read field by field; all that is wrong is kept beside its field. */
final class Typed {
  private final Map<String, String> words;
  private final Map<String, String> errors = new LinkedHashMap<>();

  Typed(Map<String, String> words) {
    this.words = words;
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
            String word = part.strip();
            lengths.add(Length.of(word.matches("[0-9.]+") ? word + " mm" : word).mm());
          }
          return lengths;
        });
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
