package org.loomwright.web.map;

import java.util.List;
import org.loomwright.model.quantity.Display;

/** Numbers and lists of the map in words. */
public final class MapWords {
  private static final char GAP = '\u00a0';
  private static final int MOST_LISTED = 5;

  private MapWords() {}

  /** Whole millimetres with gaps between thousands, e.g. "1 840 mm". */
  public static String mm(double lengthMm) {
    String digits = Long.toString(Math.round(lengthMm));
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < digits.length(); i++) {
      if (i > 0 && digits.charAt(i - 1) != '-' && (digits.length() - i) % 3 == 0) {
        text.append(GAP);
      }
      text.append(digits.charAt(i));
    }
    return text.append(GAP).append("mm").toString();
  }

  /** The same in the wanted units. */
  public static String length(double lengthMm, Display units) {
    return units == Display.METRIC ? mm(lengthMm) : units.lengthMm(lengthMm).replace(' ', GAP);
  }

  /** A coordinate for markup: at most one decimal, a point in every locale. */
  public static String number(double value) {
    double tenth = Math.round(value * 10) / 10.0;
    return tenth == Math.rint(tenth) ? Long.toString((long) tenth) : Double.toString(tenth);
  }

  /** A name without its article, to stand after a noun. */
  public static String bare(String name) {
    return name.startsWith("the ") ? name.substring(4) : name;
  }

  /** What was done, for the history. */
  public static String done(List<String> changes) {
    List<String> listed = changes.subList(0, Math.min(MOST_LISTED, changes.size()));
    int more = changes.size() - listed.size();
    return String.join("; ", listed) + (more == 0 ? "" : "; and " + more + " more changes");
  }
}
