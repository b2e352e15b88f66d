package org.loomwright.model.workspace;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.loomwright.model.json.Paths;

/** One document under check, and the place where its problems go. */
final class Scope {
  private final Source source;
  private final List<Problem> problems;

  Scope(Source source, List<Problem> problems) {
    this.source = source;
    this.problems = problems;
  }

  Source source() {
    return source;
  }

  /** Where a record of the document was read from; empty for the document itself. */
  String path(Object owner) {
    String path = source.bound().paths().get(owner);
    if (path == null) {
      throw new IllegalStateException("not of " + source.file() + ": " + owner);
    }
    return path;
  }

  /** Whether a record was read from the document, rather than made up after a refusal. */
  boolean known(Object owner) {
    return source.bound().paths().containsKey(owner);
  }

  /** Whether a record has all its own values, so that they may be compared with each other. */
  boolean sound(Object owner) {
    return known(owner) && !source.bound().faulty().contains(owner);
  }

  /**
   * Notes a problem.
   *
   * @param owner record of the document
   * @param key key in it, or "key[2]" for an item of a list; empty for the record as a whole
   */
  void problem(Object owner, String key, String value, String message) {
    String path = path(owner);
    String at = path.isEmpty() || key.isEmpty() ? path + key : path + "." + key;
    problems.add(new Problem(source.file(), at, value, message));
  }

  /** Notes a reference that leads nowhere. */
  void reference(Object owner, String key, Names names, Sort sort, String id) {
    names.wrong(sort, id).ifPresent(message -> problem(owner, key, id, message));
  }

  /** Notes each reference of a list that leads nowhere. */
  void references(Object owner, String key, Names names, Sort sort, List<String> ids) {
    for (int i = 0; i < ids.size(); i++) {
      reference(owner, Paths.item(key, i), names, sort, ids.get(i));
    }
  }

  /** Notes each id that an earlier item of the list has already. */
  <T> void unique(List<T> items, String key, Function<T, String> id) {
    unique(items, key, id, new HashMap<>());
  }

  /** The same for several lists that share their ids, one after the other. */
  <T> void unique(List<T> items, String key, Function<T, String> id, Map<String, String> seen) {
    for (T item : items) {
      String name = id.apply(item);
      String first = name.isEmpty() ? null : seen.putIfAbsent(name, path(item));
      if (first != null) {
        problem(
            item, key, name, "'" + name + "' is already used by " + first + "; each needs its own");
      }
    }
  }

  /** Notes a value that must be above zero and is not. */
  void aboveZero(Object owner, String key, double number, String text) {
    if (!(number > 0)) {
      problem(owner, key, text, "\"" + text + "\" can't be right: it must be more than zero");
    }
  }

  /** Notes a pair of bounds the wrong way round. */
  <T extends Comparable<T>> void ordered(
      Object owner, String leastKey, T least, String mostKey, T most) {
    if (sound(owner) && least.compareTo(most) > 0) {
      problem(
          owner,
          leastKey,
          least.toString(),
          "\"" + least + "\" is more than '" + mostKey + "', which is \"" + most + "\"");
    }
  }
}
