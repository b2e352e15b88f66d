package org.loomwright.physics.protection;

import java.util.Optional;
import org.loomwright.physics.Require;

/**
 * A fuse, the wire behind it and what flows through them.
 *
 * @param fuse the fuse
 * @param place where it sits
 * @param fuseAmbientC air at the fuse, -40 to 125 °C
 * @param continuousA steady load, A, 0 to 1000
 * @param starting starting current and how long; it must not open the fuse
 * @param stalled current of the stalled load; it must open the fuse before the wire is damaged. Its
 *     duration is not used
 * @param wire the wire at the start of a fault
 * @param faults smallest and largest fault current
 * @param openingTimeS a fault at the end of the line must open the fuse within this time, s, 0.01
 *     to 60
 */
public record ProtectionRequest(
    Fuse fuse,
    FusePlace place,
    double fuseAmbientC,
    double continuousA,
    Optional<LoadPoint> starting,
    Optional<LoadPoint> stalled,
    DamageLine.Wire wire,
    FaultCurrents.Loop faults,
    double openingTimeS) {
  /** Time for a fault at the end of the line where nothing else is asked for, s. */
  public static final double DEFAULT_OPENING_S = Withstand.LONGEST_S;

  /** Checks the ranges. */
  public ProtectionRequest {
    Require.within("steady load", continuousA, 0, 1000, "A");
    Require.within("opening time", openingTimeS, 0.01, 60, "s");
  }

  /** The same with another fuse. */
  public ProtectionRequest withFuse(Fuse other) {
    return new ProtectionRequest(
        other, place, fuseAmbientC, continuousA, starting, stalled, wire, faults, openingTimeS);
  }
}
