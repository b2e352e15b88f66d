package org.loomwright.web.edit;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.loomwright.model.condition.Condition;
import tools.jackson.databind.JsonNode;

/** Proposes ids for what is new. */
public final class NewId {
  private static final int LONGEST = 40;

  private NewId() {}

  /**
   * An id from what a record is called: lower case, digits and hyphens.
   *
   * @param noun what to start from when the record is called nothing
   * @param taken ids that are used already
   */
  static String of(JsonNode record, String noun, Set<String> taken) {
    String ends = (text(record, "from") + " " + text(record, "to")).strip();
    String said =
        Stream.of(text(record, "name"), text(record, "words"), ends)
            .filter(it -> !slug(it).isEmpty())
            .findFirst()
            .orElse(noun);
    return of(said, taken);
  }

  /** An id from some words. */
  public static String of(String words, Set<String> taken) {
    String slug = slug(words);
    String start = Condition.isName(slug) ? slug : slug.isEmpty() ? "new" : slug + "-1";
    String id = start;
    for (int i = 2; taken.contains(id); i++) {
      id = start + "-" + i;
    }
    return id;
  }

  private static String slug(String words) {
    String plain =
        Normalizer.normalize(words, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replace("ß", "ss")
            .replaceAll("[^a-z0-9]+", "-");
    String cut = plain.substring(0, Math.min(LONGEST, plain.length()));
    return cut.replaceAll("^-|-$", "");
  }

  private static String text(JsonNode record, String key) {
    return record.path(key).asString("");
  }
}
