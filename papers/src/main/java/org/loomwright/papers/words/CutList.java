package org.loomwright.papers.words;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.quantity.Length;

/** Leads in the order in which a bench cuts them. */
public final class CutList {
  private CutList() {}

  /** Lines by wire and colour, longest first, so that each spool is taken up once. */
  public static List<CutLine> of(Names names) {
    return names.plan().design().leads().stream()
        .map(lead -> line(names, lead))
        .sorted(
            Comparator.comparing((CutLine line) -> line.lead().wire())
                .thenComparing(line -> line.lead().colour().text())
                .thenComparing(line -> -line.lead().cutMm())
                .thenComparing(line -> line.lead().id()))
        .toList();
  }

  private static CutLine line(Names names, Lead lead) {
    return new CutLine(
        lead,
        names.part(lead.wire()),
        end(names, lead.a()),
        end(names, lead.b()),
        names.plan().design().partNumbers().stream()
            .filter(number -> number.leads().contains(lead.id()))
            .map(PartNumber::id)
            .toList());
  }

  private static BenchEnd end(Names names, LeadEnd end) {
    Landing landing = end.asMade();
    if (landing instanceof Landing.InCavity it) {
      return terminal(names, landing, it.terminal(), it.seal());
    }
    if (landing instanceof Landing.InHousing it) {
      return terminal(names, landing, it.terminal(), it.seal());
    }
    if (landing instanceof Landing.InSlot it) {
      return terminal(names, landing, it.terminal(), Optional.empty());
    }
    if (landing instanceof Landing.OnGround it) {
      Optional<Ring> ring =
          names.order().parts().rings().stream()
              .filter(part -> part.id().equals(it.ring()))
              .findFirst();
      return new BenchEnd(
          it.ring(),
          names.part(it.ring()),
          ring.map(Ring::strip).map(Length::mm),
          ring.map(Ring::tool),
          Optional.empty(),
          Optional.empty(),
          names.landing(landing));
    }
    if (landing instanceof Landing.InJoint it) {
      Optional<Splice> splice = splice(names, it.splice());
      return new BenchEnd(
          it.splice(),
          names.part(it.splice()),
          splice.map(Splice::strip).map(Length::mm),
          splice.map(Splice::tool),
          Optional.empty(),
          Optional.empty(),
          names.landing(landing));
    }
    if (landing instanceof Landing.IntoCircuit it) {
      // Spliced in the vehicle: the bench cuts it blunt, the fitter strips it.
      return new BenchEnd(
          it.splice(),
          "cut blunt; " + names.part(it.splice()) + " goes on in the vehicle",
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          names.landing(landing));
    }
    if (landing instanceof Landing.Parked it) {
      return new BenchEnd(
          it.cap(),
          "cut blunt and cap with " + names.part(it.cap()),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          names.landing(landing));
    }
    throw new IllegalStateException("a landing of an unknown kind: " + landing);
  }

  private static BenchEnd terminal(
      Names names, Landing landing, String partId, Optional<String> seal) {
    Optional<Terminal> terminal = names.order().parts().terminal(partId);
    return new BenchEnd(
        partId,
        names.part(partId),
        terminal.map(Terminal::strip).map(Length::mm),
        terminal.map(Terminal::tool),
        terminal.flatMap(Terminal::crimpHeight).map(Length::mm),
        seal,
        names.landing(landing));
  }

  private static Optional<Splice> splice(Names names, String partId) {
    return names.order().parts().splices().stream()
        .filter(part -> part.id().equals(partId))
        .findFirst();
  }
}
