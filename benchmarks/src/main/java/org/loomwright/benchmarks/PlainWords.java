package org.loomwright.benchmarks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;

/**
 * Row and place of each cavity, found as one would with a finger: for each cavity, count the rows
 * above it and the cavities left of it, asking every other cavity. Knows the wire side with the
 * latch up only, and neither corners nor the shorter of two ways to count.
 */
final class PlainWords {
  private PlainWords() {}

  static Map<String, String> of(Housing housing) {
    Map<String, String> words = new LinkedHashMap<>();
    for (Cavity it : housing.cavities()) {
      int above = 0;
      for (Cavity first : housing.cavities()) {
        if (first.y().mm() < it.y().mm() - level(it, first) && isFirstOfRow(first, housing)) {
          above++;
        }
      }
      int left = 0;
      for (Cavity other : housing.cavities()) {
        if (isLevel(it, other) && other.x().mm() < it.x().mm()) {
          left++;
        }
      }
      words.put(
          it.number(), "row " + (above + 1) + " from the top, " + (left + 1) + " from the left");
    }
    return words;
  }

  private static boolean isFirstOfRow(Cavity cavity, Housing housing) {
    List<Cavity> all = housing.cavities();
    return all.stream().noneMatch(it -> isLevel(it, cavity) && it.x().mm() < cavity.x().mm());
  }

  private static boolean isLevel(Cavity one, Cavity other) {
    return Math.abs(one.y().mm() - other.y().mm()) < level(one, other);
  }

  private static double level(Cavity one, Cavity other) {
    return 0.5 * Math.min(one.height().mm(), other.height().mm());
  }
}
