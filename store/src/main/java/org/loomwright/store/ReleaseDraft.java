package org.loomwright.store;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomwright.model.design.Verdict;

/**
 * A kit someone wants to release.
 *
 * @param kit id of the kit
 * @param pins the revisions it was planned from: the kit itself, its vehicle, its equipment, its
 *     parts lists and its rules
 * @param verdict what its proof and checks came to
 * @param pack bytes of every file of its pack by file name, up to 64 MB a file and 200 MB in all
 * @param by who releases; their reason is required where the verdict is marginal
 * @param number number that its papers name; absent where they name none
 */
public record ReleaseDraft(
    String kit,
    List<Pin> pins,
    Verdict verdict,
    Map<String, byte[]> pack,
    Signature by,
    Optional<Long> number) {
  /** A draft whose papers name no number. */
  public ReleaseDraft(
      String kit, List<Pin> pins, Verdict verdict, Map<String, byte[]> pack, Signature by) {
    this(kit, pins, verdict, pack, by, Optional.empty());
  }

  public ReleaseDraft {
    pins = pins.stream().sorted(java.util.Comparator.comparing(Pin::key)).toList();
    pack = Collections.unmodifiableMap(new TreeMap<>(pack));
  }
}
