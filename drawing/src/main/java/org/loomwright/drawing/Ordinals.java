package org.loomwright.drawing;

/** Counting words for positions. */
final class Ordinals {
  private static final String[] WORDS = {
    "first",
    "second",
    "third",
    "fourth",
    "fifth",
    "sixth",
    "seventh",
    "eighth",
    "ninth",
    "tenth",
    "eleventh",
    "twelfth"
  };

  private Ordinals() {}

  /**
   * The ordinal of a place in a line.
   *
   * @param place 1 for the first
   */
  static String of(int place) {
    if (place <= WORDS.length) {
      return WORDS[place - 1];
    }
    int tens = place % 100;
    String ending =
        tens >= 11 && tens <= 13
            ? "th"
            : switch (place % 10) {
              case 1 -> "st";
              case 2 -> "nd";
              case 3 -> "rd";
              default -> "th";
            };
    return place + ending;
  }

  /**
   * Words for one of several in a line, counted from the nearer end.
   *
   * @param index 0 for the first
   * @param count how many there are, two or more
   * @param line words of the line
   */
  static Phrase inLine(int index, int count, Line line) {
    if (index == 0) {
      return Phrase.plain(line.first());
    }
    if (index == count - 1) {
      return Phrase.plain(line.last());
    }
    if (count % 2 == 1 && index == count / 2) {
      return Phrase.plain(line.middle());
    }
    boolean nearFirst = index < count / 2;
    int place = nearFirst ? index + 1 : count - index;
    return new Phrase(
        of(place) + line.noun() + " from the " + (nearFirst ? line.from() : line.to()), place);
  }

  /**
   * Words of a line.
   *
   * @param first word for the first, e.g. "leftmost"
   * @param last word for the last
   * @param middle word for the one in the middle of an odd number
   * @param noun what is counted with a leading space, or empty
   * @param from where counting starts at the first, e.g. "left"
   * @param to where counting starts at the last, e.g. "right"
   */
  record Line(String first, String last, String middle, String noun, String from, String to) {}
}
