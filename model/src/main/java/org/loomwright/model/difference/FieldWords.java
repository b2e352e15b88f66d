package org.loomwright.model.difference;

import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Keys of documents in words. */
final class FieldWords {
  /** Keys that are no nouns, so that "from was x" needs a colon to be read. */
  private static final Set<String> NO_NOUNS =
      Set.of("from", "to", "at", "by", "how", "when", "near", "draws", "exclude", "tell", "expect");

  /** Keys that a person says as an adjective: "is now wet". */
  private static final Set<String> ADJECTIVES = Set.of("wet", "closed", "round", "sealed");

  /** Keys whose noun is left out in documents. */
  private static final Map<String, String> FULL =
      Map.of("continuous", "continuous current", "peak", "peak current");

  private FieldWords() {}

  /** "fuseBlocks" as "fuse blocks". */
  static String of(String key) {
    if (key.isBlank()) {
      return "the entry without a name";
    }
    String full = FULL.get(key);
    if (full != null) {
      return full;
    }
    return Text.line(
        key.replaceAll("(?<=[\\p{Ll}\\d])(?=\\p{Lu})", " ").toLowerCase(Locale.ROOT), Text.NAME);
  }

  /** What one item of a list is called: "fuseBlocks" gives "fuse block". */
  static String singular(String key) {
    if (key.isBlank()) {
      return "item";
    }
    String words = of(key);
    if (words.endsWith("ies") && words.length() > 4) {
      return words.substring(0, words.length() - 3) + "y";
    }
    if (words.endsWith("shes") || words.endsWith("ches") || words.endsWith("xes")) {
      return words.substring(0, words.length() - 2);
    }
    boolean plural = words.endsWith("s") && !words.endsWith("ss") && words.length() > 2;
    return plural ? words.substring(0, words.length() - 1) : words;
  }

  /** The field with what it takes to go on with "was" or "is". */
  static String lead(String key) {
    return of(key) + (NO_NOUNS.contains(key) || key.endsWith("When") ? ":" : "");
  }

  static boolean isAdjective(String key) {
    return ADJECTIVES.contains(key);
  }
}
