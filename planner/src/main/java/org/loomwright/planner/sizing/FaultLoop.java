package org.loomwright.planner.sizing;

import java.util.Optional;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.rules.ElectricDefaults;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.physics.protection.FaultCurrents;
import org.loomwright.physics.wire.Conductor;

/**
 * What feeds a fault behind a fuse, and what it flows through besides the wire.
 *
 * @param lowestV lowest supply at which a fault must clear, V
 * @param highestV highest supply, V
 * @param strongOhm source and cable up to the fuse at their best, ohm
 * @param weakOhm the same at their worst, ohm
 * @param contactsOhm fuse, contacts, ground point and body on the way, ohm
 */
public record FaultLoop(
    double lowestV, double highestV, double strongOhm, double weakOhm, double contactsOhm) {
  /** Temperature a loaded factory wire is taken to have, °C (common practice). */
  private static final double HOST_C = 70;

  /** The loop behind a fuse of the kit. */
  static FaultLoop of(KitOrder order, Section section, org.loomwright.model.parts.Fuse part) {
    return of(order, Optional.of(section), ElectricDefaults.fuse(order.rules(), part));
  }

  /**
   * The loop behind a factory fuse. The circuit's own wire makes the fault at the far end smaller,
   * where its length is on file; right behind the fuse there is none of it.
   *
   * @param section section the fuse hangs on, empty where the vehicle document does not say
   */
  static FaultLoop of(KitOrder order, Optional<Section> section, Circuit circuit, Current rating) {
    double wireOhm =
        circuit
            .length()
            .map(it -> Conductors.of(circuit.wire()).resistanceOhmPerM(HOST_C) * it.mm() / 1000)
            .orElse(0.0);
    return of(order, section, ElectricDefaults.fuse(order.rules(), rating))
        .withContacts(wireOhm + ohms(ElectricDefaults.splice(order.rules())));
  }

  /** The loop behind a fuse of which only the rating is known. */
  static FaultLoop of(KitOrder order, Current rating) {
    return of(order, Optional.empty(), ElectricDefaults.fuse(order.rules(), rating));
  }

  /**
   * Of the feed to a section that is not on file, nothing is counted for the largest fault, and the
   * usual for the smallest. The fuse itself never lessens the largest: what a fuse can interrupt is
   * stated for the current that would flow without it.
   */
  private static FaultLoop of(KitOrder order, Optional<Section> section, Sourced<Resistance> fuse) {
    Vehicle vehicle = order.vehicle();
    Rules rules = order.rules();
    double feedOhm =
        section
            .map(it -> ohms(ElectricDefaults.feedCable(rules, it)))
            .orElseGet(() -> ohms(ElectricDefaults.feedCable(rules)));
    double sectionFuseOhm =
        section
            .flatMap(Section::fuse)
            .map(it -> ohms(ElectricDefaults.fuse(rules, it)))
            .orElse(0.0);
    double strongOhm = ohms(ElectricDefaults.strongSource(rules, vehicle));
    double weakOhm = Math.max(strongOhm, ohms(ElectricDefaults.weakSource(rules, vehicle)));
    // Contacts at the fuse and at the pin.
    double contactsOhm =
        2 * ohms(ElectricDefaults.contact(rules))
            + ohms(ElectricDefaults.groundPoint(rules))
            + ohms(ElectricDefaults.body(rules))
            + ohms(fuse);
    double highestV = ElectricDefaults.supplyHighest(rules, vehicle).value().volts();
    return new FaultLoop(
        Math.min(vehicle.supplyLowest().volts(), highestV),
        highestV,
        strongOhm + (section.isPresent() ? feedOhm : 0),
        weakOhm + feedOhm + sectionFuseOhm,
        contactsOhm);
  }

  private static double ohms(Sourced<Resistance> resistance) {
    return resistance.value().ohms();
  }

  private FaultLoop withContacts(double moreOhm) {
    return new FaultLoop(lowestV, highestV, strongOhm, weakOhm, contactsOhm + moreOhm);
  }

  /** Largest fault current, right behind the fuse, A. */
  public double nearSourceA() {
    return highestV / strongOhm;
  }

  /** The loop with a wire. */
  public FaultCurrents.Loop with(Conductor conductor, double feedM, double returnM, double hotC) {
    return new FaultCurrents.Loop(
        lowestV, highestV, strongOhm, weakOhm, conductor, feedM, returnM, contactsOhm, hotC);
  }
}
