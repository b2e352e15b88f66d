package org.loomwright.model.evidence;

/** How a fact is known, best first. */
public enum How {
  MEASURED,
  SEEN,
  DRAWING,
  TOLD,
  ASSUMED
}
