package org.loomwright.model.json;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.finding.FoundAt;
import org.loomwright.model.kit.OwnEnd;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Money;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.model.vehicle.MeterBand;
import org.loomwright.model.vehicle.Spot;

/**
 * A value that is written as text with a form of its own.
 *
 * @param type the value's type
 * @param noun for people, with article
 * @param example a text that can be read
 * @param harmless a text that can be read and stands for nothing in particular
 * @param pattern regular expression (ECMA 262) that every readable text matches; others may too
 * @param read reads a text, refusing with {@link IllegalArgumentException}
 * @param write the text of a value
 */
record TextForm<T>(
    Class<T> type,
    String noun,
    String example,
    String harmless,
    String pattern,
    Function<String, T> read,
    Function<T, String> write) {
  private static final String DIGIT_FIRST = "^\\s*[+-]?[0-9].*\\S";

  private static final List<TextForm<?>> ALL =
      List.of(
          quantity(Length.class, "a length", "820 mm", Length::of, Length::text),
          quantity(WireSize.class, "a wire size", "2.5 mm²", WireSize::of, WireSize::text),
          quantity(Current.class, "a current", "22 A", Current::of, Current::text),
          quantity(Voltage.class, "a voltage", "12.6 V", Voltage::of, Voltage::text),
          quantity(Temperature.class, "a temperature", "60 °C", Temperature::of, Temperature::text),
          quantity(TimeSpan.class, "a time", "90 s", TimeSpan::of, TimeSpan::text),
          quantity(Resistance.class, "a resistance", "5 mΩ", Resistance::of, Resistance::text),
          quantity(Percent.class, "a percentage", "60 %", Percent::of, Percent::text),
          quantity(Money.class, "a sum of money", "0.42 EUR", Money::of, Money::text),
          new TextForm<>(
              Condition.class,
              "a condition on traits",
              "tow-prep = yes and rear-feed != no",
              "always",
              "\\S",
              Condition::of,
              Condition::text),
          new TextForm<>(
              Colour.class,
              "a colour",
              "red/white",
              "red",
              "^\\s*[a-z]+\\s*(/\\s*[a-z]+\\s*)?$",
              Colour::of,
              Colour::text),
          new TextForm<>(
              Spot.class,
              "the end of a wire",
              "cavity floor 3",
              "unit any",
              "^\\s*(cavity|slot|ground|unit|loose) ",
              Spot::of,
              Spot::text),
          new TextForm<>(
              OwnEnd.class,
              "the end of a lead of your own",
              "pin camera main 3",
              "loose any",
              "^\\s*(cavity|pin|ground|loose) ",
              OwnEnd::of,
              OwnEnd::text),
          new TextForm<>(
              FoundAt.class,
              "a thing of the vehicle",
              "cavity floor 3",
              "place any",
              "^\\s*(place|connector|cavity|block|slot|ground|circuit|run) ",
              FoundAt::of,
              FoundAt::text),
          new TextForm<>(
              MeterBand.class,
              "a band of a meter",
              "11.5 V or more",
              "1 V or less",
              DIGIT_FIRST,
              MeterBand::of,
              MeterBand::text));

  private static <T> TextForm<T> quantity(
      Class<T> type,
      String noun,
      String example,
      Function<String, T> read,
      Function<T, String> write) {
    return new TextForm<>(type, noun, example, example, DIGIT_FIRST, read, write);
  }

  /** The form of values of a type, or of one of its subtypes. */
  static Optional<TextForm<?>> of(Class<?> type) {
    return ALL.stream().filter(form -> form.type.isAssignableFrom(type)).findFirst();
  }

  /** The noun with the example, for messages. */
  String words() {
    return noun + " such as \"" + example + "\"";
  }

  /** The text of a value of this form. */
  String text(Object value) {
    return write.apply(type.cast(value));
  }
}
