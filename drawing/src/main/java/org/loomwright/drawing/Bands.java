package org.loomwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Sorts things along one direction into bands: rows, columns or rings. Gives an answer only when a
 * person would see the same bands: those that are level lie well within half a cavity, and bands do
 * not overlap.
 */
final class Bands {
  /** Centres nearer than this share of the smaller cavity are level. */
  private static final double LEVEL = 0.5;

  /** Centres of one band may differ by this share of its smallest cavity. */
  private static final double SPREAD = 0.35;

  /** Neighbouring bands may overlap by this share of the smaller cavity. */
  private static final double OVERLAP = 0.25;

  private Bands() {}

  /**
   * Bands in ascending order, or empty when they are not plain to see.
   *
   * @param centre position along the direction
   * @param extent size along the direction
   */
  static <T> Optional<List<List<T>>> of(
      List<T> things, ToDoubleFunction<T> centre, ToDoubleFunction<T> extent) {
    List<T> sorted = new ArrayList<>(things);
    sorted.sort(Comparator.comparingDouble(centre));
    List<List<T>> bands = new ArrayList<>();
    List<T> band = new ArrayList<>();
    for (T thing : sorted) {
      if (!band.isEmpty()) {
        T last = band.get(band.size() - 1);
        double gap = centre.applyAsDouble(thing) - centre.applyAsDouble(last);
        double size = Math.min(extent.applyAsDouble(thing), extent.applyAsDouble(last));
        if (gap >= LEVEL * size) {
          bands.add(List.copyOf(band));
          band.clear();
        }
      }
      band.add(thing);
    }
    if (!band.isEmpty()) {
      bands.add(List.copyOf(band));
    }
    return arePlain(bands, centre, extent) ? Optional.of(bands) : Optional.empty();
  }

  /** True when things of one band stand well apart in the other direction. */
  static <T> boolean areApart(
      List<T> things, ToDoubleFunction<T> centre, ToDoubleFunction<T> extent) {
    return of(things, centre, extent).map(bands -> bands.size() == things.size()).orElse(false);
  }

  private static <T> boolean arePlain(
      List<List<T>> bands, ToDoubleFunction<T> centre, ToDoubleFunction<T> extent) {
    double reached = Double.NEGATIVE_INFINITY;
    double smallestBefore = Double.POSITIVE_INFINITY;
    for (List<T> band : bands) {
      double smallest = band.stream().mapToDouble(extent).min().orElse(0);
      double spread =
          centre.applyAsDouble(band.get(band.size() - 1)) - centre.applyAsDouble(band.get(0));
      double start =
          band.stream()
              .mapToDouble(it -> centre.applyAsDouble(it) - extent.applyAsDouble(it) / 2)
              .min()
              .orElse(0);
      double end =
          band.stream()
              .mapToDouble(it -> centre.applyAsDouble(it) + extent.applyAsDouble(it) / 2)
              .max()
              .orElse(0);
      if (spread > SPREAD * smallest
          || reached - start > OVERLAP * Math.min(smallest, smallestBefore)) {
        return false;
      }
      reached = Math.max(reached, end);
      smallestBefore = Math.min(smallestBefore, smallest);
    }
    return true;
  }
}
