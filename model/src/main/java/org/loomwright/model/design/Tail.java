package org.loomwright.model.design;

import java.util.List;

/**
 * Leads that leave the bundles at a place and end in the same thing.
 *
 * @param id id, unique in the harness
 * @param place place where they leave
 * @param kind what they end in
 * @param subject the housing, connector, fuse block, ground or circuit they end in as made, the
 *     place for loose ends
 * @param ends the leads' ends
 * @param lengthMm length from the place to the terminals: slack, service loop and reach
 */
public record Tail(
    String id, String place, Kind kind, String subject, List<End> ends, double lengthMm) {
  public Tail {
    ends = List.copyOf(ends);
  }

  /** What leads end in. */
  public enum Kind {
    /** A housing that the kit brings. */
    HOUSING,
    /** A connector of the vehicle. */
    CONNECTOR,
    /** A fuse block of the vehicle. */
    BLOCK,
    /** A ground stud. */
    GROUND,
    /** A factory wire. */
    CIRCUIT,
    /** Nothing: ends that are capped and taped back. */
    LOOSE
  }

  /**
   * An end of a lead.
   *
   * @param lead the lead
   * @param sideA whether it is the lead's end a
   */
  public record End(String lead, boolean sideA) {}
}
