package org.loomwright.model.difference;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.QuantityException;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;

/** Whether two texts are one quantity written in two ways. No unit belongs to two sorts. */
final class SameValue {
  private static final List<ToDoubleFunction<String>> READERS =
      List.of(
          text -> Length.of(text).mm(),
          text -> WireSize.of(text).areaMm2(),
          text -> Current.of(text).amperes(),
          text -> Voltage.of(text).volts(),
          text -> Temperature.of(text).celsius(),
          text -> TimeSpan.of(text).seconds(),
          text -> Resistance.of(text).ohms(),
          text -> Percent.of(text).fraction());

  private SameValue() {}

  static boolean of(String before, String after) {
    // Spares long free texts, which are no quantities, eight failing readings.
    return isShort(before)
        && isShort(after)
        && READERS.stream().anyMatch(it -> same(it, before, after));
  }

  private static boolean isShort(String text) {
    return text.length() <= 40 && text.chars().anyMatch(c -> c >= '0' && c <= '9');
  }

  private static boolean same(ToDoubleFunction<String> reader, String before, String after) {
    try {
      return reader.applyAsDouble(before) == reader.applyAsDouble(after);
    } catch (QuantityException e) {
      // Not a quantity of this sort: then the texts are not two ways to write one.
      return false;
    }
  }
}
