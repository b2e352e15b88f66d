package org.loomwright.model.vehicle;

/** What the vehicle's maker allows on its own wires. */
public enum SplicePolicy {
  NONE,
  CRIMP,
  CRIMP_OR_SOLDER
}
