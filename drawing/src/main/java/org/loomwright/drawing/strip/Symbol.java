package org.loomwright.drawing.strip;

/** Symbols of devices and joints, after IEC 60617 (forms from memory). */
public enum Symbol {
  /** Battery or cell: long line positive, short line negative. */
  BATTERY,
  /** Fuse: a rectangle with the line running through. */
  FUSE,
  /** Plug contact in its socket contact. */
  CONTACT_PAIR,
  /** Make contact, drawn open. */
  SWITCH,
  /** Joint of conductors: a dot. */
  SPLICE,
  /** Connection to the body: a bar with slanted strokes, on a branch of the line. */
  GROUND_POINT,
  /** The body itself as a conductor: a double line. */
  BODY,
  /** Resistor or any load: a rectangle. */
  LOAD,
  /** Any other device: a square. */
  UNIT
}
