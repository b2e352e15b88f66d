package org.loomwright.planner.proof;

import java.util.OptionalDouble;

/**
 * Where a net gets its potential from.
 *
 * @param node node
 * @param kind kind
 * @param feed supply kind or signal name; empty for grounds
 * @param fuseA rating of the fuse behind it; empty when none is known
 * @param kitFuse whether the kit puts that fuse in
 * @param words name for people
 */
record Source(
    String node, Kind kind, String feed, OptionalDouble fuseA, boolean kitFuse, String words) {
  enum Kind {
    FEED,
    SIGNAL,
    GROUND
  }
}
