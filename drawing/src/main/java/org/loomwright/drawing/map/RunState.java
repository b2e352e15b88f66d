package org.loomwright.drawing.map;

/** What a run is to a kit. */
enum RunState {
  /** Leads lie on it. */
  USED,
  /** Leads could lie on it. */
  UNUSED,
  /** Leads may not lie on it. */
  FORBIDDEN
}
