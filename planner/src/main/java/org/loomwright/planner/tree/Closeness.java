package org.loomwright.planner.tree;

/** When two costs count as the same. */
final class Closeness {
  /**
   * Part of a cost that rounding may make up. A sum of some thousand doubles is off by less than a
   * thousandth of this.
   */
  static final double SHARE = 1e-9;

  private Closeness() {}

  /** Whether a cost is less than another by more than rounding. */
  static boolean less(double cost, double than) {
    return cost < than - SHARE * than;
  }
}
