package org.loomwright.intake;

/** How much is read: far more than any pinout has, and little enough to be read at once. */
final class Limits {
  /** Characters of a pasted text. */
  static final int CHARACTERS = 2_000_000;

  static final int ROWS = 5_000;
  static final int COLUMNS = 100;

  /** Characters of a cell. */
  static final int CELL = 4_000;

  /** Cells that are not empty, of a whole table. */
  static final int CELLS = 100_000;

  /** Bytes of a spreadsheet file. */
  static final int FILE_BYTES = 8 << 20;

  /** Bytes of all that is packed in a spreadsheet file. */
  static final int UNPACKED_BYTES = 48 << 20;

  static final int ENTRIES = 1_000;

  private Limits() {}
}
