package org.loomwright.model.parts;

/** How a key is moulded. */
public enum KeyForm {
  /** Stands out of the face or its wall. */
  RIB,
  /** Let into the face or its wall. */
  GROOVE
}
