package org.loomwright.store;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.model.design.Verdict;

/**
 * A released kit; it never changes.
 *
 * @param kit id of the kit
 * @param number 1 for the first release of the kit, then one more each time
 * @param pins every revision it was made of with the hash of its text, sorted by document
 * @param verdict holds or marginal
 * @param pack SHA-256 of every file of the pack, by file name
 * @param packKept whether the bytes of these files are kept; not for releases of stores from before
 *     that was so
 * @param by who released, and the reason
 * @param releasedAt when
 */
public record Release(
    String kit,
    long number,
    List<PinnedText> pins,
    Verdict verdict,
    Map<String, String> pack,
    boolean packKept,
    Signature by,
    Instant releasedAt) {
  public Release {
    pins = List.copyOf(pins);
    pack = Collections.unmodifiableMap(new TreeMap<>(pack));
  }

  /**
   * A pinned revision.
   *
   * @param pin which
   * @param contentHash SHA-256 of its text
   */
  public record PinnedText(Pin pin, String contentHash) {}
}
