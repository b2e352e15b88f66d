package org.loomwright.model.design;

/** What sort of value a reading is. */
public enum ReadingKind {
  /** A number with a unit. */
  NUMBER,
  /** It works, or it does not. */
  WORKS,
  /** Words, such as stored faults. */
  WORDS
}
