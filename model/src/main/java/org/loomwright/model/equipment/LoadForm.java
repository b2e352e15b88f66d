package org.loomwright.model.equipment;

/** How a load's current depends on its voltage. */
public enum LoadForm {
  /** The same current at any voltage. */
  CURRENT,
  /** A fixed resistance, such as a heating element or a lamp at its working point. */
  RESISTANCE,
  /** The same power at any voltage, such as a converter: less voltage, more current. */
  POWER
}
