package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Circuit;

/**
 * What conducts when the guide is done: every need traced through it, every net with added leads
 * judged. Nets are split only by the facts and landings that touch them, so that builds which
 * differ elsewhere are judged together.
 */
final class AtEnd {
  /** Most ways in which the facts around one net may fall out. */
  private static final int MOST_PARTS = 20_000;

  private final Subject subject;
  private final List<PinNeed> needs;
  private final List<NetCheck> checks;
  private final NetworkLimits networks;
  private final Runnable look;
  private final OwnAsAsked own;
  private final Readings readings;

  AtEnd(Subject subject, Readings readings, Runnable look) {
    this.look = look;
    this.readings = readings;
    this.subject = subject;
    this.needs = PinNeed.of(subject.order());
    this.own = new OwnAsAsked(subject);
    this.checks =
        List.of(
            own,
            new BackFeed(),
            new FuseLimits(subject),
            new WireLimits(subject),
            new FuseProtects(subject));
    this.networks = new NetworkLimits(subject, needs);
  }

  /**
   * @throws UnprovableException when too many facts around one net are left open
   */
  void check(Step step, Region here, Progress progress, Findings findings) {
    Sources sources = new Sources(subject, progress);
    Capacities capacities = new Capacities(subject);
    Apart apart = new Apart(needs);
    Set<PinNeed> seen = new HashSet<>();
    List<NetAt> all = new ArrayList<>();
    for (Net cluster : Net.of(Wiring.links(subject, progress, here, needs))) {
      List<PinNeed> inside =
          needs.stream().filter(need -> cluster.nodes().contains(need.node())).toList();
      seen.addAll(inside);
      if (inside.isEmpty() && !cluster.hasLeads()) {
        continue;
      }
      for (Region part : parts(cluster, sources, here)) {
        List<Link> active =
            cluster.links().stream().filter(link -> part.within(link.builds())).toList();
        List<Net> nets = Net.of(active);
        for (PinNeed need : inside) {
          findings.require(
              nets.stream().anyMatch(net -> net.nodes().contains(need.node())),
              part,
              Claim.NEEDS_MET,
              Optional.of(step),
              need.words() + " has no wire and no housing to plug into");
        }
        for (Net net : nets) {
          look.run();
          NetAt at = at(net, inside, sources, part, step, findings);
          checks.forEach(check -> check.check(at, findings));
          capacities.add(at);
          apart.add(at);
          all.add(at);
        }
      }
    }
    for (PinNeed need : needs) {
      findings.require(
          seen.contains(need),
          here,
          Claim.NEEDS_MET,
          Optional.of(step),
          need.words() + " has no wire and no housing to plug into");
    }
    capacities.own(here, progress);
    capacities.check(step, findings);
    apart.check(step, findings);
    own.atEnd(step, here, progress, findings);
    networks.check(step, all, findings);
    readings.atEnd(step, all, needs, progress, findings);
  }

  private NetAt at(
      Net net, List<PinNeed> inside, Sources sources, Region part, Step step, Findings findings) {
    List<Source> found = sources.of(net, part);
    List<Circuit> circuits = sources.circuits(net);
    Trace trace = new Trace(subject, findings, step, part);
    List<Traced> traced = new ArrayList<>();
    for (PinNeed need : inside) {
      if (net.nodes().contains(need.node())) {
        trace.of(need, net, found, circuits).ifPresent(traced::add);
      }
    }
    return new NetAt(net, found, circuits, traced, part, step);
  }

  private static List<Region> parts(Net cluster, Sources sources, Region here) {
    Set<Region> deciding = new LinkedHashSet<>();
    cluster.links().forEach(link -> deciding.add(link.builds()));
    cluster.nodes().forEach(node -> deciding.addAll(sources.deciding(node)));
    List<Region> parts = List.of(here);
    for (Region by : deciding) {
      List<Region> finer = new ArrayList<>();
      for (Region part : parts) {
        Region in = part.and(by);
        if (!in.isEmpty()) {
          finer.add(in);
        }
        if (!in.equals(part)) {
          finer.add(part.minus(by));
        }
      }
      parts = finer;
      if (parts.size() > MOST_PARTS) {
        throw new UnprovableException(
            "the facts around one net can fall out in more than " + MOST_PARTS + " ways");
      }
    }
    return parts;
  }
}
