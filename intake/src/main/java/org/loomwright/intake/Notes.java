package org.loomwright.intake;

import java.util.Optional;
import org.loomwright.model.evidence.Evidence;

/** Notes of evidence, several of them kept apart by semicolons. */
final class Notes {
  private static final String BETWEEN = "; ";

  private Notes() {}

  static String joined(String first, String second) {
    return first.isEmpty() ? second : second.isEmpty() ? first : first + BETWEEN + second;
  }

  /** Whether a note stands in the evidence already. */
  static boolean has(Optional<Evidence> evidence, Optional<String> note) {
    return note.isEmpty()
        || evidence
            .flatMap(Evidence::note)
            .map(it -> (BETWEEN + it + BETWEEN).contains(BETWEEN + note.get() + BETWEEN))
            .orElse(false);
  }

  /** The evidence with one more note. */
  static Evidence with(Evidence evidence, Optional<String> note) {
    if (has(Optional.of(evidence), note)) {
      return evidence;
    }
    return new Evidence(
        evidence.how(),
        evidence.when(),
        evidence.by(),
        Optional.of(joined(evidence.note().orElse(""), note.orElse(""))),
        evidence.photo());
  }
}
