package org.loomwright.intake;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import org.jspecify.annotations.Nullable;

/**
 * Checks how far the cells of sheets lie out. The reader fills up each row to its last cell, so
 * that a few bytes could ask for more memory than there is.
 */
final class SheetExtent {
  private static final Pattern SHEET = Pattern.compile("xl/worksheets/[^/]+\\.xml");
  private static final Pattern REF = Pattern.compile("([A-Z]{1,3})[0-9]{1,7}");

  /** Positions of all rows, empty ones between cells included. */
  private static final long MOST = 20_000_000;

  private long positions;
  private boolean wrong;

  private SheetExtent() {}

  static void check(Map<String, byte[]> parts) throws XMLStreamException, SafeZip.Refused {
    for (Map.Entry<String, byte[]> part : parts.entrySet()) {
      if (SHEET.matcher(part.getKey()).matches()) {
        SheetExtent extent = new SheetExtent();
        MergedCells.each(
            part.getValue(), "c", cell -> extent.count(cell.getAttributeValue(null, "r")));
        if (extent.wrong || extent.positions > MOST) {
          throw new SafeZip.Refused(
              "a sheet of the file has cells farther out than any spreadsheet program writes them");
        }
      }
    }
  }

  private void count(@Nullable String ref) {
    if (ref == null) {
      positions++;
      return;
    }
    Matcher matcher = REF.matcher(ref);
    if (!matcher.matches()) {
      wrong = true;
      return;
    }
    long column = 0;
    for (char letter : matcher.group(1).toCharArray()) {
      column = column * 26 + letter - 'A' + 1;
    }
    // Only cells far out are worth counting at full: the others are bounded by the file's size.
    positions += column > Limits.COLUMNS ? column : 1;
  }
}
