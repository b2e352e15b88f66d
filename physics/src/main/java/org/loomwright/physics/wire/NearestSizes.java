package org.loomwright.physics.wire;

import java.util.ArrayList;
import java.util.List;

/** Names the sizes of a table on both sides of an area that the table does not hold. */
final class NearestSizes {
  private NearestSizes() {}

  /**
   * @param sizes smallest first, not empty
   * @param areaMm2 the area asked for; anything, NaN counts as smaller than all
   * @return one or two labels, the smaller first
   */
  static List<String> of(List<Conductor> sizes, double areaMm2) {
    int smaller = 0;
    while (smaller < sizes.size() && sizes.get(smaller).areaMm2() < areaMm2) {
      smaller++;
    }
    List<String> nearest = new ArrayList<>();
    if (smaller > 0) {
      nearest.add(sizes.get(smaller - 1).label());
    }
    if (smaller < sizes.size()) {
      nearest.add(sizes.get(smaller).label());
    }
    return nearest;
  }
}
