package org.loomwright.model.parts;

/** How a splice joins conductors. */
public enum SpliceMethod {
  CRIMP,
  SOLDER
}
