package org.loomwright.intake;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What bare numbers of a column of wire sizes are. */
enum SizeUnit {
  MM2,
  AWG,
  /** Nothing in the column tells. */
  OPEN;

  /** Whole numbers that are cross-sections of vehicle wire (ISO 6722-1), in mm². */
  private static final Set<String> WHOLE_MM2 =
      Set.of(
          "1", "2", "3", "4", "5", "6", "8", "10", "12", "16", "20", "25", "30", "35", "40", "50",
          "60", "70", "95", "120");

  /** Whole numbers that are usual gauges of vehicle wire; common practice. */
  private static final Set<String> WHOLE_AWG =
      Set.of("2", "4", "6", "8", "10", "12", "14", "16", "18", "20", "22", "24", "26");

  static boolean isWhole(String number) {
    return WHOLE_MM2.contains(number) || WHOLE_AWG.contains(number);
  }

  /** Tells by the header, else by numbers that are usual in one of them only. */
  static SizeUnit of(String header, List<String> cells) {
    String lower = header.toLowerCase(Locale.ROOT);
    if (lower.contains("mm") || lower.contains("csa") || lower.contains("cross")) {
      return MM2;
    }
    if (lower.contains("awg") || lower.contains("gauge") || lower.matches("ga\\.?")) {
      return AWG;
    }
    boolean mm2 = false;
    boolean awg = false;
    for (String cell : cells) {
      String text = cell.strip();
      boolean decimal = text.matches("[0-9]+[.,][0-9]+");
      mm2 |= decimal || (WHOLE_MM2.contains(text) && !WHOLE_AWG.contains(text));
      awg |= !decimal && WHOLE_AWG.contains(text) && !WHOLE_MM2.contains(text);
    }
    return mm2 == awg ? OPEN : mm2 ? MM2 : AWG;
  }
}
