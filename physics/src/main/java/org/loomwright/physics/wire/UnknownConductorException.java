package org.loomwright.physics.wire;

import java.util.List;
import org.loomwright.physics.SumException;

/** A conductor size that the table does not hold; names the nearest sizes that it does. */
public final class UnknownConductorException extends SumException {
  private static final long serialVersionUID = 1L;

  /** Labels of the nearest sizes, smaller first. */
  private final List<String> nearest;

  UnknownConductorException(String asked, String table, List<String> nearest) {
    super(
        asked + " is not a size of " + table + "; nearest: " + String.join(" and ", nearest) + ".");
    this.nearest = List.copyOf(nearest);
  }

  /** Labels of the nearest sizes, smaller first. */
  public List<String> nearest() {
    return nearest;
  }
}
