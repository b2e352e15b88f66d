package org.loomwright.model.evidence;

import java.util.Optional;

/**
 * What a fact rests on.
 *
 * @param how how it is known
 * @param when day it was found, as ISO date
 * @param by who found it
 * @param note what was seen or read
 * @param photo file name of a photo
 */
public record Evidence(
    How how,
    Optional<String> when,
    Optional<String> by,
    Optional<String> note,
    Optional<String> photo) {
  /** Evidence in words for a table, e.g. "measured 2026-03-04, M. Orr". */
  public String words() {
    StringBuilder words = new StringBuilder(how.name().toLowerCase(java.util.Locale.ROOT));
    when.ifPresent(day -> words.append(' ').append(day));
    by.ifPresent(person -> words.append(", ").append(person));
    return words.toString();
  }
}
