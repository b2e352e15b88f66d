package org.loomwright.papers.words;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/** The cautions that apply to a kit, from what its vehicle and guide touch. */
public final class Cautions {
  private Cautions() {}

  /** Cautions, the gravest first. */
  public static List<Caution> of(KitOrder order, Plan plan) {
    Vehicle vehicle = order.vehicle();
    List<Caution> cautions = new ArrayList<>();
    if (hasRestraint(vehicle)) {
      cautions.add(
          new Caution(
              "Airbags and belt pretensioners",
              "Isolate the battery and wait "
                  + vehicle
                      .restraintWait()
                      .map(it -> it.text() + ", the vehicle maker's waiting time,")
                      .orElse("as long as the vehicle maker says")
                  + " before work near airbag or pretensioner wiring. Never probe, cut, splice or"
                  + " unplug that wiring. Keep every added lead away from it. Do not switch on the"
                  + " ignition while a seat or trim part with such a plug is unplugged."));
    }
    cautions.add(
        new Caution(
            hasHighVoltage(vehicle)
                ? "High voltage: this vehicle has it"
                : "High voltage and 48 V systems",
            "Orange cables and everything of a high-voltage or 48 V system are for trained people"
                + " only. Stop and ask when a cable or label of such a system lies in the way."));
    cautions.add(
        new Caution(
            "Battery",
            "No wiring is touched live. Isolate the battery where the guide says so, keep it"
                + " isolated until the guide connects it again, and see to it that nobody connects"
                + " it in between. Note radio codes and settings first. Measurements with power on"
                + " are made with a meter only, at the points the guide names."));
    cautions.add(
        new Caution(
            "Standing safely",
            "Support a raised vehicle on stands before anybody works under it, chock the wheels"
                + " and secure what is opened. A jack alone is not a support."));
    cautions.add(
        new Caution(
            "Chafing and heat",
            "Lay leads along the runs given. Fix them so that nothing rubs, pulls or flaps; protect"
                + " them where they pass an edge or a panel; keep them away from exhaust, brake and"
                + " fuel lines and from moving parts. Fit a grommet in every opening in metal."));
    cautions.add(
        new Caution(
            "Fuses",
            "Each added feed is protected close to its source. Fit the rating printed, never a"
                + " larger one, and fit it only when the guide says so."));
    if (parksLeads(plan)) {
      cautions.add(
          new Caution(
              "Parked leads",
              "A lead that a build does not need is capped, labelled and taped back. It is never"
                  + " live: its feed end stays open or its fuse stays out."));
    }
    if (hasHardSteps(plan)) {
      cautions.add(
          new Caution(
              "Steps that can't be taken back with ordinary tools",
              "They are marked in the guide. Do not start one before every answer asked for above"
                  + " it has been found and written down."));
    }
    cautions.add(
        new Caution(
            "Rules and law",
            "Keep to the vehicle maker's body-builder rules and to local law. Work on"
                + " safety-relevant systems, such as brakes, steering, restraint and lighting, is"
                + " for licensed workshops."));
    return List.copyOf(cautions);
  }

  private static boolean hasRestraint(Vehicle vehicle) {
    return vehicle.restraintWait().isPresent()
        || vehicle.openings().stream().anyMatch(Opening::restraint)
        || vehicle.connectors().stream().anyMatch(Connector::restraint)
        || vehicle.runs().stream().anyMatch(Run::restraint);
  }

  private static boolean hasHighVoltage(Vehicle vehicle) {
    return vehicle.connectors().stream().anyMatch(Connector::highVoltage)
        || vehicle.runs().stream().anyMatch(Run::highVoltage);
  }

  private static boolean parksLeads(Plan plan) {
    return plan.design().leads().stream()
            .anyMatch(it -> it.a().isParkedSomewhere() || it.b().isParkedSomewhere())
        || plan.guide().steps().stream()
            .flatMap(it -> it.act().stream())
            .anyMatch(it -> it instanceof Act.Park);
  }

  private static boolean hasHardSteps(Plan plan) {
    return plan.guide().steps().stream().map(Step::undo).anyMatch(it -> it.isHard());
  }
}
