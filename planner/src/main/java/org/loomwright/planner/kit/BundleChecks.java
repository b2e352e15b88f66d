package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.JointSpot;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Clip;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.rules.RunDefaults;
import org.loomwright.model.rules.Sourced;
import org.loomwright.model.vehicle.Hole;
import org.loomwright.model.vehicle.Nearby;
import org.loomwright.model.vehicle.Run;

/** Checks of the bundles: covering, conduit, holes, clips, clearances and where joints lie. */
final class BundleChecks {
  private static final String VEHICLE = "vehicle document";
  private static final String PARTS = "parts list";
  private static final String PACKED = "smallest circle found round the wires";

  private final KitOrder order;
  private final Rules rules;
  private final Coverings coverings;
  private final Checklist list;

  BundleChecks(KitOrder order, Checklist list) {
    this.order = order;
    this.rules = order.rules();
    this.coverings = new Coverings(order);
    this.list = list;
  }

  void check(Harness harness, List<Sized> leads) {
    for (Bundle bundle : harness.bundles()) {
      Run run =
          order.vehicle().runs().stream()
              .filter(it -> it.id().equals(bundle.run()))
              .findFirst()
              .orElseThrow();
      new One(bundle, run, cases(bundle, leads)).check();
    }
    harness.joints().forEach(spot -> joint(spot, harness.joints(), leads));
  }

  private static List<String> cases(Bundle bundle, List<Sized> leads) {
    Set<String> cases = new LinkedHashSet<>();
    for (Sized sized : leads) {
      if (bundle.leads().contains(sized.lead().id())) {
        cases.addAll(sized.strand().cases());
      }
    }
    return List.copyOf(cases);
  }

  private void joint(JointSpot spot, List<JointSpot> all, List<Sized> leads) {
    double nearestMm = spot.atMm();
    if (spot.run().isPresent()) {
      Run run =
          order.vehicle().runs().stream()
              .filter(it -> it.id().equals(spot.run().get()))
              .findFirst()
              .orElseThrow();
      double lengthMm = Lengths.madeMm(run);
      nearestMm = Math.min(nearestMm, lengthMm - spot.atMm());
      for (JointSpot other : all) {
        if (!other.equals(spot) && other.run().equals(spot.run())) {
          nearestMm =
              Math.min(
                  nearestMm,
                  Math.abs(fromStart(spot, run, lengthMm) - fromStart(other, run, lengthMm)));
        }
      }
    }
    list.addRating(
        "joint/" + spot.joint() + "/spacing",
        "distance of the joint from the next joint or the end of its run",
        "joint " + spot.joint(),
        leads.stream().flatMap(it -> it.strand().cases().stream()).distinct().toList(),
        nearestMm,
        rules.spliceSpacing().value().mm(),
        false,
        "mm",
        rules.spliceSpacing().source(),
        List.of());
  }

  private static double fromStart(JointSpot spot, Run run, double lengthMm) {
    return run.from().equals(spot.place()) ? spot.atMm() : lengthMm - spot.atMm();
  }

  private static TraceLine given(String what, double value, String unit, String source) {
    return new TraceLine(what, "given", value, unit, source);
  }

  /** One bundle. */
  private final class One {
    private final Bundle bundle;
    private final Run run;
    private final List<String> cases;

    One(Bundle bundle, Run run, List<String> cases) {
      this.bundle = bundle;
      this.run = run;
      this.cases = cases;
    }

    void check() {
      covering();
      conduit();
      clip();
      for (int i = 0; i < run.holes().size(); i++) {
        hole(run.holes().get(i), bundle.passages().get(i));
      }
      run.near().forEach(this::clearance);
    }

    private void rating(
        String id,
        String name,
        double figure,
        double limit,
        boolean atMost,
        String unit,
        String source,
        List<TraceLine> trace) {
      list.addRating(
          "bundle/" + run.id() + "/" + id,
          name,
          "bundle along run " + run.id(),
          cases,
          figure,
          limit,
          atMost,
          unit,
          source,
          trace);
    }

