package org.loomwright.web.map;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/** Ids for what is new, made from names. */
final class NewIds {
  private static final int LONGEST = 40;

  private NewIds() {}

  /**
   * Small letters, digits and hyphens of a name, different from all that are taken.
   *
   * @param name a name, e.g. "the left step"
   * @param otherwise what to call it where the name has no such letters
   */
  static String of(String name, String otherwise, Set<String> taken) {
    String plain =
        Normalizer.normalize(MapWords.bare(name), Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}+", "")
            .replaceAll("[^a-z0-9]+", "-");
    String cut = plain.substring(0, Math.min(LONGEST, plain.length())).replaceAll("^-+|-+$", "");
    String start = cut.isEmpty() ? otherwise : cut;
    String id = start;
    for (int i = 2; taken.contains(id); i++) {
      id = start + "-" + i;
    }
    return id;
  }
}
