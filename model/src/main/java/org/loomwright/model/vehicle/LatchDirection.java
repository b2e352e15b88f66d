package org.loomwright.model.vehicle;

/** Where the latch points in the view at hand. */
public enum LatchDirection {
  UP,
  RIGHT,
  DOWN,
  LEFT
}
