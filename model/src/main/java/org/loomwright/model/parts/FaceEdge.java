package org.loomwright.model.parts;

/** An edge of a face as on file: wire side, latch up. */
public enum FaceEdge {
  TOP,
  RIGHT,
  BOTTOM,
  LEFT
}
