package org.loomwright.drawing;

import java.util.Comparator;

/**
 * A position in words, with what makes it short.
 *
 * @param text words
 * @param counted how far one has to count in all; 0 for words such as "leftmost"
 */
record Phrase(String text, int counted) {
  /** Shorter is: fewer words, then less to count, then fewer letters. */
  static final Comparator<Phrase> SHORTER =
      Comparator.comparingInt(Phrase::words)
          .thenComparingInt(Phrase::counted)
          .thenComparingInt(it -> it.text().length())
          .thenComparing(Phrase::text);

  /** A phrase with nothing to count. */
  static Phrase plain(String text) {
    return new Phrase(text, 0);
  }

  /** How many words it has. */
  int words() {
    return text.split(" ").length;
  }

  /** This and more after a comma. */
  Phrase and(Phrase more) {
    return new Phrase(text + ", " + more.text, counted + more.counted);
  }
}
