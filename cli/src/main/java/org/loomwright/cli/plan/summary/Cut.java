package org.loomwright.cli.plan.summary;

import java.util.List;
import java.util.Optional;

/**
 * A long list cut to what a screen has room for.
 *
 * @param shown what is shown
 * @param more words that say how much is left out, empty when nothing is
 */
record Cut<T>(List<T> shown, Optional<String> more) {
  Cut {
    shown = List.copyOf(shown);
  }

  /**
   * The first so many of a list. One more is shown rather than a line that says "1 more".
   *
   * @param most number shown of a longer list
   * @param where where the rest is found
   */
  static <T> Cut<T> of(List<T> all, int most, String where) {
    if (all.size() <= most + 1) {
      return new Cut<>(all, Optional.empty());
    }
    return new Cut<>(
        all.subList(0, most), Optional.of("and " + (all.size() - most) + " more " + where));
  }
}
