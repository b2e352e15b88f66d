package org.loomwright.model.design;

import java.util.List;

/**
 * The gap of one need over all builds; the parts are disjoint and cover every possible build.
 *
 * @param need need id, "EQUIPMENT/PLUG/PIN"
 * @param words the need in words
 * @param parts parts
 */
public record NeedGap(String need, String words, List<GapPart> parts) {
  public NeedGap {
    parts = List.copyOf(parts);
  }
}
