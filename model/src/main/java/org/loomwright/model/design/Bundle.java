package org.loomwright.model.design;

import java.util.List;
import java.util.Optional;

/**
 * The leads that lie together on a run.
 *
 * @param run the run
 * @param from place at one end
 * @param to place at the other end
 * @param lengthMm length as made: that of the run and its tolerance, so that the longest real
 *     vehicle is reached
 * @param wires leads in it with their places in the smallest circle round all of them
 * @param diameterMm diameter of that circle
 * @param covering what covers it, empty when no covering on file takes the bundle and the heat
 * @param overallMm diameter over the covering
 * @param bendRadiusMm least radius of a bend, at the middle of the bundle
 * @param clips clips that hold it, empty when no clip on file takes it
 * @param passages holes it passes through
 */
public record Bundle(
    String run,
    String from,
    String to,
    double lengthMm,
    List<Wire> wires,
    double diameterMm,
    Optional<Covered> covering,
    double overallMm,
    double bendRadiusMm,
    Optional<Clips> clips,
    List<Passage> passages) {
  public Bundle {
    wires = List.copyOf(wires);
    passages = List.copyOf(passages);
  }

  /** Ids of the leads in it. */
  public List<String> leads() {
    return wires.stream().map(Wire::lead).toList();
  }

  /**
   * A wire in the section of the bundle; the circle's centre is at 0, 0.
   *
   * @param lead the lead
   * @param xMm its centre, to the right
   * @param yMm its centre, downwards
   * @param diameterMm its diameter over the insulation
   */
  public record Wire(String lead, double xMm, double yMm, double diameterMm) {}

  /**
   * The covering of a bundle.
   *
   * @param part covering part
   * @param lengthMm length of covered bundle
   * @param tapeMm length of tape for it, for tape whose width is on file
   * @param fill share of a conduit's inner section that the bundle takes, for a conduit
   */
  public record Covered(
      String part, double lengthMm, Optional<Double> tapeMm, Optional<Double> fill) {}

  /**
   * The clips of a bundle.
   *
   * @param part clip part
   * @param count number of clips
   * @param spacingMm distance between two clips
   */
  public record Clips(String part, int count, double spacingMm) {}

  /**
   * A hole that the bundle passes through.
   *
   * @param hole name of the hole
   * @param grommet grommet to fit; empty when the factory one stays or none on file fits
   * @param boreMm largest bundle that the hole takes as it is then
   * @param fill share of that bore's section taken by this bundle and by what was there before
   */
  public record Passage(String hole, Optional<String> grommet, double boreMm, double fill) {}
}
