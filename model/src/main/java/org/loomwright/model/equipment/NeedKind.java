package org.loomwright.model.equipment;

/** What a pin needs. */
public enum NeedKind {
  SUPPLY,
  GROUND,
  SIGNAL
}
