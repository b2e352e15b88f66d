package org.loomwright.planner.electrics;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.physics.network.Network;
import org.loomwright.physics.network.NetworkFindings;
import org.loomwright.physics.network.WorstCaseRequest;
import org.loomwright.planner.need.NeedAt;

/**
 * A joint case as a network.
 *
 * @param cases case ids
 * @param network the network, all loads on
 * @param loads load of each supply and signal of the kit, by need
 * @param pins node of each need's pin
 * @param feeds nodes at which feeds begin: bus bars, and units that feed
 * @param sources source of the resistance of each link
 * @param sensors sensor grounds to watch
 * @param lowestV lowest electromotive force, V
 * @param highestV highest, V
 */
record CaseNetwork(
    List<String> cases,
    Network network,
    Map<NeedAt, String> loads,
    Map<NeedAt, String> pins,
    Set<String> feeds,
    Map<String, String> sources,
    List<NetworkFindings.SensorGround> sensors,
    double lowestV,
    double highestV) {
  /** Node of the battery's negative post. */
  static final String NEGATIVE = "battery negative";

  /** Node of the battery's positive post. */
  static final String POSITIVE = "battery positive";

  /** The battery with the alternator. */
  static final String BATTERY = "battery";

  CaseNetwork {
    cases = List.copyOf(cases);
    loads = Collections.unmodifiableMap(new LinkedHashMap<>(loads));
    pins = Collections.unmodifiableMap(new LinkedHashMap<>(pins));
    feeds = Collections.unmodifiableSet(new LinkedHashSet<>(feeds));
    sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
    sensors = List.copyOf(sensors);
  }

  /** All load states over the supply range. */
  WorstCaseRequest request() {
    return new WorstCaseRequest(
        network,
        new LinkedHashSet<>(loads.values()),
        Map.of(BATTERY, new WorstCaseRequest.EmfRange(lowestV, highestV)),
        WorstCaseRequest.USUAL_MOST_STATES);
  }
}
