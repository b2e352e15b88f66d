package org.loomwright.physics;

/** Outcome of a check, ordered from good to bad. */
public enum Verdict {
  /** On the good side of the limit with more than the marginal band to spare. */
  HOLDS,
  /** On the good side, but within the marginal band of the limit. */
  MARGINAL,
  /** On the wrong side of the limit. */
  FAILS;

  /** The worse of two verdicts. */
  public Verdict worse(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
