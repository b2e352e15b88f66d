package org.loomwright.drawing;

/** What is told of a cavity in a face; shape and words go with every shade. */
public enum CavityMark {
  /** Filled by the kit: a dark octagon with a light number. */
  FILLED("filled by this kit", "dark octagon with a light number"),
  /** A wire of the vehicle ends in it: a frame within a frame. */
  WIRED("wired by the factory", "frame within a frame"),
  /** A wire of the vehicle is in it whose other end is loose: a frame with two dark corners. */
  LOOSE("wired by the factory, other end loose", "frame with two dark corners"),
  /** Nothing in it: a bold frame. */
  EMPTY("empty", "bold plain frame"),
  /** Closed with a cavity plug: a dashed frame with struck corners. */
  PLUGGED("closed with a cavity plug", "dashed frame with struck corners"),
  /** Nothing can go in: a grey frame crossed out behind the number. */
  BLOCKED("blocked, nothing can go in", "grey frame crossed out"),
  /** Not the same on all builds, or not known: a dotted frame. */
  UNKNOWN("not the same on every build, or not known", "dotted frame"),
  /** The cavity a step speaks of: a larger dark octagon with a ring round it. */
  SOUGHT("the one meant", "larger dark octagon with a ring round it");

  private final String words;
  private final String shape;

  CavityMark(String words, String shape) {
    this.words = words;
    this.shape = shape;
  }

  /** The mark in words, for a legend. */
  public String words() {
    return words;
  }

  /** How it is drawn, in words. */
  public String shape() {
    return shape;
  }
}
