package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What came of reading a spreadsheet file with all its sheets. */
public sealed interface Book {
  /** Most sheets looked at. */
  int MOST_SHEETS = 30;

  /**
   * A sheet that holds a table.
   *
   * @param name its name
   * @param table its table
   */
  record Sheet(String name, PastedTable table) {}

  /**
   * There are tables.
   *
   * @param sheets sheets with a table, at least one, in the order of the file
   */
  record Good(List<Sheet> sheets) implements Book {
    public Good {
      sheets = List.copyOf(sheets);
    }
  }

  /**
   * There is none.
   *
   * @param message what is wrong and what would be right, for a person
   */
  record Bad(String message) implements Book {}

  /** Reads all sheets of a spreadsheet file (XLSX); those without a table are passed over. */
  static Book read(byte[] xlsx) {
    Reading first = XlsxReader.read(xlsx, Optional.empty());
    // Files that are none at all are not looked into twice.
    List<String> names = XlsxReader.isPacked(xlsx) ? XlsxReader.names(xlsx) : List.of();
    if (names.size() > MOST_SHEETS) {
      return new Bad(
          "the file has "
              + names.size()
              + " sheets; at most "
              + MOST_SHEETS
              + " are looked at: save only the sheet with the connector's cavities");
    }
    List<Sheet> sheets = new ArrayList<>();
    long characters = 0;
    for (int i = 0; i < names.size(); i++) {
      Reading reading = i == 0 ? first : XlsxReader.read(xlsx, Optional.of(names.get(i)));
      if (reading instanceof Reading.Good good) {
        sheets.add(new Sheet(names.get(i), good.table()));
        characters += CarriedTable.write(good.table()).length();
      }
    }
    if (sheets.isEmpty()) {
      return new Bad(
          first instanceof Reading.Bad bad ? bad.message() : "there is no table in the file");
    }
    if (characters > CarriedTable.LONGEST) {
      return new Bad(
          "the sheets of the file hold more text than can be looked at here; save only the sheet"
              + " with the connector's cavities");
    }
    return new Good(sheets);
  }
}
