package org.loomwright.planner.need;

import java.util.Locale;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.kit.Mount;

/**
 * One need of a kit with the pin it belongs to.
 *
 * @param id "EQUIPMENT/PLUG/PIN"
 * @param equipment equipment
 * @param plug plug
 * @param pin pin
 * @param need what the pin needs
 * @param mount where the plug meets the vehicle
 * @param place place of the plug
 */
public record NeedAt(
    String id, Equipment equipment, Plug plug, Pin pin, Need need, Mount mount, String place) {

  // Needs are looked up in tables all the time, and of one kit no two have the same id.
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** The need in words, e.g. "rear heater, blower supply (pin 1): supply 30, 15 A". */
  public String words() {
    String kind =
        need.kind() == NeedKind.GROUND
            ? "ground"
            : need.kind().name().toLowerCase(Locale.ROOT)
                + need.feed().map(feed -> " " + feed).orElse("");
    return equipment.name()
        + ", "
        + pin.name()
        + " (pin "
        + pin.cavity()
        + "): "
        + kind
        + ", "
        + need.continuous().text();
  }

  /** Short name for tables, e.g. "blower supply". */
  public String topic() {
    return pin.name();
  }

  /** Continuous current, ampere. */
  public double currentA() {
    return need.continuous().amperes();
  }
}
