package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.physics.Require;

/** Looks for what works but should not be there unseen. */
public final class NetworkFindings {
  /** Currents below this are rounding, A. */
  private static final double NO_CURRENT_A = 1e-6;

  private NetworkFindings() {}

  /**
   * A sensor whose ground must stay close to that of what reads it.
   *
   * @param node the sensor's ground node
   * @param against the ground node of what reads the sensor
   * @param limitV largest magnitude of the voltage between them, V, not below zero
   */
  public record SensorGround(String node, String against, double limitV) {
    /** Checks the range. */
    public SensorGround {
      Require.notNegative("limit of sensor ground \"" + node + "\"", limitV, "V");
    }
  }

  /** What can be seen from the wiring alone: nets with several feeds, joined sources. */
  public static List<NetworkFinding> ofWiring(Network network) {
    List<NetworkFinding> found = new ArrayList<>(severalFeeds(network));
    found.addAll(joinedSources(network));
    return found;
  }

  /**
   * What one state shows: currents into sources, currents backwards through fuses, sensor grounds
   * too far off.
   *
   * @throws org.loomwright.physics.SumException if a sensor ground names a node that is not there
   */
  public static List<NetworkFinding> ofState(Solved solved, List<SensorGround> grounds) {
    List<NetworkFinding> found = new ArrayList<>();
    for (Element e : solved.network().elements()) {
      double back = -solved.flow(e.name()).currentA();
      if (!(back > NO_CURRENT_A)) {
        continue;
      }
      if (e instanceof Source) {
        found.add(new NetworkFinding.IntoSource(e.name(), back));
      } else if (e instanceof Joint j && j.kind() == Joint.Kind.FUSE) {
        found.add(new NetworkFinding.BackThroughFuse(e.name(), back));
      }
    }
    for (SensorGround g : grounds) {
      double offset = solved.voltageV(g.node()) - solved.voltageV(g.against());
      if (!(Math.abs(offset) <= g.limitV())) {
        found.add(new NetworkFinding.GroundOffset(g.node(), g.against(), offset, g.limitV()));
      }
    }
    return found;
  }

  private static List<NetworkFinding> severalFeeds(Network network) {
    NodeSets nets = new NodeSets(network.nodes());
    for (Link link : network.all(Link.class)) {
      if (!isFuse(link)) {
        nets.join(link.from(), link.to());
      }
    }
    Map<String, Set<String>> feeds = new LinkedHashMap<>();
    for (Element e : network.elements()) {
      boolean fuse = isFuse(e) && !nets.leader(e.from()).equals(nets.leader(e.to()));
      if (fuse || e instanceof Source) {
        feeds.computeIfAbsent(nets.leader(e.to()), k -> new LinkedHashSet<>()).add(e.name());
      }
    }
    List<NetworkFinding> found = new ArrayList<>();
    feeds.forEach(
        (leader, names) -> {
          if (names.size() > 1) {
            List<String> nodes =
                network.nodes().stream().filter(n -> nets.leader(n).equals(leader)).toList();
            found.add(new NetworkFinding.SeveralFeeds(nodes, List.copyOf(names)));
          }
        });
    return found;
  }

  private static List<NetworkFinding> joinedSources(Network network) {
    NodeSets nets = new NodeSets(network.nodes());
    for (Link link : network.all(Link.class)) {
      nets.join(link.from(), link.to());
    }
    Map<String, List<String>> sources = new LinkedHashMap<>();
    for (Source s : network.all(Source.class)) {
      sources.computeIfAbsent(nets.leader(s.positive()), k -> new ArrayList<>()).add(s.name());
    }
    List<NetworkFinding> found = new ArrayList<>();
    for (List<String> joined : sources.values()) {
      if (joined.size() > 1) {
        found.add(new NetworkFinding.JoinedSources(joined));
      }
    }
    return found;
  }

  private static boolean isFuse(Element e) {
    return e instanceof Joint j && j.kind() == Joint.Kind.FUSE;
  }
}
