package org.loomwright.planner.proof;

import org.loomwright.model.design.Landing;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Spot;

/** Names of the points where conductors meet. */
final class Nodes {
  static final String GROUND = "ground ";
  static final String SLOT = "slot ";
  static final String PARKED = "parked ";
  static final String JOINT = "joint ";
  static final String CIRCUIT = "circuit ";
  static final String PIN = "pin ";

  private Nodes() {}

  static String of(Landing landing, String lead, String end) {
    if (landing instanceof Landing.InCavity it) {
      return new Spot.OfCavity(it.connector(), it.cavity()).text();
    }
    if (landing instanceof Landing.InHousing it) {
      return housing(it.housing(), it.cavity());
    }
    if (landing instanceof Landing.InSlot it) {
      return new Spot.OfSlot(it.block(), it.slot()).text();
    }
    if (landing instanceof Landing.OnGround it) {
      return new Spot.OfGround(it.ground()).text();
    }
    if (landing instanceof Landing.IntoCircuit it) {
      return CIRCUIT + it.circuit();
    }
    if (landing instanceof Landing.InJoint it) {
      return JOINT + it.joint();
    }
    return PARKED + lead + " " + end;
  }

  /** The node of a wire's end. Units and taped-back ends tie no two circuits together. */
  static String of(Spot spot, Circuit circuit) {
    return spot instanceof Spot.OfUnit || spot instanceof Spot.Loose
        ? spot.text() + " of " + circuit.id()
        : spot.text();
  }

  static String of(Circuit circuit) {
    return CIRCUIT + circuit.id();
  }

  static String housing(String housing, String cavity) {
    return "housing " + housing + " " + cavity;
  }

  /** Grounds are one potential already; nets end there. */
  static boolean endsNet(String node) {
    return node.startsWith(GROUND);
  }
}
