package org.loomwright.drawing.ink;

import org.loomwright.model.colour.PlainColour;

/** Inks for the colours of wires. A word or a letter code stands beside them wherever they are. */
public final class WireInk {
  /** Edge of everything drawn in a wire's colour, so that light colours stand out on paper. */
  public static final String EDGE = "#333";

  private WireInk() {}

  /** The ink of a plain colour, far enough from all others to be told apart on a screen. */
  public static String of(PlainColour colour) {
    return switch (colour) {
      case BLACK -> "#1b1b1b";
      case BROWN -> "#8a5a33";
      case RED -> "#d62323";
      case ORANGE -> "#f28a1e";
      case YELLOW -> "#f6dc3c";
      case GREEN -> "#2f9e44";
      case BLUE -> "#2f5fc4";
      case VIOLET -> "#8746b8";
      case GREY -> "#969696";
      case WHITE -> "#ffffff";
      case PINK -> "#f4a3bd";
      case GOLD -> "#c9a227";
      case TURQUOISE -> "#35b8b0";
      case SILVER -> "#c9ced3";
    };
  }
}
