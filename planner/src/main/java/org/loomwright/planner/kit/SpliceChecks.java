package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.rules.ElectricDefaults;
import org.loomwright.model.rules.Sourced;
import org.loomwright.physics.Check;
import org.loomwright.physics.Trace;
import org.loomwright.physics.joining.SpliceCopper;

/** Checks of splices into factory wires and of joints of added leads. */
final class SpliceChecks {
  private final KitOrder order;
  private final FitList list;

  SpliceChecks(KitOrder order, FitList list) {
    this.order = order;
    this.list = list;
  }

  /** A splice into a wire that goes on holds that wire on both sides, and the lead on one. */
  void intoCircuit(EndChecks.At at, Landing.IntoCircuit into) {
    Optional<Splice> splice = splice(into.splice());
    order
        .vehicle()
        .circuit(into.circuit())
        .ifPresent(
            host -> {
              SpliceCopper.Strand factory =
                  new SpliceCopper.Strand(host.name(), host.wire().areaMm2());
              splice.ifPresent(
                  it ->
                      copper(
                          at.lead().id() + at.side() + "/" + into.circuit(),
                          at.subject(),
                          at.cases(),
                          it,
                          SpliceCopper.of(List.of(factory), List.of(factory, strand(at.lead()))),
                          List.of(at.wire())));
            });
  }

  /** Joints of added leads: what comes from the source on one side, what goes on on the other. */
  void joints(List<Lead> leads) {
    Map<String, Joint> joints = new LinkedHashMap<>();
    for (Lead lead : leads) {
      join(lead, lead.b(), true, joints);
      join(lead, lead.a(), false, joints);
    }
    joints.forEach(
        (id, joint) ->
            splice(joint.splice)
                .ifPresent(
                    it ->
                        copper(
                            "joint/" + id,
                            "joint " + id,
                            List.copyOf(joint.cases),
                            it,
                            SpliceCopper.of(
                                joint.coming.stream().map(SpliceChecks::strand).toList(),
                                joint.going.stream().map(SpliceChecks::strand).toList()),
                            wires(joint))));
  }

  private static void join(Lead lead, LeadEnd end, boolean comes, Map<String, Joint> joints) {
    for (EndUse use : end.uses()) {
      if (use.landing() instanceof Landing.InJoint in) {
        Joint joint = joints.computeIfAbsent(in.joint(), it -> new Joint(in.splice()));
        (comes ? joint.coming : joint.going).add(lead);
        joint.cases.addAll(use.cases());
      }
    }
  }

  private void copper(
      String id,
      String subject,
      List<String> cases,
      Splice splice,
      SpliceCopper.Result copper,
      List<Wire> wires) {
    Sourced<Percent> balance = ElectricDefaults.spliceBalance(order.rules());
    List<Check> checks =
        SpliceCopper.checks(
            copper,
            splice.areaLeast().areaMm2(),
            splice.areaMost().areaMm2(),
            "splice " + splice.id() + ": " + splice.source(),
            balance.value().fraction(),
            balance.source());
    list.size("splice/" + id + "/copper", subject, cases, checks.get(0), copper.trace());
    list.size("splice/" + id + "/balance", subject, cases, checks.get(1), copper.trace());
    double thickestMm = wires.stream().mapToDouble(it -> it.diameter().mm()).max().orElse(0);
    splice
        .insulationMost()
        .ifPresent(
            most ->
                list.size(
                    "splice/" + id + "/insulation",
                    subject,
                    cases,
                    Check.atMost(
                        "insulation in the sleeve of the splice",
                        thickestMm,
                        most.mm(),
                        "mm",
                        "at most " + most + ", added wires",
                        "splice " + splice.id() + ": " + splice.source()),
                    Trace.builder()
                        .given("thickest insulation of an added wire", thickestMm, "mm")
                        .build()));
  }

  private List<Wire> wires(Joint joint) {
    List<Wire> wires = new ArrayList<>();
    joint.coming.forEach(it -> order.parts().wire(it.wire()).ifPresent(wires::add));
    joint.going.forEach(it -> order.parts().wire(it.wire()).ifPresent(wires::add));
    return wires;
  }

  private Optional<Splice> splice(String id) {
    return order.parts().splices().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  private static SpliceCopper.Strand strand(Lead lead) {
    return new SpliceCopper.Strand("lead " + lead.id(), lead.areaMm2());
  }

  /** What meets in a joint; filled while the leads are gone through. */
  private static final class Joint {
    private final String splice;
    private final Set<Lead> coming = new LinkedHashSet<>();
    private final Set<Lead> going = new LinkedHashSet<>();
    private final Set<String> cases = new LinkedHashSet<>();

    private Joint(String splice) {
      this.splice = splice;
    }
  }
}
