package org.loomwright.planner.guide;

/** What of a step, or of where it is done, calls for a caution. */
enum CautionCause {
  /** Any step: the first one of a guide. */
  ANY_STEP,
  /** The battery is isolated. */
  ISOLATE,
  /** The battery is connected again. */
  RECONNECT,
  /**
   * Airbag or pretensioner parts are within reach: behind what is opened, or wiring is worked on or
   * measured at a place where a connector or run is flagged so.
   */
  RESTRAINT,
  /** High-voltage wiring is within reach: a connector or run at the place is flagged so. */
  HIGH_VOLTAGE,
  /** Work at a place that is reached from below. */
  UNDERNEATH,
  /** Work at a place in the engine bay. */
  ENGINE_BAY,
  /** A wire end is worked on where water reaches it. */
  WET,
  /** A lead is laid. */
  LAY,
  /** A lead is laid along a hot run, or near the exhaust. */
  HOT_RUN,
  /** A lead is laid along a run that bends in use, or near moving parts. */
  MOVING_RUN,
  /** A lead is laid near brake or fuel pipes. */
  PIPES,
  /** A factory wire is cut into. */
  SPLICE,
  /** A crimp is made in the vehicle: a splice, or an end made anew. */
  CRIMP,
  /** An end is parked. */
  PARK,
  /** A fuse is fitted. */
  FUSE,
  /** An act that can't be taken back easily. */
  FOR_GOOD
}
