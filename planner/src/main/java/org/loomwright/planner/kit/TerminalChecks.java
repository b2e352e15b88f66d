package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Seal;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;
import org.loomwright.physics.joining.ContactCurrent;
import org.loomwright.physics.joining.FitRange;
import org.loomwright.planner.landing.ContactLimit;
import org.loomwright.planner.landing.Platings;

/** Checks of terminals: current by wire and place, crimp ranges, wire seal, plating. */
final class TerminalChecks {
  private static final String PLATINGS =
      "both halves of a contact plated alike: common practice, unlike metals fret and oxidise";

  private final KitOrder order;
  private final FitList list;

  TerminalChecks(KitOrder order, FitList list) {
    this.order = order;
    this.list = list;
  }

  void inCavity(EndChecks.At at, Landing.InCavity in) {
    Optional<Housing> housing =
        order.vehicle().connector(in.connector()).map(Connector::housing).flatMap(this::housing);
    String where = in.connector() + "/" + in.cavity();
    terminal(at, where, in.terminal(), Platings.atConnector(order, in.connector()));
    seal(at, where, housing, in.terminal(), in.seal());
  }

  void inHousing(EndChecks.At at, Landing.InHousing in) {
    Optional<Housing> housing =
        order.kit().mounts().stream()
            .filter(it -> in.housing().equals(it.equipment() + "/" + it.plug()))
            .findFirst()
            .flatMap(order::plug)
            .flatMap(plug -> housing(plug.matesWith()));
    String where = in.housing() + "/" + in.cavity();
    terminal(at, where, in.terminal(), Platings.atHousing(order, in.housing()));
    seal(at, where, housing, in.terminal(), in.seal());
  }

  void inSlot(EndChecks.At at, Landing.InSlot in) {
    terminal(at, in.block() + "/" + in.slot(), in.terminal(), List.of());
  }

  private Optional<Housing> housing(String id) {
    return order.parts().housing(id);
  }

  private void terminal(EndChecks.At at, String where, String id, List<Platings.Mate> mates) {
    order
        .parts()
        .terminal(id)
        .ifPresent(
            terminal -> {
              current(at, where, terminal, mates);
              crimp(at, where, terminal);
              if (!mates.isEmpty()) {
                plating(at, where, terminal, mates);
              }
            });
  }

  private void current(
      EndChecks.At at, String where, Terminal terminal, List<Platings.Mate> mates) {
    String id = at.id("terminal", where);
    String name = "terminal " + terminal.id();
    double currentA = at.lead().currentA();
    double areaMm2 = at.wire().size().areaMm2();
    double ambientC = ContactLimit.ambientC(order, at.place());
    String source =
        terminal.source()
            + (mates.isEmpty() ? "; the plating of the other half is not on file" : "");
    try {
      ContactCurrent.Result limit = ContactLimit.of(terminal, at.wire(), ambientC);
      list.load(
          id,
          at.subject(),
          at.cases(),
          ContactCurrent.check(name, currentA, limit, areaMm2, ambientC, source),
          limit.trace());
    } catch (SumException outsideTheTable) {
      list.refused(
          id,
          "current through " + name + ", within what its table says",
          at.subject(),
          at.cases(),
          outsideTheTable);
    }
  }

  private void crimp(EndChecks.At at, String where, Terminal terminal) {
    list.size(
        at.id("fit", where + "/conductor"),
        at.subject(),
        at.cases(),
        FitRange.check(
            "conductor in terminal " + terminal.id(),
            at.wire().size().areaMm2(),
            terminal.wireLeast().areaMm2(),
            terminal.wireMost().areaMm2(),
            "mm²",
            terminal.source()),
        Trace.builder()
            .given("conductor of " + at.wire().id(), at.wire().size().areaMm2(), "mm²")
            .build());
    list.size(
        at.id("fit", where + "/insulation"),
        at.subject(),
        at.cases(),
        FitRange.check(
            "insulation in terminal " + terminal.id(),
            at.wire().diameter().mm(),
            terminal.insulationLeast().mm(),
            terminal.insulationMost().mm(),
            "mm",
            terminal.source()),
        insulation(at));
  }

  private void seal(
      EndChecks.At at,
      String where,
      Optional<Housing> housing,
      String terminal,
      Optional<String> seal) {
    String id = at.id("fit", where + "/seal");
    Optional<Seal> part =
        seal.flatMap(
            number ->
                order.parts().seals().stream().filter(it -> it.id().equals(number)).findFirst());
    if (part.isPresent()) {
      Seal it = part.get();
      list.size(
          id,
          at.subject(),
          at.cases(),
          FitRange.check(
              "insulation in wire seal " + it.id(),
              at.wire().diameter().mm(),
              it.insulationLeast().mm(),
              it.insulationMost().mm(),
              "mm",
              it.source()),
          insulation(at));
    } else if (housing.filter(Housing::sealed).isPresent()) {
      list.missing(
          id,
          "wire seal on terminal " + terminal,
          at.subject(),
          at.cases(),
          "each wire into a sealed housing needs its seal; "
              + housing.map(Housing::source).orElse(""));
    }
  }

  private void plating(
      EndChecks.At at, String where, Terminal terminal, List<Platings.Mate> mates) {
    List<TraceLine> lines = new ArrayList<>();
    long unlike = 0;
    for (Platings.Mate mate : mates) {
      boolean alike = Platings.alike(mate.plating(), terminal.plating());
      unlike += alike ? 0 : 1;
      lines.add(
          new TraceLine(
              terminal.plating() + " against " + mate.plating(),
              "compared",
              alike ? 0 : 1,
              "unlike",
              mate.where()));
    }
    list.alike(
        at.id("fit", where + "/plating"),
        "plating of terminal " + terminal.id() + " and of the other half",
        at.subject(),
        at.cases(),
        unlike,
        PLATINGS + "; " + terminal.source(),
        lines);
  }

  private static Trace insulation(EndChecks.At at) {
    return Trace.builder()
        .given("largest outside diameter of " + at.wire().id(), at.wire().diameter().mm(), "mm")
        .build();
  }
}
