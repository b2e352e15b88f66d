package org.loomwright.model.design;

/** Result of a check. */
public enum Verdict {
  HOLDS,
  MARGINAL,
  FAILS;

  /** The verdict as a lower-case word. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** The worse of two verdicts. */
  public Verdict worse(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
