package org.loomwright.planner.kit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.rules.ElectricDefaults;
import org.loomwright.planner.electrics.Ohms;
import org.loomwright.planner.landing.EndParts;
import org.loomwright.planner.landing.Touch;

/** Resistance of what a lead ends in: of the part where it is on file, else by default. */
final class EndOhms {
  private final KitOrder order;
  private final EndParts parts;
  private final Map<List<Object>, Ohms> known = new HashMap<>();

  EndOhms(KitOrder order) {
    this.order = order;
    this.parts = new EndParts(order);
  }

  /** Resistance of a wire's end at a touch. */
  Ohms of(Touch touch, Wire wire) {
    return known.computeIfAbsent(List.of(touch, wire), key -> find(touch, wire));
  }

  private Ohms find(Touch touch, Wire wire) {
    if (touch instanceof Touch.AtGround) {
      return Ohms.of(ElectricDefaults.groundPoint(order.rules()));
    }
    Optional<Landing> landing = parts.make(touch, wire, 0, false, wire.size().areaMm2());
    if (touch instanceof Touch.AtCircuit || touch instanceof Touch.AtJoint) {
      String id =
          landing
              .map(
                  it ->
                      it instanceof Landing.IntoCircuit into
                          ? into.splice()
                          : it instanceof Landing.InJoint in ? in.splice() : "")
              .orElse("");
      return order.parts().splices().stream()
          .filter(it -> it.id().equals(id))
          .findFirst()
          .map(it -> Ohms.of(ElectricDefaults.splice(order.rules(), it)))
          .orElseGet(() -> Ohms.of(ElectricDefaults.splice(order.rules())));
    }
    return landing
        .flatMap(EndOhms::terminal)
        .flatMap(order.parts()::terminal)
        .map(it -> Ohms.of(ElectricDefaults.contact(order.rules(), it)))
        .orElseGet(() -> Ohms.of(ElectricDefaults.contact(order.rules())));
  }

  private static Optional<String> terminal(Landing landing) {
    if (landing instanceof Landing.InCavity in) {
      return Optional.of(in.terminal());
    } else if (landing instanceof Landing.InHousing in) {
      return Optional.of(in.terminal());
    } else if (landing instanceof Landing.InSlot in) {
      return Optional.of(in.terminal());
    }
    return Optional.empty();
  }
}
