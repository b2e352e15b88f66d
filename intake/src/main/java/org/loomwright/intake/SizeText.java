package org.loomwright.intake;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.model.quantity.QuantityException;
import org.loomwright.model.quantity.WireSize;

/** Reads wire sizes as tables give them: "0.5", "0,5 mm²", "18", "18 AWG", "4 sq mm". */
final class SizeText {
  private static final Pattern BARE = Pattern.compile("[0-9]{1,4}(?:[.,][0-9]{1,4})?");
  private static final Pattern MM2 =
      Pattern.compile("([0-9]{1,4}(?:[.,][0-9]{1,4})?) ?(?:mm ?[²2]?|mm\\^2|sq\\.? ?mm|qmm|mm sq)");
  private static final Pattern GAUGE =
      Pattern.compile("(?:#|awg ?)?([0-9]{1,2}|[1-4]/0|0{2,4}) ?(?:awg|ga\\.?|gauge)?");

  /**
   * Smallest and largest conductor of a vehicle's loom, starter cable included; common practice.
   */
  private static final double LEAST_MM2 = 0.05;

  private static final double MOST_MM2 = 130;

  private SizeText() {}

  /** The size a cell gives; bare numbers are in the unit of the column. */
  static Fact<WireSize> read(String text, SizeUnit unit) {
    String line = CellText.line(text).toLowerCase(Locale.ROOT);
    if (BARE.matcher(line).matches()) {
      boolean decimal = line.matches(".*[.,].*");
      if (unit == SizeUnit.OPEN && !decimal) {
        return new Fact.Wrong<>(
            CellText.shown(text)
                + " can be mm² or AWG; write '"
                + line
                + " mm²' or '"
                + line
                + " AWG'");
      }
      return unit == SizeUnit.AWG && !decimal
          ? size(text, line + " AWG")
          : size(text, line.replace(',', '.') + " mm²");
    }
    Matcher area = MM2.matcher(line);
    if (area.matches()) {
      return size(text, area.group(1).replace(',', '.') + " mm²");
    }
    Matcher gauge = GAUGE.matcher(line);
    if (gauge.matches()) {
      return size(text, gauge.group(1) + " AWG");
    }
    return new Fact.Wrong<>(
        CellText.shown(text) + " is not a wire size; write e.g. '0.5 mm²' or '18 AWG'");
  }

  private static Fact<WireSize> size(String text, String spelling) {
    try {
      WireSize size = WireSize.of(spelling);
      if (size.areaMm2() < LEAST_MM2 || size.areaMm2() > MOST_MM2) {
        return new Fact.Wrong<>(
            CellText.shown(text)
                + " can't be the size of a wire here: a vehicle's wires have 0.05 to 130 mm²");
      }
      return new Fact.Known<>(size);
    } catch (QuantityException e) {
      return new Fact.Wrong<>(
          CellText.shown(text)
              + " can't be a wire size: "
              + e.problem()
              + "; expected "
              + e.expected());
    }
  }
}