    private void covering() {
      if (order.parts().coverings().isEmpty()) {
        return;
      }
      double most =
          order.parts().coverings().stream()
              .filter(it -> it.rating().celsius() >= coverings.ambientC(run))
              .mapToDouble(
                  it ->
                      it.inner()
                          .map(
                              inner ->
                                  Math.min(
                                      it.bundleMost().mm(),
                                      inner.mm() * Math.sqrt(conduitFill().value().fraction())))
                          .orElse(it.bundleMost().mm()))
              .max()
              .orElse(0);
      rating(
          "covering",
          "bundle within what a covering on file takes",
          bundle.diameterMm(),
          most,
          true,
          "mm",
          "largest bundle of the coverings rated for the run's heat; " + PARTS,
          List.of(
              given("diameter of the bundle", bundle.diameterMm(), "mm", PACKED),
              given("largest bundle a covering takes", most, "mm", PARTS)));
    }

    private void conduit() {
      bundle
          .covering()
          .flatMap(Bundle.Covered::fill)
          .ifPresent(
              fill -> {
                double innerMm = bundle.diameterMm() / Math.sqrt(fill);
                rating(
                    "conduit",
                    "share of the conduit taken",
                    fill,
                    conduitFill().value().fraction(),
                    true,
                    "1",
                    conduitFill().source(),
                    List.of(
                        given("D, diameter of the bundle", bundle.diameterMm(), "mm", PACKED),
                        given("Di, inner diameter of the conduit", innerMm, "mm", PARTS),
                        new TraceLine("share of the conduit taken", "D² / Di²", fill, "1", "")));
              });
    }

    private void clip() {
      if (order.parts().clips().isEmpty() || bundle.clips().isPresent()) {
        return;
      }
      double most =
          order.parts().clips().stream()
              .map(Clip::bundleMost)
              .mapToDouble(Length::mm)
              .max()
              .orElse(0);
      // No clip fits: the bundle is too thick for all, or too thin for what would take it.
      rating(
          "clip",
          "clips on file that hold the bundle",
          0,
          1,
          false,
          "pc",
          PARTS,
          List.of(
              given("diameter over the covering", bundle.overallMm(), "mm", PARTS),
              given("largest bundle a clip takes", most, "mm", PARTS)));
    }

    private void hole(Hole hole, Bundle.Passage passage) {
      boolean covered = passage.grommet().isPresent() || hole.bore().isPresent();
      rating(
          "hole/" + hole.name() + "/edge",
          "grommets in the hole",
          covered ? 1 : 0,
          1,
          false,
          "pc",
          "common practice: no bundle lies on the bare edge of a hole",
          List.of());
      if (!covered) {
        return;
      }
      double takenMm = hole.taken().map(Length::mm).orElse(0.0);
      List<TraceLine> trace = new ArrayList<>();
      trace.add(given("Do, diameter over the covering", bundle.overallMm(), "mm", PARTS));
      trace.add(given("Dt, diameter of what is in the hole already", takenMm, "mm", VEHICLE));
      trace.add(
          given(
              "Db, bore of the grommet in " + hole.name(),
              passage.boreMm(),
              "mm",
              passage.grommet().isPresent() ? PARTS : VEHICLE));
      trace.add(
          new TraceLine("share of the bore taken", "(Do² + Dt²) / Db²", passage.fill(), "1", ""));
      Sourced<Percent> most = RunDefaults.holeFill(rules);
      rating(
          "hole/" + hole.name() + "/fill",
          "share of the bore taken",
          passage.fill(),
          most.value().fraction(),
          true,
          "1",
          most.source(),
          trace);
    }

    private void clearance(Nearby near) {
      Sourced<Length> clear = RunDefaults.clear(rules, near.what());
      rating(
          "clear/" + near.what().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
          "distance to " + near.what().words(),
          near.distance().mm(),
          clear.value().mm(),
          false,
          "mm",
          clear.source(),
          List.of(
              given("distance to " + near.what().words(), near.distance().mm(), "mm", VEHICLE)));
    }

    private Sourced<Percent> conduitFill() {
      return RunDefaults.conduitFill(rules);
    }
  }
}
