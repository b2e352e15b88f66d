package org.loomwright.model.json;

/**
 * One field of a record, for forms in which a person edits it.
 *
 * @param key key in the document, e.g. "restraintWait"
 * @param label the key in words, e.g. "restraint wait"
 * @param required whether it must not be left out
 * @param meaning what it means, as the published schema says; empty where that says nothing
 * @param shape what stands there
 */
public record FormField(
    String key, String label, boolean required, String meaning, FormShape shape) {

  /** A field that is labelled by its key. */
  public static FormField of(String key, boolean required, String meaning, FormShape shape) {
    return new FormField(key, words(key), required, meaning, shape);
  }

  /** A key in words, e.g. "restraint wait" for "restraintWait". */
  public static String words(String key) {
    return key.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
  }
}
