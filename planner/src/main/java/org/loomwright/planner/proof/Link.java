package org.loomwright.planner.proof;

import java.util.Optional;
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
 */
record Link(String from, String to, Region builds, Optional<Lead> lead, Optional<Circuit> source) {
  String other(String node) {
    return node.equals(from) ? to : from;
  }
}
