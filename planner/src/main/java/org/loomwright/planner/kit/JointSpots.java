package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.JointSpot;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Run;
import org.loomwright.planner.landing.Touch;

/**
 * Where joints lie: on the run by which the source comes to the joint's place, as near to the place
 * as the spacing from it and from other joints allows. A joint that finds no room on a run, or
 * whose leads may be cut off it to end in something else, ends a stub of its own at the place.
 */
final class JointSpots {
  private final double spacingMm;
  private final Map<String, JointSpot> spots = new LinkedHashMap<>();
  private final Map<String, List<Double>> taken = new LinkedHashMap<>();

  JointSpots(KitOrder order, List<Strand> strands, Tails tails) {
    this.spacingMm = order.rules().spliceSpacing().value().mm();
    Map<Touch.AtJoint, List<Tails.End>> joints = new LinkedHashMap<>();
    for (Strand strand : strands) {
      for (boolean sideA : new boolean[] {true, false}) {
        if (strand.made(sideA) instanceof Touch.AtJoint at) {
          joints.computeIfAbsent(at, j -> new ArrayList<>()).add(new Tails.End(strand, sideA));
        }
      }
    }
    joints.forEach((at, ends) -> spots.put(at.joint(), spot(at, ends, tails)));
  }

  /** All joints, in the order of the strands. */
  List<JointSpot> all() {
    return List.copyOf(spots.values());
  }

  /**
   * What a joint adds to the path of a lead that ends in it, mm; less than zero for the lead that
   * comes along the run on which the joint lies.
   */
  double addsMm(Strand strand, boolean sideA, Touch.AtJoint at) {
    JointSpot spot = spots.get(at.joint());
    if (spot == null) {
      throw new IllegalArgumentException("no joint " + at.joint());
    }
    boolean along =
        spot.run().isPresent()
            && last(strand, sideA).map(Run::id).filter(spot.run().get()::equals).isPresent();
    return along ? -spot.atMm() : spot.atMm();
  }

  private JointSpot spot(Touch.AtJoint at, List<Tails.End> ends, Tails tails) {
    double cutOffMm =
        ends.stream()
            .mapToDouble(end -> tails.longestMm(end.strand(), end.sideA()))
            .max()
            .orElse(0);
    if (cutOffMm == 0) {
      for (boolean source : new boolean[] {true, false}) {
        for (Tails.End end : ends) {
          Optional<Run> run = last(end.strand(), end.sideA());
          if (run.isPresent() && end.sideA() != source) {
            Optional<Double> atMm = room(run.get(), at.place());
            if (atMm.isPresent()) {
              return new JointSpot(at.joint(), at.place(), run.map(Run::id), atMm.get());
            }
          }
        }
      }
    }
    return new JointSpot(at.joint(), at.place(), Optional.empty(), Math.max(spacingMm, cutOffMm));
  }

  // Joints on a run are a spacing apart, and as far from its ends.
  private Optional<Double> room(Run run, String place) {
    double lengthMm = Lengths.madeMm(run);
    List<Double> fromStart = taken.computeIfAbsent(run.id(), r -> new ArrayList<>());
    for (double atMm = spacingMm; atMm <= lengthMm - spacingMm; atMm += spacingMm) {
      double startMm = run.from().equals(place) ? atMm : lengthMm - atMm;
      if (fromStart.stream().allMatch(it -> Math.abs(it - startMm) >= spacingMm - 1e-9)) {
        fromStart.add(startMm);
        return Optional.of(atMm);
      }
    }
    return Optional.empty();
  }

  /** The run by which a strand comes to its end; empty when both ends are at one place. */
  private static Optional<Run> last(Strand strand, boolean sideA) {
    List<Run> runs = strand.route().runs();
    return runs.isEmpty() ? Optional.empty() : Optional.of(runs.get(sideA ? 0 : runs.size() - 1));
  }
}
