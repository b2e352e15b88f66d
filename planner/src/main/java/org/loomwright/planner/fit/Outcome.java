package org.loomwright.planner.fit;

/** What answers say about one part of the question "does it fit". */
public enum Outcome {
  /** It does on every vehicle that the answers leave possible. */
  FITS,
  /** It does on none of them. */
  DOES_NOT,
  /** It can't be known from the answers. */
  OPEN
}
