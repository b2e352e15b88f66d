package org.loomwright.model.job;

import java.util.Locale;

/** Tells real vehicles apart by what the shop wrote down about each: plate, end of the serial. */
public final class VehicleNote {
  private VehicleNote() {}

  /**
   * Its letters and digits: the same for notes that differ in capitals, blanks and signs only, such
   * as "OST 417", "ost417" and "OST-417".
   *
   * @return empty for a note that says nothing
   */
  public static String key(String note) {
    return note.replaceAll("[^\\p{L}\\p{N}]+", "").toLowerCase(Locale.ROOT);
  }
}
