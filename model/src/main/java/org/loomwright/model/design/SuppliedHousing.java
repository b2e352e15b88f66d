package org.loomwright.model.design;

import java.util.List;

/**
 * A housing that the kit brings.
 *
 * @param id id, e.g. "H1"
 * @param part housing part
 * @param place where it ends up
 * @param matesWith plug of the equipment, in words
 * @param used cavities filled
 * @param plugged cavities closed with a cavity plug
 */
public record SuppliedHousing(
    String id,
    String part,
    String place,
    String matesWith,
    List<String> used,
    List<String> plugged) {
  public SuppliedHousing {
    used = List.copyOf(used);
    plugged = List.copyOf(plugged);
  }
}
