package org.loomwright.model.design;

import java.util.List;

/**
 * A fuse put into a slot.
 *
 * @param block fuse block
 * @param slot slot
 * @param ratingA rating
 * @param part fuse part
 * @param leads leads it protects
 * @param cases cases in which it is fitted
 */
public record FuseFit(
    String block,
    String slot,
    double ratingA,
    String part,
    List<String> leads,
    List<String> cases) {
  public FuseFit {
    leads = List.copyOf(leads);
    cases = List.copyOf(cases);
  }
}
