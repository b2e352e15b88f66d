package org.loomwright.drawing.board.kit;

import java.util.List;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Plan;
import org.loomwright.model.parts.Parts;

/** How thick a few wires without a covering are. */
final class WireDiameters {
  /** Round a loose handful of wires; common practice. */
  private static final double LOOSENESS = 1.2;

  private final Plan plan;
  private final Parts parts;

  WireDiameters(Plan plan, Parts parts) {
    this.plan = plan;
    this.parts = parts;
  }

  /**
   * Diameter of some leads side by side, for the drawing alone: d of one wire, d1 + d2 of two, else
   * 1.2·√(Σd²), with d the wires' diameters in mm; common practice for bundles of wires of like
   * size. Nothing is reckoned from it.
   */
  double bundleMm(List<String> leads) {
    List<Double> each = leads.stream().map(this::wireMm).toList();
    if (each.size() <= 2) {
      return Math.max(1, each.stream().mapToDouble(it -> it).sum());
    }
    return LOOSENESS * Math.sqrt(each.stream().mapToDouble(it -> it * it).sum());
  }

  /** Leads that meet in a joint. */
  List<String> leadsOf(String joint) {
    return plan.design().joints().stream()
        .filter(it -> it.id().equals(joint))
        .findFirst()
        .map(Joint::leads)
        .orElse(List.of());
  }

  private double wireMm(String id) {
    Lead lead =
        plan.design().leads().stream()
            .filter(it -> it.id().equals(id))
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        "the harness has a lead " + id + " that is not in the design"));
    return parts
        .wire(lead.wire())
        .map(wire -> wire.diameter().mm())
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "lead " + id + ": no wire " + lead.wire() + " in the parts"));
  }
}
