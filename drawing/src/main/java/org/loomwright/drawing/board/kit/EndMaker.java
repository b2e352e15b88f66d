package org.loomwright.drawing.board.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.drawing.board.Board;
import org.loomwright.drawing.board.BoardTree.End;
import org.loomwright.drawing.board.BoardTree.EndKind;
import org.loomwright.drawing.board.BoardWords.Inset;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.design.Tail;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Housing;

/** Makes the ends of branches: symbol or face, and the table of leads. */
final class EndMaker {
  private static final double WIDEST_TABLE_MM = 170;

  private final Plan plan;
  private final KitOrder order;
  private final EndNames names;
  private final double roomMm;

  EndMaker(Plan plan, KitOrder order, EndNames names, Board board) {
    this.plan = plan;
    this.order = order;
    this.names = names;
    this.roomMm = Math.min(WIDEST_TABLE_MM, board.inside().widthMm() - 10);
  }

  /** An end with what is drawn at it. */
  record Made(End end, Inset inset) {}

  Tail found(String id) {
    return plan.harness().tails().stream()
        .filter(it -> it.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("the harness has no tail " + id));
  }

  Made tail(String id, String called) {
    Tail tail = found(id);
    List<EndTable.Row> rows =
        tail.ends().stream()
            .map(this::row)
            .sorted(
                Comparator.comparing((EndTable.Row row) -> row.cells().get(0), EndMaker::natural))
            .toList();
    List<String> heads = List.of(spotHead(tail.kind()), "lead", "colour", "size", "to");
    EndTable.Drawn table = EndTable.of(called, subs(tail), heads, rows, roomMm);
    return switch (tail.kind()) {
      case HOUSING -> housing(tail, called, table);
      case CONNECTOR, BLOCK, LOOSE ->
          made(called, EndKind.OPEN, EndSymbols.loose(tail.ends().size()), table);
      case GROUND -> {
        End end = new End(called, EndKind.STUD, 16, 16, table.widthMm(), table.heightMm());
        yield new Made(end, new Inset(Optional.empty(), Optional.of(table.svg())));
      }
      case CIRCUIT -> made(called, EndKind.OPEN, EndSymbols.splice(), table);
    };
  }

  Made joint(String id, String called) {
    List<EndTable.Row> rows = new ArrayList<>();
    for (Joint joint : plan.design().joints()) {
      if (joint.id().equals(id)) {
        joint.leads().forEach(lead -> rows.add(jointRow(lead, id)));
      }
    }
    EndTable.Drawn table =
        EndTable.of(
            called,
            List.of("joint, crimped on the bench"),
            List.of("", "lead", "colour", "size", "to"),
            rows,
            roomMm);
    return made(called, EndKind.OPEN, EndSymbols.joint(), table);
  }

  private Made housing(Tail tail, String called, EndTable.Drawn table) {
    Optional<SuppliedHousing> supplied = names.housing(tail.subject());
    Optional<Housing> housing = supplied.flatMap(it -> order.parts().housing(it.part()));
    if (supplied.isPresent() && housing.isPresent()) {
      EndSymbols.Symbol face = EndSymbols.face(housing.get(), supplied.get());
      return made(called, EndKind.CONNECTOR, face, table);
    }
    return made(called, EndKind.CONNECTOR, EndSymbols.loose(tail.ends().size()), table);
  }

  private static Made made(
      String called, EndKind kind, EndSymbols.Symbol symbol, EndTable.Drawn table) {
    return new Made(
        new End(
            called, kind, symbol.widthMm(), symbol.heightMm(), table.widthMm(), table.heightMm()),
        new Inset(Optional.of(symbol.svg()), Optional.of(table.svg())));
  }

  private static String spotHead(Tail.Kind kind) {
    return switch (kind) {
      case HOUSING, CONNECTOR -> "cavity";
      case BLOCK -> "slot";
      case GROUND, CIRCUIT, LOOSE -> "end";
    };
  }

  private List<String> subs(Tail tail) {
    List<String> subs = new ArrayList<>();
    switch (tail.kind()) {
      case HOUSING -> {
        Optional<SuppliedHousing> supplied = names.housing(tail.subject());
        supplied.ifPresent(it -> subs.add("housing " + it.part() + ", drawn from the wire side"));
        supplied
            .filter(it -> !it.plugged().isEmpty())
            .ifPresent(it -> subs.add("cavity plug in " + String.join(", ", it.plugged())));
      }
      case CONNECTOR -> subs.add("terminals for a connector of the vehicle, taped together");
      case BLOCK -> subs.add("terminals for a fuse block of the vehicle, taped together");
      case GROUND -> subs.add("ring terminals for a ground stud");
      case CIRCUIT -> subs.add("end for a splice made in the vehicle");
      case LOOSE -> subs.add("capped, each with its label; taped back in the vehicle");
    }
    subs.add("at " + names.place(tail.place()));
    return subs;
  }

  private EndTable.Row row(Tail.End end) {
    Lead lead = lead(end.lead());
    LeadEnd own = end.sideA() ? lead.a() : lead.b();
    String note =
        Stream.of(names.numbers(lead), names.changes(own))
            .filter(it -> !it.isEmpty())
            .collect(Collectors.joining("; "));
    return new EndTable.Row(cells(lead, EndNames.spot(own.asMade()), end.sideA()), note);
  }

  private EndTable.Row jointRow(String id, String joint) {
    Lead lead = lead(id);
    boolean isSideA = lead.a().asMade() instanceof Landing.InJoint it && it.joint().equals(joint);
    return new EndTable.Row(cells(lead, "", isSideA), names.numbers(lead));
  }

  private List<String> cells(Lead lead, String spot, boolean isSideA) {
    String size =
        order.parts().wire(lead.wire()).map(wire -> wire.size().label()).orElse(lead.wire());
    return List.of(spot, lead.label(), lead.colour().text(), size, names.other(lead, isSideA));
  }

  private Lead lead(String id) {
    return names
        .lead(id)
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "the harness has a lead " + id + " that is not in the design"));
  }

  /** Cavity 2 before cavity 10. */
  private static int natural(String one, String other) {
    int byLength = Integer.compare(one.length(), other.length());
    boolean areNumbers = one.matches("\\d+") && other.matches("\\d+");
    return areNumbers && byLength != 0 ? byLength : one.compareTo(other);
  }
}
