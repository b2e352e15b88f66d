package org.loomwright.intake;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;

/** Reads cavity numbers as tables give them: "7", "Pin 7", "07", "7.", "f7". */
final class CavityText {
  private CavityText() {}

  /** The number as moulded on the housing; empty when the housing has no such cavity. */
  static Optional<String> read(String text, Housing housing) {
    String line = CellText.line(text).toLowerCase(Locale.ROOT);
    if (line.length() > 40) {
      return Optional.empty();
    }
    String bare =
        line.replaceFirst(
                "^(?:pin|cavity|cav|terminal|term|no|pos|way|#)[ .:#]*(?=[a-z]?[0-9])", "")
            .replaceFirst("[.:)]$", "");
    String digits = bare.replaceFirst("^0+(?=[0-9])", "").replaceFirst("[.,]0$", "");
    return Stream.of(line, bare, digits).flatMap(it -> named(it, housing).stream()).findFirst();
  }

  private static Optional<String> named(String number, Housing housing) {
    return housing.cavities().stream()
        .map(Cavity::number)
        .filter(it -> it.toLowerCase(Locale.ROOT).equals(number))
        .findFirst();
  }
}
