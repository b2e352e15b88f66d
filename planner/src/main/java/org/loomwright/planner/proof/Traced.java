package org.loomwright.planner.proof;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.design.Lead;

/**
 * A need with the way its current takes.
 *
 * @param need need
 * @param source where it comes from or goes to
 * @param path connections from the pin to the source
 */
record Traced(PinNeed need, Source source, List<Link> path) {
  List<Lead> leads() {
    return path.stream().flatMap(link -> link.lead().stream()).distinct().toList();
  }

  /** Leads, joints and factory circuits on the way, by name. */
  Set<String> shares() {
    Stream<String> nodes =
        path.stream()
            .flatMap(link -> Stream.of(link.from(), link.to()))
            .filter(it -> it.startsWith(Nodes.JOINT) || it.startsWith(Nodes.CIRCUIT));
    Stream<String> wires = leads().stream().map(lead -> "lead " + lead.id());
    return Stream.concat(nodes, wires).collect(Collectors.toSet());
  }
}
