package org.loomwright.planner.proof;

/** A check of one net on builds that all have it alike. */
interface NetCheck {
  void check(NetAt at, Findings findings);
}
