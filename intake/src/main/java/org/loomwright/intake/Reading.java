package org.loomwright.intake;

/** What came of reading a pasted table. */
public sealed interface Reading {
  /** There is a table, with at least one cell that is not empty. */
  record Good(PastedTable table) implements Reading {}

  /**
   * There is none.
   *
   * @param message what is wrong and what would be right, for a person
   */
  record Bad(String message) implements Reading {}
}
