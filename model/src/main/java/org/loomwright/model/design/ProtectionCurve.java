package org.loomwright.model.design;

import java.util.List;
import java.util.Optional;

/**
 * A fuse against the wire it protects, over current and time.
 *
 * @param lead the lead
 * @param fuse the fuse in words, e.g. "fuse 15 A in slot F3 of the rear block"
 * @param wire the wire in words, e.g. "2.5 mm²"
 * @param earliest corners of the line below which the fuse stays closed, current rising; empty
 *     where it is not known
 * @param latest corners of the line above which the fuse is open, current rising
 * @param damage points of the line above which the wire is damaged, current rising
 * @param loads currents that flow in sound use, none of 0 A
 * @param smallestFaultA smallest fault current
 * @param largestFaultA largest fault current
 */
public record ProtectionCurve(
    String lead,
    String fuse,
    String wire,
    List<At> earliest,
    List<At> latest,
    List<At> damage,
    List<Load> loads,
    Optional<Double> smallestFaultA,
    Optional<Double> largestFaultA) {
  public ProtectionCurve {
    earliest = List.copyOf(earliest);
    latest = List.copyOf(latest);
    damage = List.copyOf(damage);
    loads = List.copyOf(loads);
  }

  /** A current for a time. */
  public record At(double currentA, double timeS) {}

  /** A current in sound use. */
  public record Load(String name, double currentA, double timeS) {}
}
