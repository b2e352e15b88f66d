package org.loomwright.model.json;

/** Spells the way to a value in a document. */
public final class Paths {
  private Paths() {}

  /** The path of a key inside the object at {@code path}, e.g. {@code tell.place}. */
  public static String key(String path, String key) {
    boolean plain =
        !key.isEmpty()
            && key.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || c == '-' || c == '_');
    if (!plain) {
      return path + "[\"" + Values.printable(key) + "\"]";
    }
    return path.isEmpty() ? key : path + "." + key;
  }

  /** The path of an item of the list at {@code path}, counted from 0, e.g. {@code runs[3]}. */
  public static String item(String path, int index) {
    return path + "[" + index + "]";
  }
}
