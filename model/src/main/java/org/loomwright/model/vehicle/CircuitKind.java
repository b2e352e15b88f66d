package org.loomwright.model.vehicle;

/** What a factory wire carries. */
public enum CircuitKind {
  SUPPLY,
  GROUND,
  SIGNAL
}
