package org.loomwright.model.difference;

import java.util.Arrays;

/** Texts cut to what a line can hold. */
final class Text {
  /** Code points shown of a name. */
  static final int NAME = 60;

  /** Code points shown of a value. */
  static final int VALUE = 90;

  /** Code points shown before the first difference of two long texts. */
  private static final int RUN_UP = 30;

  private Text() {}

  /** Two texts, cut so that where they part can be seen. */
  record Pair(String before, String after) {
    static Pair of(String before, String after) {
      int[] one = points(before);
      int[] two = points(after);
      if (one.length <= VALUE && two.length <= VALUE) {
        return new Pair(string(one), string(two));
      }
      int parted = Arrays.mismatch(one, two);
      int start = parted > VALUE / 2 ? wordStart(one, parted - RUN_UP) : 0;
      return new Pair(window(one, start), window(two, start));
    }
  }

  /** One line, cut short with an ellipsis. */
  static String line(String text, int most) {
    int[] points = points(text);
    return points.length <= most
        ? string(points)
        : string(Arrays.copyOf(points, most)).stripTrailing() + "…";
  }

  private static String window(int[] text, int start) {
    int from = Math.min(start, text.length);
    int to = Math.min(text.length, from + VALUE);
    return (from > 0 ? "…" : "")
        + string(Arrays.copyOfRange(text, from, to))
        + (to < text.length ? "…" : "");
  }

  private static int wordStart(int[] text, int at) {
    for (int i = at; i > Math.max(0, at - RUN_UP / 2); i--) {
      if (text[i - 1] == ' ') {
        return i;
      }
    }
    return Math.max(0, at);
  }

  private static int[] points(String text) {
    return text.codePoints()
        .map(
            c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE ? '?' : c)
        .toArray();
  }

  private static String string(int[] points) {
    return new String(points, 0, points.length);
  }
}
