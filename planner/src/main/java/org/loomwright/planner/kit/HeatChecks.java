package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.model.design.TraceLine;
import org.loomwright.physics.heat.BundleHeat;
import org.loomwright.planner.sizing.WireNeed;

/** Conductor temperatures of the leads in their bundles, under load and while a fuse holds. */
final class HeatChecks {
  private static final String SOURCE =
      "heat balance of the bundle: natural convection (Churchill and Chu 1975) and radiation"
          + " outside, conduction inside; limit: rating of the insulation by the parts list";

  private final BundleHeats heats;
  private final Checklist list;

  HeatChecks(BundleHeats heats, Checklist list) {
    this.heats = heats;
    this.list = list;
  }

  /**
   * A lead where it is hottest while it carries for good what its fuse does not open at, the others
   * at their load: an overload that opens no fuse is a fault of one lead.
   */
  static BundleHeats.Hottest overload(
      WireNeed need, List<BundleHeats.Hottest> bundles, BundleHeats heats) {
    double holdingA = need.isFused() ? need.fuse().holdingA() : 0;
    return bundles.stream()
        .map(it -> heats.withCurrent(it, Math.max(it.currentA(), holdingA)))
        .max(Comparator.comparingDouble(BundleHeats.Hottest::conductorC))
        .orElseThrow(() -> new IllegalStateException("a lead without a bundle"));
  }

  void check(Sized sized, Evaluation evaluation) {
    add(
        sized,
        "bundle heat",
        "rise of the conductor in its bundle under load",
        evaluation.hottest(sized.strand()));
    if (!sized.need().isFused()) {
      return;
    }
    add(
        sized,
        "overload heat",
        "rise of the conductor in its bundle at what its fuse lets pass for good",
        overload(sized.need(), evaluation.heat().getOrDefault(sized.strand(), List.of()), heats));
  }

  private void add(Sized sized, String id, String name, BundleHeats.Hottest hottest) {
    double ambientC = hottest.bundle().ambientC();
    list.add(
        id + "/" + sized.lead().id(),
        name,
        "lead " + sized.lead().id(),
        List.copyOf(sized.strand().cases()),
        hottest.conductorC() - ambientC,
        Math.max(0, sized.wire().rating().celsius() - ambientC),
        true,
        "K",
        SOURCE,
        trace(sized, hottest));
  }

  private static List<TraceLine> trace(Sized sized, BundleHeats.Hottest hottest) {
    List<TraceLine> trace = new ArrayList<>();
    BundleHeat.Bundle bundle = hottest.bundle();
    double ambientC = bundle.ambientC();
    double ratingC = sized.wire().rating().celsius();
    String where =
        hottest
            .run()
            .map(run -> "along run " + run)
            .orElse("where the lead lies by itself, at its hottest place");
    trace.add(given("ambient " + where, ambientC, "°C", "vehicle document"));
    BundleHeat.trace(bundle, hottest.index())
        .ifPresent(
            it ->
                Checklist.lines(it).stream()
                    .filter(line -> !line.what().equals("ambient"))
                    .forEach(trace::add));
    trace.add(
        new TraceLine(
            "rise of the conductor",
            "conductor - ambient",
            hottest.conductorC() - ambientC,
            "K",
            "definition"));
    trace.add(given("rating of the insulation", ratingC, "°C", sized.wire().source()));
    trace.add(
        new TraceLine(
            "rise up to the rating",
            ratingC > ambientC ? "rating of the insulation - ambient" : "none, the air is warmer",
            Math.max(0, ratingC - ambientC),
            "K",
            "definition"));
    return trace;
  }

  private static TraceLine given(String what, double value, String unit, String source) {
    return new TraceLine(what, "given", value, unit, source);
  }
}
