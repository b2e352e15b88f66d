package org.loomwright.physics.protection;

/** Where a fuse sits, as far as published loading limits tell places apart. */
public enum FusePlace {
  /** Passenger compartment. */
  CABIN("cabin"),
  /** Engine bay. */
  ENGINE_BAY("engine bay");

  private final String label;

  FusePlace(String label) {
    this.label = label;
  }

  /** As people write it. */
  public String label() {
    return label;
  }
}
