package org.loomwright.papers.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Notes that are named by number where they apply and printed once at the end. */
public final class NoteList {
  private final Map<String, Integer> numbers = new LinkedHashMap<>();

  /** The mark of a note, e.g. "[3]"; the same note keeps its number. */
  public String mark(String note) {
    return "[" + numbers.computeIfAbsent(note, key -> numbers.size() + 1) + "]";
  }

  /** All notes so far with their marks, in order. */
  public List<String> lines() {
    return numbers.entrySet().stream().map(it -> "[" + it.getValue() + "] " + it.getKey()).toList();
  }
}
