package org.loomwright.planner.electrics;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.planner.need.NeedAt;

/**
 * Which ground pin a load's current returns through: the one the equipment's document names, else
 * the ground of its plug that returns most, else that of the equipment.
 */
public final class Returns {
  private Returns() {}

  /** The ground of a supply or signal; empty where the equipment has none in the kit. */
  public static Optional<NeedAt> of(NeedAt need, Collection<NeedAt> all) {
    if (need.need().kind() == NeedKind.GROUND) {
      return Optional.empty();
    }
    Comparator<NeedAt> most =
        Comparator.comparingDouble(NeedAt::currentA)
            .thenComparing(NeedAt::id, Comparator.reverseOrder());
    Optional<NeedAt> named =
        need.need()
            .returnsBy()
            .flatMap(
                pin ->
                    all.stream()
                        .filter(it -> isGround(it) && sameEquipment(it, need))
                        .filter(it -> named(it, need, pin))
                        .findFirst());
    return named
        .or(
            () ->
                all.stream()
                    .filter(it -> isGround(it) && sameEquipment(it, need))
                    .filter(it -> it.plug().id().equals(need.plug().id()))
                    .max(most))
        .or(() -> all.stream().filter(it -> isGround(it) && sameEquipment(it, need)).max(most));
  }

  private static boolean named(NeedAt ground, NeedAt need, String pin) {
    return pin.equals(ground.plug().id() + " " + ground.pin().cavity());
  }

  private static boolean isGround(NeedAt need) {
    return need.need().kind() == NeedKind.GROUND;
  }

  private static boolean sameEquipment(NeedAt one, NeedAt other) {
    return one.equipment().id().equals(other.equipment().id());
  }
}
