package org.loomwright.model.rules;

/** Paper in a printer. */
public enum PaperSize {
  /** ISO 216, 210 mm x 297 mm. */
  A4,
  /** ISO 216, 297 mm x 420 mm. */
  A3,
  /** ANSI/ASME Y14.1 size A, 8.5 in x 11 in. */
  LETTER
}
