package org.loomwright.planner.guide;

import java.util.Map;
import java.util.Set;
import org.loomwright.model.design.Guide;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.plan.Walker;

/** Questions counted build by build: slow but obviously right. */
public final class Counted {
  private Counted() {}

  /** Questions asked on average, each build weighing as much as its values are common. */
  public static double questions(Vehicle vehicle, Guide guide, Set<Map<String, String>> all) {
    double asked = 0;
    double whole = 0;
    for (Map<String, String> build : all) {
      double weight = weight(vehicle, build);
      long here =
          Walker.asFarAsItGoes(guide, build).stream().filter(it -> it.ask().isPresent()).count();
      asked += weight * here;
      whole += weight;
    }
    return asked / whole;
  }

  private static double weight(Vehicle vehicle, Map<String, String> build) {
    double weight = 1;
    for (Trait trait : vehicle.traits()) {
      weight *=
          trait.values().stream()
              .filter(it -> it.id().equals(build.get(trait.id())))
              .findFirst()
              .orElseThrow()
              .share()
              .map(it -> it.fraction())
              .orElse(1.0 / trait.values().size());
    }
    return weight;
  }
}
