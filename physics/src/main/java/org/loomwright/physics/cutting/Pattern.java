package org.loomwright.physics.cutting;

import java.util.List;

/**
 * How one spool or bar is cut, and how many are cut alike.
 *
 * @param times spools cut this way
 * @param pieces what comes off each of them, longest first
 * @param restMm what is left of each, mm, after pieces and cuts
 */
public record Pattern(int times, List<Piece> pieces, double restMm) {
  /** Copies the pieces. */
  public Pattern {
    pieces = List.copyOf(pieces);
  }
}
