package org.loomwright.physics.network;

import java.util.List;
import java.util.Locale;

/** Something in a network that works but should not be there unseen. */
public sealed interface NetworkFinding {
  /** The finding in one sentence for a person. */
  String message();

  /**
   * Current flows into a source at its positive terminal. A battery that is being charged shows
   * this too.
   *
   * @param source name of the source
   * @param currentA current into it, A, above zero
   */
  record IntoSource(String source, double currentA) implements NetworkFinding {
    @Override
    public String message() {
      return String.format(Locale.ROOT, "%.3f A flow back into source %s", currentA, source);
    }
  }

  /**
   * Current flows through a fuse from its load side to its feed side.
   *
   * @param fuse name of the fuse
   * @param currentA current against its direction, A, above zero
   */
  record BackThroughFuse(String fuse, double currentA) implements NetworkFinding {
    @Override
    public String message() {
      return String.format(Locale.ROOT, "%.3f A flow backwards through fuse %s", currentA, fuse);
    }
  }

  /**
   * A net is fed more than once: taking out one fuse leaves it live.
   *
   * @param nodes nodes of the net (joined without a fuse between them), in order of mention
   * @param feeds fuses and sources that feed it, at least two, in the network's order
   */
  record SeveralFeeds(List<String> nodes, List<String> feeds) implements NetworkFinding {
    /** Copies the lists. */
    public SeveralFeeds {
      nodes = List.copyOf(nodes);
      feeds = List.copyOf(feeds);
    }

    @Override
    public String message() {
      return "the net of node "
          + String.join(", ", nodes)
          + " is fed by "
          + String.join(" and by ", feeds);
    }
  }

  /**
   * Two or more sources are joined at their positive terminals by links, with or without fuses.
   *
   * @param sources the sources, in the network's order
   */
  record JoinedSources(List<String> sources) implements NetworkFinding {
    /** Copies the list. */
    public JoinedSources {
      sources = List.copyOf(sources);
    }

    @Override
    public String message() {
      return "the sources " + String.join(", ", sources) + " are joined";
    }
  }

  /**
   * The ground of a sensor is lifted by the currents of other loads.
   *
   * @param node the sensor's ground node
   * @param against the ground node of what reads the sensor
   * @param offsetV voltage between them, V, with its sign
   * @param limitV largest magnitude allowed, V
   */
  record GroundOffset(String node, String against, double offsetV, double limitV)
      implements NetworkFinding {
    @Override
    public String message() {
      return String.format(
          Locale.ROOT,
          "sensor ground %s lies %.4f V from %s, more than %.4f V",
          node,
          offsetV,
          against,
          limitV);
    }
  }
}
