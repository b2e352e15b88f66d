package org.loomwright.model.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Who answers for the work.
 *
 * @param by who
 * @param when day, such as 2026-03-04
 * @param words what they add
 * @param papers papers as they were signed: name of the file to the SHA-256 of its bytes; empty
 *     where none were kept
 */
public record SignOff(String by, String when, Optional<String> words, Map<String, String> papers) {
  public SignOff {
    papers = Collections.unmodifiableMap(new LinkedHashMap<>(papers));
  }

  /** A sign-off of which no papers are kept. */
  public SignOff(String by, String when, Optional<String> words) {
    this(by, when, words, Map.of());
  }
}
