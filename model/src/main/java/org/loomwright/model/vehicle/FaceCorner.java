package org.loomwright.model.vehicle;

/** A corner of a face as on file: seen on the wire side with the latch up. */
public enum FaceCorner {
  TOP_LEFT,
  TOP_RIGHT,
  BOTTOM_LEFT,
  BOTTOM_RIGHT
}
