package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Spot;

/** Everything that may conduct when the guide is done, with the builds on which it does. */
final class Wiring {
  private final Subject subject;
  private final Progress progress;
  private final Region here;
  private final List<Link> links = new ArrayList<>();

  private Wiring(Subject subject, Progress progress, Region here) {
    this.subject = subject;
    this.progress = progress;
    this.here = here;
  }

  /**
   * @param here builds at one end of the guide
   */
  static List<Link> links(Subject subject, Progress progress, Region here, List<PinNeed> needs) {
    Wiring wiring = new Wiring(subject, progress, here);
    subject.design().leads().forEach(wiring::lead);
    subject.vehicle().circuits().forEach(wiring::circuit);
    needs.forEach(wiring::pin);
    return wiring.links;
  }

  private void add(String from, String to, Region builds, Optional<Circuit> source) {
    Region there = builds.and(here);
    if (!there.isEmpty()) {
      links.add(new Link(from, to, there, Optional.empty(), source, List.of()));
    }
  }

  private void lead(Lead lead) {
    Map<Landing, Region> a = landings(subject, progress, lead, "a", lead.a());
    Map<Landing, Region> b = landings(subject, progress, lead, "b", lead.b());
    a.forEach(
        (atA, onA) ->
            b.forEach((atB, onB) -> lead(lead, List.of(atA, atB), onA.and(onB).and(here))));
  }

  private void lead(Lead lead, List<Landing> at, Region there) {
    if (!there.isEmpty()) {
      String from = Nodes.of(at.get(0), lead.id(), "a");
      String to = Nodes.of(at.get(1), lead.id(), "b");
      links.add(new Link(from, to, there, Optional.of(lead), Optional.empty(), at));
    }
  }

  /** Where an end of a lead is, those that the bench put there included. */
  static Map<Landing, Region> landings(
      Subject subject, Progress progress, Lead lead, String end, LeadEnd made) {
    Map<Landing, Region> landings = new LinkedHashMap<>(progress.landings(lead.id(), end));
    if (Ends.isBenchMade(made.asMade())) {
      Region untouched = subject.facts().regions().none();
      for (Map.Entry<PartNumber, Region> box : subject.boxes().entrySet()) {
        if (box.getKey().leads().contains(lead.id())) {
          untouched = untouched.or(box.getValue());
        }
      }
      for (Region done : landings.values()) {
        untouched = untouched.minus(done);
      }
      landings.merge(made.asMade(), untouched, Region::or);
    }
    return landings;
  }

  private void circuit(Circuit circuit) {
    Region present = subject.facts().present(circuit);
    add(Nodes.of(circuit.from(), circuit), Nodes.of(circuit), present, Optional.of(circuit));
    for (Spot to : circuit.to()) {
      add(Nodes.of(circuit), Nodes.of(to, circuit), present, Optional.empty());
    }
  }

  private void pin(PinNeed need) {
    Region supplied = here;
    Optional<Connector> connector =
        need.mount().connector().flatMap(id -> subject.vehicle().connector(id));
    if (connector.isPresent()) {
      Region present = subject.facts().present(connector.get());
      supplied = supplied.minus(present);
      String cavity = new Spot.OfCavity(connector.get().id(), need.pin().cavity()).text();
      add(need.node(), cavity, present, Optional.empty());
    }
    for (SuppliedHousing housing : Housings.of(subject, need)) {
      add(
          need.node(),
          Nodes.housing(housing.id(), need.pin().cavity()),
          supplied,
          Optional.empty());
    }
  }
}
