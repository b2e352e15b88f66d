package org.loomwright.planner.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.parts.Parts;
import org.loomwright.physics.protection.FuseFamily;

/** Fuse forms as slots and parts name them, and the fuses on file for each. */
public final class FuseForms {
  private FuseForms() {}

  /** The opening-time family of a form, empty when none is known. */
  public static Optional<FuseFamily> family(String form) {
    return switch (form) {
      case "blade" -> Optional.of(FuseFamily.REGULAR_BLADE);
      case "small blade" -> Optional.of(FuseFamily.SMALL_BLADE);
      case "large blade" -> Optional.of(FuseFamily.LARGE_BLADE);
      default -> Optional.empty();
    };
  }

  /** Fuses on file for a form, smallest first. */
  public static List<Fuse> onFile(Parts parts, String form) {
    return parts.fuses().stream()
        .filter(it -> it.form().equals(form))
        .sorted(
            Comparator.comparingDouble((Fuse it) -> it.rating().amperes()).thenComparing(Fuse::id))
        .toList();
  }

  /**
   * The smallest fuse on file that carries a load; where none does, the largest allowed, so that
   * the failing check shows by how much it is too small.
   */
  public static Optional<Fuse> best(
      Parts parts, String form, Load load, double loading, double mostA) {
    return smallest(parts, form, load, loading, mostA)
        .or(
            () ->
                onFile(parts, form).stream()
                    .filter(it -> it.rating().amperes() <= mostA + 1e-9)
                    .reduce((smaller, larger) -> larger));
  }

  /**
   * The smallest fuse on file that carries a load and rides out its peak.
   *
   * @param loading most continuous load as share of the rating
   * @param mostA largest rating allowed
   */
  public static Optional<Fuse> smallest(
      Parts parts, String form, Load load, double loading, double mostA) {
    Optional<FuseFamily> family = family(form);
    return onFile(parts, form).stream()
        .filter(
            it -> {
              double ratingA = it.rating().amperes();
              return ratingA * loading >= load.continuousA() - 1e-9
                  && ratingA <= mostA + 1e-9
                  && family.isPresent()
                  && new org.loomwright.physics.protection.Fuse(family.get(), ratingA)
                          .shortestOpeningS(load.peakA())
                      >= load.peakTimeS();
            })
        .findFirst();
  }
}
