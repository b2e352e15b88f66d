package org.loomwright.web.view;

import java.util.Locale;
import org.loomwright.model.design.Verdict;
import org.loomwright.planner.difference.Change;

/** Whether a change is for the better, by sign and word. */
public final class Weights {
  /** So many changes tell the story; the others are folded away. */
  public static final int FIRST = 8;

  private Weights() {}

  /** Sign and word. */
  public static String sign(Change change) {
    return switch (change.weight()) {
      case WORSE -> "▼ worse:";
      case BETTER -> "▲ better:";
      case NEUTRAL -> "● changed:";
    };
  }

  /** Sign of a verdict. */
  public static String sign(Verdict verdict) {
    return switch (verdict) {
      case HOLDS -> "✓";
      case MARGINAL -> "▲";
      case FAILS -> "✕";
    };
  }

  /** Class of a verdict. */
  public static String css(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT);
  }

  /** Class of the line. */
  public static String css(Change change) {
    return switch (change.weight()) {
      case WORSE -> "worse";
      case BETTER -> "better";
      case NEUTRAL -> "other";
    };
  }
}
