package org.loomwright.drawing.board.kit;

import java.util.List;
import java.util.Optional;
import org.loomwright.drawing.board.kit.Harnesses.Drawn;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Tail;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Wire;

/** The smallest harness: one lead from a fuse block to a ground stud. */
final class ByHand {
  private ByHand() {}

  static Drawn oneLead() {
    KitOrder order = Harnesses.demo("trailer");
    Wire wire = order.parts().wires().get(0);
    String block = order.vehicle().fuseBlocks().get(0).id();
    String ground = order.vehicle().grounds().get(0).id();
    String from = order.vehicle().places().get(0).id();
    String to = order.vehicle().places().get(1).id();
    Lead lead =
        new Lead(
            "L1",
            "FEED 1",
            "a lead",
            "A",
            List.of(),
            wire.id(),
            wire.size().areaMm2(),
            wire.colours().get(0),
            end(from, new Landing.InSlot(block, "F1", "T")),
            end(to, new Landing.OnGround(ground, "R")),
            List.of("run"),
            900,
            1100,
            1120,
            0,
            0,
            1,
            5);
    Bundle bundle =
        new Bundle(
            "run",
            from,
            to,
            900,
            List.of(new Bundle.Wire("L1", 0, 0, 2)),
            2,
            Optional.of(
                new Bundle.Covered(
                    order.parts().coverings().get(0).id(),
                    900,
                    Optional.empty(),
                    Optional.empty())),
            3,
            8,
            Optional.empty(),
            List.of());
    List<Tail> tails =
        List.of(
            new Tail("T1", from, Tail.Kind.BLOCK, block, List.of(new Tail.End("L1", true)), 120),
            new Tail("T2", to, Tail.Kind.GROUND, ground, List.of(new Tail.End("L1", false)), 80));
    return new Drawn(
        Harnesses.plan(
            order,
            new Design(List.of(lead), List.of(), List.of(), List.of(), List.of()),
            new Harness(List.of(bundle), tails, List.of(), 0, 0, true, List.of(), List.of())),
        order);
  }

  private static LeadEnd end(String place, Landing landing) {
    return new LeadEnd(place, List.of(new EndUse(landing, List.of("A1"), true)));
  }
}
