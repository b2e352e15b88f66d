package org.loomwright.papers.page;

/**
 * A column of a table.
 *
 * @param head heading, with the unit where cells are numbers
 * @param share width as percent of the table
 * @param kind how cells are set
 */
public record Column(String head, double share, Kind kind) {
  /** How cells are set. */
  public enum Kind {
    /** Words, to the left. */
    TEXT,
    /** Numbers, to the right. */
    NUMBER,
    /** What the row is about, bold. */
    KEY
  }

  /** A column of words. */
  public static Column text(String head, double share) {
    return new Column(head, share, Kind.TEXT);
  }

  /** A column of numbers. */
  public static Column number(String head, double share) {
    return new Column(head, share, Kind.NUMBER);
  }

  /** A column that names the row. */
  public static Column key(String head, double share) {
    return new Column(head, share, Kind.KEY);
  }
}
