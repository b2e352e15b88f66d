package org.loomwright.drawing;

/** How a cavity is told apart in a face; shape and words go with every shade. */
public enum CavityMark {
  /** Filled by the kit: a dark octagon with a light number. */
  FILLED("filled"),
  /** Closed with a cavity plug: a dashed frame with struck corners. */
  PLUGGED("cavity plug"),
  /** The cavity a step speaks of: a larger dark octagon with a ring round it. */
  SOUGHT("the one meant");

  private final String words;

  CavityMark(String words) {
    this.words = words;
  }

  /** The mark in words, for a legend. */
  public String words() {
    return words;
  }
}
