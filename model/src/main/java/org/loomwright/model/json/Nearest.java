package org.loomwright.model.json;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant by a misspelt one. */
public final class Nearest {
  private static final int LISTED = 12;
  private static final int MOST_EDITS = 3;

  private Nearest() {}

  /**
   * The nearest of the words, if it is near: at most one edit (a letter more, less, changed or
   * swapped with its neighbour) for each three letters, three at most, upper and lower case alike.
   */
  public static Optional<String> to(String word, Collection<String> words) {
    Optional<String> best = Optional.empty();
    int least = MOST_EDITS + 1;
    for (String candidate : words) {
      int longest = Math.max(word.length(), candidate.length());
      int allowed = Math.min(MOST_EDITS, longest / 3);
      if (candidate.isEmpty() || Math.abs(word.length() - candidate.length()) > allowed) {
        continue;
      }
      int edits = edits(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
      if (edits <= allowed && edits < least) {
        least = edits;
        best = Optional.of(candidate);
      }
    }
    return best;
  }

  /** The end of a message: "; did you mean 'x'?" or, when nothing is near, the words there are. */
  public static String hint(String word, String heading, Collection<String> words) {
    return to(word, words)
        .map(near -> "; did you mean '" + near + "'?")
        .orElseGet(() -> words.isEmpty() ? "" : "; " + heading + " " + list(words));
  }

  /** Like {@link #hint}, but with the words there are in any case. */
  public static String fullHint(String word, String heading, Collection<String> words) {
    return to(word, words)
        .map(
            near ->
                "; did you mean '"
                    + near
                    + "'? "
                    + heading.substring(0, 1).toUpperCase(Locale.ROOT)
                    + heading.substring(1)
                    + " "
                    + list(words))
        .orElseGet(() -> hint(word, heading, words));
  }

  /** Some words with commas between them, the first twelve of them if there are many. */
  public static String list(Collection<String> words) {
    String first = String.join(", ", words.stream().limit(LISTED).toList());
    return words.size() > LISTED ? first + " and " + (words.size() - LISTED) + " more" : first;
  }

  /** Edit distance with swaps of neighbours (optimal string alignment). */
  static int edits(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int least = Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1);
        least = Math.min(least, d[i - 1][j - 1] + (same ? 0 : 1));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          least = Math.min(least, d[i - 2][j - 2] + 1);
        }
        d[i][j] = least;
      }
    }
    return d[a.length()][b.length()];
  }
}
