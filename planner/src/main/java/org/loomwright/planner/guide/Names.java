package org.loomwright.planner.guide;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Shown;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.ServiceRecipe;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Vehicle;

/** Names, recipes and faces of what a step works on. */
final class Names {
  private final KitOrder order;
  private final Vehicle vehicle;

  Names(KitOrder order) {
    this.order = order;
    this.vehicle = order.vehicle();
  }

  String place(String id) {
    return vehicle.place(id).map(Place::name).orElse(id);
  }

  String opening(String id) {
    return vehicle.opening(id).map(Opening::name).orElse(id);
  }

  String circuit(String id) {
    return vehicle.circuit(id).map(Circuit::name).orElse(id);
  }

  /** Where a landing is, e.g. "cavity 3 of the floor connector". */
  String spot(Landing landing) {
    if (landing instanceof Landing.InCavity in) {
      return "cavity "
          + in.cavity()
          + " of "
          + vehicle.connector(in.connector()).map(Connector::name).orElse(in.connector());
    } else if (landing instanceof Landing.InSlot in) {
      return "the load side of slot "
          + in.slot()
          + " of "
          + vehicle.fuseBlock(in.block()).map(FuseBlock::name).orElse(in.block());
    } else if (landing instanceof Landing.OnGround on) {
      return vehicle.ground(on.ground()).map(GroundStud::name).orElse(on.ground());
    } else if (landing instanceof Landing.IntoCircuit into) {
      return circuit(into.circuit()) + " at " + place(into.place());
    } else if (landing instanceof Landing.InHousing in) {
      return "cavity " + in.cavity() + " of the kit's own connector";
    } else if (landing instanceof Landing.Parked parked) {
      return place(parked.place());
    }
    return "the joint of the kit";
  }

  Optional<ServiceRecipe> recipe(Landing landing) {
    if (landing instanceof Landing.InCavity in) {
      return vehicle.connector(in.connector()).map(Connector::recipe);
    } else if (landing instanceof Landing.InSlot in) {
      return vehicle.fuseBlock(in.block()).map(FuseBlock::recipe);
    }
    return Optional.empty();
  }

  Optional<Slot> slot(Landing.InSlot in) {
    return vehicle.fuseBlock(in.block()).flatMap(block -> block.slot(in.slot()));
  }

  /** The face to show beside a landing, in the view the fitter has. */
  Optional<Shown> face(Landing landing) {
    if (landing instanceof Landing.InCavity in) {
      return vehicle
          .connector(in.connector())
          .map(it -> new Shown(it.id(), it.housing(), List.of(in.cavity()), it.view()));
    } else if (landing instanceof Landing.InSlot in) {
      return vehicle
          .fuseBlock(in.block())
          .flatMap(
              block ->
                  block
                      .face()
                      .flatMap(order.parts()::housing)
                      .filter(housing -> housing.cavity(in.slot()).isPresent())
                      .map(Housing::id)
                      .map(id -> new Shown(block.id(), id, List.of(in.slot()), block.view())));
    }
    return Optional.empty();
  }

  /** Crimp tool or splice tool that work on an end in the vehicle needs. */
  Optional<String> tool(Landing landing) {
    String splice =
        landing instanceof Landing.IntoCircuit into
            ? into.splice()
            : landing instanceof Landing.InJoint in ? in.splice() : "";
    if (!splice.isEmpty()) {
      return order.parts().splices().stream()
          .filter(it -> it.id().equals(splice))
          .map(it -> it.tool())
          .findFirst();
    }
    String terminal =
        landing instanceof Landing.InCavity in
            ? in.terminal()
            : landing instanceof Landing.InSlot in
                ? in.terminal()
                : landing instanceof Landing.InHousing in ? in.terminal() : "";
    return order.parts().terminal(terminal).map(it -> it.tool());
  }

  /** A number as a reader wants it: no needless zeros. */
  static String number(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }

  /** A sentence that starts with a capital letter. */
  static String sentence(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
