package org.loomwright.model.job;

import java.util.Locale;

/** Tells real vehicles apart by what the shop wrote down about each: plate, end of the serial. */
public final class VehicleNote {
  private VehicleNote() {}

  /**
   * The same for notes that differ in capitals and blanks only, such as "OST 417" and "ost417".
   *
   * @return empty for a note that says nothing
   */
  public static String key(String note) {
    return note.replaceAll("[\\s\\u00a0]+", "").toLowerCase(Locale.ROOT);
  }
}
