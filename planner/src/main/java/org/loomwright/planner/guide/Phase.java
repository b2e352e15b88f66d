package org.loomwright.planner.guide;

import org.loomwright.model.vehicle.Tell;

/** When a question can be asked: cheap ones first, live readings before the battery is isolated. */
enum Phase {
  OWNER,
  OUTSIDE,
  LIVE,
  ISOLATED;

  static Phase of(Tell tell) {
    return switch (tell.how()) {
      case ASK_OWNER -> OWNER;
      case LOOK -> tell.openings().isEmpty() ? OUTSIDE : ISOLATED;
      case MEASURE_LIVE -> LIVE;
      case MEASURE_ISOLATED -> ISOLATED;
    };
  }
}
