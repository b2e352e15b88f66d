package org.loomwright.planner.proof;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Circuit;

/**
 * A net on some builds at an end of the guide, with what feeds it and what it feeds.
 *
 * @param net net
 * @param sources feeds, signals and grounds in it
 * @param circuits factory circuits in it
 * @param traced needs it meets
 * @param builds the builds
 * @param step end of the guide
 */
record NetAt(
    Net net,
    List<Source> sources,
    List<Circuit> circuits,
    List<Traced> traced,
    Region builds,
    Step step) {
  List<Source> sources(Source.Kind kind) {
    return sources.stream().filter(it -> it.kind() == kind).toList();
  }

  /** The one feed; empty when there is none or more than one. */
  Optional<Source> feed() {
    List<Source> feeds = sources(Source.Kind.FEED);
    return feeds.size() == 1 ? Optional.of(feeds.get(0)) : Optional.empty();
  }

  /** Most continuous current of the needs whose way takes a connection, A. */
  double currentA(Link link) {
    return traced.stream()
        .filter(it -> it.path().contains(link))
        .mapToDouble(it -> it.need().continuousA())
        .sum();
  }

  double continuousA() {
    return traced.stream().mapToDouble(it -> it.need().continuousA()).sum();
  }

  /**
   * Most current that the factory's own consumers draw from the net, A. A circuit that serves only
   * pins of the kit's equipment has no other consumer.
   */
  double factoryLoadA() {
    return circuits.stream()
        .filter(it -> !servesOnlyNeeds(it))
        .mapToDouble(it -> it.load().map(load -> load.amperes()).orElse(0.0))
        .sum();
  }

  boolean servesOnlyNeeds(Circuit circuit) {
    return !circuit.to().isEmpty()
        && circuit.to().stream()
            .map(spot -> Nodes.of(spot, circuit))
            .allMatch(
                node ->
                    traced.stream()
                        .anyMatch(
                            it ->
                                it.path().stream()
                                    .anyMatch(
                                        link ->
                                            link.other(it.need().node()).equals(node)
                                                && touches(link, it.need().node()))));
  }

  private static boolean touches(Link link, String node) {
    return link.from().equals(node) || link.to().equals(node);
  }

  void fail(Claim claim, Findings findings, String what) {
    findings.failOn(builds, claim, Optional.of(step), what);
  }

  void require(boolean holds, Claim claim, Findings findings, String what) {
    findings.require(holds, builds, claim, Optional.of(step), what);
  }
}
