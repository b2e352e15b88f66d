package org.loomwright.physics.network;

/**
 * A passive part with a resistance of its own that is not a length of wire.
 *
 * @param name unique name
 * @param from first node; of a fuse, the feed side
 * @param to second node; of a fuse, the load side
 * @param kind what it is
 * @param ohm resistance, 1e-6 to 1e9 ohm
 * @param source where the resistance comes from: a standard's section, a maker's data sheet,
 *     "measured", "common practice"
 */
public record Joint(String name, String from, String to, Kind kind, double ohm, String source)
    implements Link {
  /** What a joint is; a fuse has a feed side, the others have no direction. */
  public enum Kind {
    /** A fuse or circuit breaker, closed. */
    FUSE("fuse"),
    /** A pair of mated terminals, or a switch or relay contact that is closed. */
    CONTACT("contact"),
    /** A splice. */
    SPLICE("splice"),
    /** A stud or lug on sheet metal. */
    GROUND_POINT("ground point"),
    /** Any other part with a known resistance: a shunt, sheet metal, a measured harness branch. */
    RESISTOR("resistor");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** As people write it. */
    public String words() {
      return words;
    }
  }

  /**
   * Checks the ranges.
   *
   * @throws org.loomwright.physics.SumException naming the joint and the bad value
   */
  public Joint {
    Elements.ends(kind.words(), name, from, to);
    Elements.resistance(kind.words(), name, ohm);
  }

  /** A fuse of a known cold resistance, feed side first. */
  public static Joint fuse(String name, String feedSide, String loadSide, double ohm, String src) {
    return new Joint(name, feedSide, loadSide, Kind.FUSE, ohm, src);
  }
}
