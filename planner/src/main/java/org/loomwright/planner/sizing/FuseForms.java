package org.loomwright.planner.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.parts.Parts;
import org.loomwright.physics.SumException;
import org.loomwright.physics.protection.FuseFamily;
import org.loomwright.physics.protection.FuseRerating;

/** Fuse forms as slots and parts name them, and the fuses on file for each. */
public final class FuseForms {
  private FuseForms() {}

  /** The opening-time family of a form, empty when none is known. */
  public static Optional<FuseFamily> family(String form) {
    return switch (form) {
      case "blade" -> Optional.of(FuseFamily.REGULAR_BLADE);
      case "small blade" -> Optional.of(FuseFamily.SMALL_BLADE);
      case "large blade" -> Optional.of(FuseFamily.LARGE_BLADE);
      case "cartridge" -> Optional.of(FuseFamily.CARTRIDGE);
      case "strip 30" -> Optional.of(FuseFamily.STRIP_30);
      case "strip 51" -> Optional.of(FuseFamily.STRIP_51);
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
      KitOrder order, String form, FuseSpot spot, Load load, double mostA) {
    return smallest(order, form, spot, load, mostA)
        .or(
            () ->
                onFile(order.parts(), form).stream()
                    .filter(it -> it.rating().amperes() <= mostA + 1e-9)
                    .reduce((smaller, larger) -> larger));
  }

  /**
   * The smallest fuse on file that carries a load where it sits and rides out its peak, warm as it
   * is there. None where the spot is hotter or colder than the re-rating is known for.
   *
   * @param mostA largest rating allowed
   */
  public static Optional<Fuse> smallest(
      KitOrder order, String form, FuseSpot spot, Load load, double mostA) {
    FuseLoading loading = FuseLoading.of(order.rules());
    try {
      return family(form).stream()
          .flatMap(
              family -> {
                double share = loading.at(family, spot).share();
                double warm = FuseRerating.factor(family, spot.ambientC());
                return onFile(order.parts(), form).stream()
                    .filter(it -> it.rating().amperes() <= mostA + 1e-9)
                    .filter(it -> it.rating().amperes() * share >= load.continuousA() - 1e-9)
                    .filter(it -> ridesOut(family, it.rating().amperes(), load, warm));
              })
          .findFirst();
    } catch (SumException outsideTheSums) {
      return Optional.empty();
    }
  }

  /** A warm fuse opens as one of a smaller rating. */
  private static boolean ridesOut(FuseFamily family, double ratingA, Load load, double warm) {
    return !load.hasPeak()
        || new org.loomwright.physics.protection.Fuse(family, ratingA)
                .shortestOpeningS(load.peakA() / warm)
            >= load.peakTimeS();
  }
}
