package org.loomwright.cli.shell;

import java.util.function.Function;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.QuantityException;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** Reads the values of options: quantities by the reader that also reads documents. */
public final class Values {

  private Values() {}

  /** Teaches a command line, with all commands it already has, to read quantities. */
  public static void registerWith(CommandLine line) {
    line.registerConverter(Length.class, quantity(Length::of));
    line.registerConverter(Current.class, quantity(Current::of));
    line.registerConverter(Voltage.class, quantity(Voltage::of));
    line.registerConverter(Temperature.class, quantity(Temperature::of));
    line.registerConverter(TimeSpan.class, quantity(TimeSpan::of));
    line.registerConverter(Percent.class, quantity(Percent::of));
    line.registerConverter(WireSize.class, quantity(WireSize::of));
    line.registerConverter(int.class, Values::wholeNumber);
  }

  /** The message for a value that can't be read: which option, then what its reader says. */
  static String describe(ParameterException failure, WrongInput wrong) {
    return failure.getArgSpec() instanceof OptionSpec option
        ? option.longestName() + ": " + wrong.getMessage()
        : String.valueOf(wrong.getMessage());
  }

  private static int wholeNumber(String text) {
    try {
      return Integer.parseInt(text.strip());
    } catch (NumberFormatException unreadable) {
      throw new WrongInput(
          "\"" + text + "\" can't be read as a whole number; expected digits only, such as \"7\".");
    }
  }

  private static <T> ITypeConverter<T> quantity(Function<String, T> reader) {
    return text -> {
      try {
        return reader.apply(text);
      } catch (QuantityException unreadable) {
        throw new WrongInput(unreadable.getMessage() + ".");
      }
    };
  }
}
