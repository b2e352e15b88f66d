package org.loomwright.model.difference;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.json.Paths;

/**
 * A spot in a document.
 *
 * @param path its path
 * @param subjects things it lies in, in words, outermost first, itself included when it is an item
 * @param field its key, or that of the list it stands in; empty for the document
 * @param item whether it is an item of a list
 */
record Where(String path, List<String> subjects, String field, boolean item) {
  static final Where ROOT = new Where("", List.of(), "", false);

  Where {
    subjects = List.copyOf(subjects);
  }

  /**
   * The value of a key of the object here.
   *
   * @param itself whether the value stands for the whole object
   */
  Where key(String key, boolean itself) {
    String inner = Paths.key(path, key);
    if (itself) {
      return new Where(inner, subjects, field, false);
    }
    boolean named = item || field.isEmpty();
    return new Where(inner, named ? subjects : with(FieldWords.of(field)), key, false);
  }

  /** An item of the list here. */
  Where item(String mark, String words) {
    return new Where(path + "[" + mark + "]", with(words), field, true);
  }

  /** "run sill" or "trait tow-prep: value yes"; empty for the document. */
  String subject() {
    return String.join(": ", subjects);
  }

  /** Words about what lies here, with what it lies in before them. */
  String subjectAnd(String words) {
    return Stream.concat(subjects.stream(), Stream.of(words)).collect(Collectors.joining(": "));
  }

  private List<String> with(String words) {
    return Stream.concat(subjects.stream(), Stream.of(words)).toList();
  }
}
