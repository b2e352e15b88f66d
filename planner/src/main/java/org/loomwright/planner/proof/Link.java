package org.loomwright.planner.proof;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.vehicle.Circuit;

/**
 * A connection between two nodes on some builds.
 *
 * @param from one node
 * @param to other node
 * @param builds builds that have it
 * @param lead the added lead it is, if it is one
 * @param source the factory circuit whose wire from its source end it is, if it is one
 * @param landings how the ends of a lead are landed, that at {@code from} first; empty for others
 */
record Link(
    String from,
    String to,
    Region builds,
    Optional<Lead> lead,
    Optional<Circuit> source,
    List<Landing> landings) {
  Link {
    landings = List.copyOf(landings);
  }

  String other(String node) {
    return node.equals(from) ? to : from;
  }
}
