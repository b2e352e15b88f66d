package org.loomwright.physics.protection;

/**
 * Opening-time limits of a fuse at one multiple of its rating.
 *
 * @param multiple current over rating
 * @param minS the fuse stays closed at least this long, s; 0 where no limit is known
 * @param maxS it has opened after this long, s; infinite where no limit is known
 * @param source where the limits come from
 */
public record FuseGate(double multiple, double minS, double maxS, String source) {}
