package org.loomwright.drawing.strip;

/** Symbols of devices and joints, after IEC 60617 (forms from memory). */
public enum Symbol {
  /** Battery or cell: long line positive, short line negative. */
  BATTERY("battery"),
  /** Fuse: a rectangle with the line running through. */
  FUSE("fuse"),
  /** Plug contact in its socket contact. */
  CONTACT_PAIR("contact pair"),
  /** Make contact, drawn open. */
  SWITCH("switch"),
  /** Joint of conductors: a dot. */
  SPLICE("splice"),
  /** Connection to the body: a bar with slanted strokes, on a branch of the line. */
  GROUND_POINT("ground point"),
  /** The body itself as a conductor: a double line. */
  BODY("body"),
  /** Resistor or any load: a rectangle. */
  LOAD("load"),
  /** Any other device: a square. */
  UNIT("unit");

  private final String words;

  Symbol(String words) {
    this.words = words;
  }

  /** The symbol in words, for a legend. */
  public String words() {
    return words;
  }
}
