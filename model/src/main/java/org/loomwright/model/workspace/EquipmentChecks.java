package org.loomwright.model.workspace;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.equipment.Demand;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.json.Nearest;
import org.loomwright.model.json.Paths;

/**
 * Checks a piece of equipment. Its conditions are checked with the kits that fit it to a vehicle.
 */
final class EquipmentChecks {
  private final Scope scope;
  private final Equipment equipment;
  private final PartNames parts;

  private EquipmentChecks(Scope scope, Equipment equipment, PartNames parts) {
    this.scope = scope;
    this.equipment = equipment;
    this.parts = parts;
  }

  static void check(Scope scope, Equipment equipment, PartNames parts) {
    new EquipmentChecks(scope, equipment, parts).checkAll();
  }

  private void checkAll() {
    scope.unique(equipment.plugs(), "id", Plug::id);
    for (Plug plug : equipment.plugs()) {
      scope.reference(plug, "matesWith", parts.names(), Sort.HOUSING, plug.matesWith());
      scope.unique(plug.pins(), "cavity", Pin::cavity);
      for (Pin pin : plug.pins()) {
        parts
            .wrongEnd(plug.matesWith(), pin.cavity())
            .ifPresent(message -> scope.problem(pin, "cavity", pin.cavity(), message));
        pin.need().ifPresent(need -> need(plug.id() + " " + pin.cavity(), need));
      }
    }
    demands(equipment.modules());
    demands(equipment.coding());
  }

  private void demands(List<Demand> demands) {
    for (Demand demand : demands) {
      if (demand.metWhen().isUnknown()) {
        scope.problem(
            demand,
            "metWhen",
            "unknown",
            "'unknown' can't stand here, as nothing tells how to find out; write a condition on the"
                + " vehicle's traits");
      }
    }
  }

  private void need(String self, Need need) {
    pins(self, need, "shareWith", need.shareWith());
    pins(self, need, "apartFrom", need.apartFrom());
    need.returnsBy().ifPresent(pin -> returnsBy(need, pin));
    if (!scope.sound(need)) {
      return;
    }
    if (need.kind() != NeedKind.GROUND && need.feed().isEmpty()) {
      scope.problem(
          need,
          "feed",
          "",
          "a supply or signal needs 'feed': a supply kind by DIN 72552 such as \"30\", or the name"
              + " of the signal");
    }
    if (need.peak().isPresent() != need.peakTime().isPresent()) {
      boolean noTime = need.peak().isPresent();
      scope.problem(
          need,
          noTime ? "peakTime" : "peak",
          "",
          noTime ? "a peak needs its 'peakTime'" : "a 'peakTime' needs its 'peak'");
    }
    need.peak()
        .ifPresent(peak -> scope.ordered(need, "continuous", need.continuous(), "peak", peak));
    need.duty()
        .filter(duty -> duty.fraction() > 1)
        .ifPresent(
            duty ->
                scope.problem(
                    need,
                    "duty",
                    duty.text(),
                    "\"" + duty + "\" can't be right: 100 % is always on"));
    need.minimumVoltage()
        .ifPresent(least -> scope.aboveZero(need, "minimumVoltage", least.volts(), least.text()));
  }

  private void returnsBy(Need need, String name) {
    if (need.kind() == NeedKind.GROUND) {
      scope.problem(
          need, "returnsBy", name, "a ground returns by itself; leave 'returnsBy' out here");
      return;
    }
    List<String> grounds = new ArrayList<>();
    for (Plug plug : equipment.plugs()) {
      for (Pin pin : plug.pins()) {
        if (pin.need().filter(it -> it.kind() == NeedKind.GROUND).isPresent()) {
          grounds.add(plug.id() + " " + pin.cavity());
        }
      }
    }
    if (!grounds.contains(name) && scope.sound(equipment)) {
      scope.problem(
          need,
          "returnsBy",
          name,
          "there is no ground pin '"
              + name
              + "'; a pin is written as PLUG PIN"
              + Nearest.hint(name, "the grounds are", grounds));
    }
  }

  private void pins(String self, Need need, String key, List<String> pins) {
    List<String> all = new ArrayList<>();
    for (Plug plug : equipment.plugs()) {
      plug.pins().forEach(pin -> all.add(plug.id() + " " + pin.cavity()));
    }
    for (int i = 0; i < pins.size(); i++) {
      String pin = pins.get(i);
      String at = Paths.item(key, i);
      if (pin.equals(self)) {
        scope.problem(need, at, pin, "'" + pin + "' is the pin itself; name another one");
      } else if (!all.contains(pin) && scope.sound(equipment)) {
        scope.problem(
            need,
            at,
            pin,
            "there is no pin '"
                + pin
                + "'; a pin is written as PLUG PIN"
                + Nearest.hint(pin, "the pins are", all));
      }
    }
  }
}
