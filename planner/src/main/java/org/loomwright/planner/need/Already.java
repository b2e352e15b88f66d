package org.loomwright.planner.need;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.planner.builds.Region;

/**
 * Which builds already wire a need, and by which circuit.
 *
 * @param full circuit that meets the need, with the builds on which it does
 * @param partly builds on which a wire of the right kind is there but dead or too weak
 * @param reasons why those builds are only partly served
 */
public record Already(Map<Circuit, Region> full, Region partly, List<String> reasons) {
  public Already {
    full = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(full));
    reasons = List.copyOf(reasons);
  }

  /** Builds on which the need is met without any added lead. */
  public Region met(Facts facts) {
    return full.values().stream().reduce(facts.builds().none(), Region::or);
  }

  /** Looks at the circuits that end where the need's pin will be. */
  public static Already of(NeedAt need, Facts facts, Rules rules) {
    Map<Circuit, Region> full = new LinkedHashMap<>();
    Region partly = facts.builds().none();
    List<String> reasons = new ArrayList<>();
    Connector connector = need.mount().connector().flatMap(facts.vehicle()::connector).orElse(null);
    if (connector != null) {
      for (Circuit circuit : facts.landing(connector.id(), need.pin().cavity())) {
        Region there = facts.present(circuit).and(facts.present(connector));
        if (there.isEmpty() || !serves(circuit, need)) {
          continue;
        }
        String weak = weakness(circuit, need, rules, facts);
        Region alive = there.and(facts.alive(circuit));
        if (weak.isEmpty()) {
          full.put(circuit, alive);
        } else {
          alive = facts.builds().none();
          reasons.add(weak);
        }
        Region dead = there.minus(alive);
        if (!dead.isEmpty()) {
          partly = partly.or(dead);
          if (weak.isEmpty()) {
            reasons.add(circuit.name() + " is there, but its slot is not fed");
          }
        }
      }
    }
    full.values().removeIf(Region::isEmpty);
    return new Already(full, partly, reasons);
  }

  private static boolean serves(Circuit circuit, NeedAt need) {
    return switch (need.need().kind()) {
      case GROUND -> circuit.kind() == CircuitKind.GROUND;
      case SUPPLY ->
          circuit.kind() == CircuitKind.SUPPLY && circuit.feed().equals(need.need().feed());
      case SIGNAL ->
          circuit.kind() == CircuitKind.SIGNAL && circuit.feed().equals(need.need().feed());
    };
  }

  // A factory wire made for this very pin may be loaded as the factory loads it; one that also
  // serves other ends must have room beside their load.
  private static String weakness(Circuit circuit, NeedAt need, Rules rules, Facts facts) {
    if (need.need().leastArea().isPresent()
        && circuit.wire().areaMm2() < need.need().leastArea().get().areaMm2() - 1e-9) {
      return circuit.name()
          + " is thinner than the "
          + need.need().leastArea().get().text()
          + " asked for";
    }
    if (need.need().kind() == NeedKind.GROUND || circuit.fuse().isEmpty()) {
      return "";
    }
    double fuseA = circuit.fuse().get().amperes();
    double otherA =
        circuit.to().size() > 1 ? circuit.load().map(load -> load.amperes()).orElse(0.0) : 0;
    double limitA = HostLimit.of(circuit, facts.vehicle(), rules) * fuseA;
    if (otherA + need.currentA() > limitA + 1e-9) {
      return circuit.name()
          + " has no room for it behind its "
          + circuit.fuse().get().text()
          + " fuse";
    }
    if (need.need().fuseAtMost().isPresent()
        && fuseA > need.need().fuseAtMost().get().amperes() + 1e-9) {
      return circuit.name() + " is fused higher than allowed";
    }
    return "";
  }
}
