package org.loomwright.physics.sizing;

import java.util.List;
import java.util.OptionalDouble;
import org.loomwright.physics.Require;
import org.loomwright.physics.protection.FuseFamily;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.wire.Conductor;

/**
 * What a fuse is chosen for. Start with {@link #of} and change what differs from the defaults.
 *
 * @param continuousA steady load, A, not below zero
 * @param peakA starting current, A; 0 for none
 * @param peakTimeS how long it lasts, s; 0 for none
 * @param conductor the wire the fuse protects
 * @param oneWayLengthM length from the fuse to the load, m
 * @param returnLengthM length of the way back in the same wire, m
 * @param ambientC air temperature along the wire, °C
 * @param supplyV lowest supply voltage at which the load runs and a fault must clear, V
 * @param wires wires in the bundle, this one included
 * @param loadedShare see {@link org.loomwright.physics.heat.Ampacity.Input}
 * @param insulationRatingC highest continuous temperature of the insulation, °C
 * @param insulation material, for the temperature at the end of a short circuit
 * @param maxRatingA largest rating the slot or holder takes, A; empty: no such limit
 * @param families forms of fuse that may be used, in order of preference; a later family adds only
 *     ratings above those of the earlier ones
 * @param limits the shop's limits
 */
public record FuseRequest(
    double continuousA,
    double peakA,
    double peakTimeS,
    Conductor conductor,
    double oneWayLengthM,
    double returnLengthM,
    double ambientC,
    double supplyV,
    int wires,
    OptionalDouble loadedShare,
    double insulationRatingC,
    Insulation insulation,
    OptionalDouble maxRatingA,
    List<FuseFamily> families,
    FuseLimits limits) {
  /** Insulation rating where none is given: class B of ISO 6722-1, -40 to 105 °C. */
  public static final double DEFAULT_RATING_C = 105;

  /** Checks the ranges. */
  public FuseRequest {
    Require.notNegative("continuous current", continuousA, "A");
    Require.notNegative("peak current", peakA, "A");
    Require.notNegative("peak time", peakTimeS, "s");
    Require.notNegative("length", oneWayLengthM, "m");
    Require.notNegative("return length", returnLengthM, "m");
    Require.positive("supply voltage", supplyV, "V");
    maxRatingA.ifPresent(a -> Require.positive("largest fuse rating", a, "A"));
    families = List.copyOf(families);
  }

  /**
   * A single wire with 105 °C PVC insulation, the way back as long as the feed, regular blade fuses
   * and large blade fuses above them, default limits.
   */
  public static FuseRequest of(
      double continuousA,
      double peakA,
      double peakTimeS,
      Conductor conductor,
      double oneWayLengthM,
      double ambientC,
      double supplyV) {
    return new FuseRequest(
        continuousA,
        peakA,
        peakTimeS,
        conductor,
        oneWayLengthM,
        oneWayLengthM,
        ambientC,
        supplyV,
        1,
        OptionalDouble.empty(),
        DEFAULT_RATING_C,
        Insulation.PVC,
        OptionalDouble.empty(),
        List.of(FuseFamily.REGULAR_BLADE, FuseFamily.LARGE_BLADE),
        FuseLimits.DEFAULT);
  }

  /** The same with another wire. */
  public FuseRequest withConductor(Conductor other) {
    return new FuseRequest(
        continuousA,
        peakA,
        peakTimeS,
        other,
        oneWayLengthM,
        returnLengthM,
        ambientC,
        supplyV,
        wires,
        loadedShare,
        insulationRatingC,
        insulation,
        maxRatingA,
        families,
        limits);
  }

  /** The same with a way back of its own length. */
  public FuseRequest withReturnLengthM(double lengthM) {
    return new FuseRequest(
        continuousA,
        peakA,
        peakTimeS,
        conductor,
        oneWayLengthM,
        lengthM,
        ambientC,
        supplyV,
        wires,
        loadedShare,
        insulationRatingC,
        insulation,
        maxRatingA,
        families,
        limits);
  }

  /** The same in a bundle. */
  public FuseRequest withBundle(int wireCount, OptionalDouble share) {
    return new FuseRequest(
        continuousA,
        peakA,
        peakTimeS,
        conductor,
        oneWayLengthM,
        returnLengthM,
        ambientC,
        supplyV,
        wireCount,
        share,
        insulationRatingC,
        insulation,
        maxRatingA,
        families,
        limits);
  }

  /** The same with another insulation. */
  public FuseRequest withInsulation(double ratingC, Insulation material) {
    return new FuseRequest(
        continuousA,
        peakA,
        peakTimeS,
        conductor,
        oneWayLengthM,
        returnLengthM,
        ambientC,
        supplyV,
        wires,
        loadedShare,
        ratingC,
        material,
        maxRatingA,
        families,
        limits);
  }

  /** The same with other fuses allowed. */
  public FuseRequest withFuses(List<FuseFamily> allowed, OptionalDouble largestRatingA) {
    return new FuseRequest(
        continuousA,
        peakA,
        peakTimeS,
        conductor,
        oneWayLengthM,
        returnLengthM,
        ambientC,
        supplyV,
        wires,
        loadedShare,
        insulationRatingC,
        insulation,
        largestRatingA,
        allowed,
        limits);
  }

  /** The same with other limits. */
  public FuseRequest withLimits(FuseLimits other) {
    return new FuseRequest(
        continuousA,
        peakA,
        peakTimeS,
        conductor,
        oneWayLengthM,
        returnLengthM,
        ambientC,
        supplyV,
        wires,
        loadedShare,
        insulationRatingC,
        insulation,
        maxRatingA,
        families,
        other);
  }
}
