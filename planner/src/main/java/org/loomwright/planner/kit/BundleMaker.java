package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Lead;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Clip;
import org.loomwright.model.parts.Covering;
import org.loomwright.model.parts.CoveringForm;
import org.loomwright.model.parts.Grommet;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.RunDefaults;
import org.loomwright.model.vehicle.Hole;
import org.loomwright.model.vehicle.Run;
import org.loomwright.physics.packing.BundleSize;
import org.loomwright.physics.packing.Circle;

/**
 * Bundles as made: the wires in the smallest circle round them, covering, clips, bend radius and
 * what protects them in holes. Over the length of a splice a bundle is thicker than said here.
 */
final class BundleMaker {
  private static final double SLACK = 1e-9;

  private final KitOrder order;
  private final Rules rules;
  private final Coverings coverings;

  BundleMaker(KitOrder order) {
    this.order = order;
    this.rules = order.rules();
    this.coverings = new Coverings(order);
  }

  /** The bundles of leads, one for each run in use, in the order of the vehicle's document. */
  List<Bundle> of(List<Lead> leads) {
    List<Bundle> bundles = new ArrayList<>();
    for (Run run : order.vehicle().runs()) {
      List<Lead> together = leads.stream().filter(it -> it.runs().contains(run.id())).toList();
      if (!together.isEmpty()) {
        bundles.add(bundle(run, together));
      }
    }
    return bundles;
  }

  private Bundle bundle(Run run, List<Lead> leads) {
    List<Double> diametersMm = leads.stream().map(this::diameterMm).toList();
    BundleSize.Result size = coverings.packed(diametersMm);
    List<Bundle.Wire> wires = new ArrayList<>();
    for (int i = 0; i < leads.size(); i++) {
      Circle circle = size.packing().circles().get(i);
      wires.add(
          new Bundle.Wire(leads.get(i).id(), circle.xMm(), circle.yMm(), 2 * circle.radiusMm()));
    }
    double bundleMm = size.diameterMm();
    double lengthMm = Lengths.madeMm(run);
    Optional<Covering> covering = coverings.of(run, diametersMm);
    double overallMm =
        covering.map(it -> Coverings.overallMm(it, diametersMm, bundleMm)).orElse(bundleMm);
    double bend =
        (run.moving() ? RunDefaults.bendMoving(rules) : RunDefaults.bendFixed(rules))
            .value()
            .fraction();
    return new Bundle(
        run.id(),
        run.from(),
        run.to(),
        lengthMm,
        wires,
        bundleMm,
        covering.map(
            it ->
                new Bundle.Covered(
                    it.id(),
                    lengthMm,
                    tapeMm(it, bundleMm, lengthMm),
                    Coverings.fill(it, bundleMm))),
        overallMm,
        bend * overallMm,
        clip(overallMm).map(it -> clips(it, lengthMm)),
        run.holes().stream().map(hole -> passage(hole, overallMm)).toList());
  }

  private double diameterMm(Lead lead) {
    return order
        .parts()
        .wire(lead.wire())
        .map(it -> it.diameter().mm())
        .orElseThrow(() -> new IllegalStateException("no wire " + lead.wire()));
  }

  /**
   * Tape wound on at the rules' overlap: area of the bundle's surface over what a turn moves on.
   * Ends of the tape come on top.
   */
  private Optional<Double> tapeMm(Covering covering, double bundleMm, double lengthMm) {
    boolean tape =
        covering
            .form()
            .filter(it -> it == CoveringForm.TAPE || it == CoveringForm.CLOTH_TAPE)
            .isPresent();
    double apart = 1 - RunDefaults.tapeOverlap(rules).value().fraction();
    return covering
        .tapeWidth()
        .filter(width -> tape)
        .map(width -> Math.PI * bundleMm * lengthMm / (width.mm() * apart));
  }

  /** The cheapest clip that holds a bundle. */
  private Optional<Clip> clip(double overallMm) {
    return order.parts().clips().stream()
        .filter(
            it ->
                it.bundleLeast().mm() <= overallMm + SLACK
                    && it.bundleMost().mm() >= overallMm - SLACK)
        .min(Comparator.comparing((Clip it) -> it.price().amount()).thenComparing(Clip::id));
  }

  // A clip near both ends, and others so that none is farther from the next than allowed.
  private Bundle.Clips clips(Clip clip, double lengthMm) {
    double endMm = RunDefaults.firstClip(rules).value().mm();
    double mostMm = RunDefaults.clipSpacing(rules).value().mm();
    double betweenMm = lengthMm - 2 * endMm;
    if (betweenMm <= 0) {
      return new Bundle.Clips(clip.id(), 1, 0);
    }
    int gaps = (int) Math.ceil(betweenMm / mostMm - SLACK);
    return new Bundle.Clips(clip.id(), gaps + 1, betweenMm / gaps);
  }

  /**
   * What protects the bundle in a hole: the factory grommet where it has room, else the cheapest on
   * file that takes this bundle and what was there before.
   */
  private Bundle.Passage passage(Hole hole, double overallMm) {
    double takenMm = hole.taken().map(Length::mm).orElse(0.0);
    double mostFill = RunDefaults.holeFill(rules).value().fraction();
    if (hole.bore().isPresent()) {
      double boreMm = hole.bore().get().mm();
      return new Bundle.Passage(
          hole.name(), Optional.empty(), boreMm, fill(overallMm, takenMm, boreMm));
    }
    double togetherMm = Math.hypot(overallMm, takenMm);
    return order.parts().grommets().stream()
        .filter(
            it ->
                it.holeLeast().mm() <= hole.diameter().mm() + SLACK
                    && it.holeMost().mm() >= hole.diameter().mm() - SLACK)
        .filter(it -> it.bundleLeast().mm() <= togetherMm + SLACK)
        .filter(it -> fill(overallMm, takenMm, it.bundleMost().mm()) <= mostFill)
        .min(Comparator.comparing((Grommet it) -> it.price().amount()).thenComparing(Grommet::id))
        .map(
            it ->
                new Bundle.Passage(
                    hole.name(),
                    Optional.of(it.id()),
                    it.bundleMost().mm(),
                    fill(overallMm, takenMm, it.bundleMost().mm())))
        .orElseGet(
            () ->
                new Bundle.Passage(
                    hole.name(),
                    Optional.empty(),
                    0,
                    fill(overallMm, takenMm, hole.diameter().mm())));
  }

  private static double fill(double overallMm, double takenMm, double boreMm) {
    return (overallMm * overallMm + takenMm * takenMm) / (boreMm * boreMm);
  }
}
