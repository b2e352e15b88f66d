package org.loomwright.store;

import java.time.Instant;
import java.util.List;

/**
 * One save of one document, without its text.
 *
 * @param key which document
 * @param number 1 for the first save, then one more each time
 * @param basedOn the revision its author had before them; less than {@code number - 1} after a
 *     merge, 0 for the first
 * @param by who saved, and why
 * @param savedAt when
 * @param contentHash SHA-256 of the text in UTF-8, lower-case hexadecimal
 * @param previousHash hash of the text of the revision before; empty for the first
 * @param retired whether it says that the document is no longer used; its text is then that of the
 *     revision before
 * @param papers hashes of the papers that were made of the text and are kept with it, sorted
 */
public record Revision(
    DocumentKey key,
    long number,
    long basedOn,
    Signature by,
    Instant savedAt,
    String contentHash,
    String previousHash,
    boolean retired,
    List<String> papers) {
  public Revision {
    papers = List.copyOf(papers);
  }
}
