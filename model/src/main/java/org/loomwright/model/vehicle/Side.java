package org.loomwright.model.vehicle;

/** The face of a connector or block a person looks at. */
public enum Side {
  WIRE_SIDE,
  MATING_SIDE;

  /** The side in words. */
  public String words() {
    return this == WIRE_SIDE ? "wire side" : "mating side";
  }
}
