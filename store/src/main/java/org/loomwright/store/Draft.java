package org.loomwright.store;

import java.util.List;

/**
 * A document someone wants to save.
 *
 * @param key which document
 * @param content its text: a JSON object whose "kind" and "id" are those of the key
 * @param by who saves, and why
 * @param papers papers that were made of this very text, to be kept with it for good; such a text
 *     is never merged with what others saved meanwhile
 */
public record Draft(DocumentKey key, String content, Signature by, List<byte[]> papers) {
  /** Longest text taken, characters. */
  public static final int LONGEST = 16_000_000;

  public Draft {
    papers = List.copyOf(papers);
  }

  /** A draft without papers. */
  public Draft(DocumentKey key, String content, Signature by) {
    this(key, content, by, List.of());
  }
}
