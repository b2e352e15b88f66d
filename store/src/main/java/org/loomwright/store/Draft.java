package org.loomwright.store;

/**
 * A document someone wants to save.
 *
 * @param key which document
 * @param content its text: a JSON object whose "kind" and "id" are those of the key
 * @param by who saves, and why
 */
public record Draft(DocumentKey key, String content, Signature by) {
  /** Longest text taken, characters. */
  public static final int LONGEST = 16_000_000;
}
