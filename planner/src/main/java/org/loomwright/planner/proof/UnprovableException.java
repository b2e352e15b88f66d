package org.loomwright.planner.proof;

/** The guide can't be walked at all, or not within the bounds; nothing is then taken as shown. */
final class UnprovableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String why;

  UnprovableException(String why) {
    super(why);
    this.why = why;
  }

  /** Why, as a clause. */
  String why() {
    return why;
  }
}
