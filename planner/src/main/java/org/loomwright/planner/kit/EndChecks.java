package org.loomwright.planner.kit;

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
import org.loomwright.model.parts.Wire;

/**
 * Checks of every end as it is made, against the documents: terminals, seals and platings; rings
 * and studs; splices and joints.
 */
final class EndChecks {
  private final KitOrder order;
  private final List<Lead> leads;
  private final TerminalChecks terminals;
  private final StudChecks studs;
  private final SpliceChecks splices;

  EndChecks(KitOrder order, List<Lead> leads, Checklist list) {
    this.order = order;
    this.leads = List.copyOf(leads);
    FitList fits = new FitList(list);
    this.terminals = new TerminalChecks(order, fits);
    this.studs = new StudChecks(order, fits);
    this.splices = new SpliceChecks(order, fits);
  }

  void check() {
    for (Lead lead : leads) {
      Optional<Wire> wire = order.parts().wire(lead.wire());
      if (wire.isPresent()) {
        end(lead, "a", lead.a(), wire.get());
        end(lead, "b", lead.b(), wire.get());
      }
    }
    studs.lugs(leads);
    splices.joints(leads);
  }

  private void end(Lead lead, String side, LeadEnd end, Wire wire) {
    Map<Landing, Set<String>> landings = new LinkedHashMap<>();
    for (EndUse use : end.uses()) {
      landings
          .computeIfAbsent(withoutPlug(use.landing()), it -> new LinkedHashSet<>())
          .addAll(use.cases());
    }
    landings.forEach(
        (landing, cases) -> {
          At at = new At(lead, side, end.place(), wire, List.copyOf(cases));
          if (landing instanceof Landing.InCavity in) {
            terminals.inCavity(at, in);
          } else if (landing instanceof Landing.InHousing in) {
            terminals.inHousing(at, in);
          } else if (landing instanceof Landing.InSlot in) {
            terminals.inSlot(at, in);
          } else if (landing instanceof Landing.OnGround on) {
            studs.ring(at, on);
          } else if (landing instanceof Landing.IntoCircuit into) {
            splices.intoCircuit(at, into);
          }
        });
  }

  /** Whether a plug is pulled first makes no difference to what is made. */
  private static Landing withoutPlug(Landing landing) {
    return landing instanceof Landing.InCavity in
        ? new Landing.InCavity(in.connector(), in.cavity(), in.terminal(), in.seal(), false)
        : landing;
  }

  /**
   * One end of a lead.
   *
   * @param side "a" or "b"
   * @param place where it ends
   * @param wire its wire
   * @param cases cases that use the landing
   */
  record At(Lead lead, String side, String place, Wire wire, List<String> cases) {
    /** Id of a check of this end. */
    String id(String sort, String rest) {
      return sort + "/" + lead.id() + side + "/" + rest;
    }

    String subject() {
      return "lead " + lead.id();
    }
  }
}
