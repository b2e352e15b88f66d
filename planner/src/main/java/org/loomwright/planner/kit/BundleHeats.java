package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.vehicle.Run;
import org.loomwright.physics.heat.BundleHeat;
import org.loomwright.physics.heat.Covering;
import org.loomwright.physics.heat.LoadedWire;
import org.loomwright.physics.memo.Memo;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.planner.sizing.Conductors;
import org.loomwright.planner.watch.PlanningStopped;

/**
 * Conductor temperatures of leads where they lie, in the bundles of all added leads on their runs,
 * under the covering of each run, at the ambient of each run.
 *
 * <p>Cases of one component exclude one another, so each is looked at by itself; the other
 * components' leads in the bundle then carry what they carry in the case that makes most heat
 * there. Loads count as on without end, whatever their duty. The bundle is taken as tight as can
 * be, which is on the hot side. Parked leads lie in the bundle without current.
 */
final class BundleHeats {
  // A kit that is planned again after a change mostly has the same bundles.
  private static final Memo<BundleHeat.Bundle, Optional<BundleHeat.Result>> KNOWN =
      new Memo<>(2000);

  private final Coverings coverings;
  private final List<Bundle> bundles = new ArrayList<>();

  /** Leads that lie together on a run, or alone where both ends are at one place. */
  private record Bundle(List<Strand> strands, Optional<Run> run, double ambientC) {}

  /**
   * A lead in one of its bundles, in the case in which it is hottest there.
   *
   * @param conductorC its conductor temperature, °C; infinite when copper would melt
   * @param run run of the bundle; empty for the lead by itself at its hottest place
   * @param bundle the bundle as it was solved
   * @param index which wire of the bundle it is
   */
  record Hottest(double conductorC, Optional<String> run, BundleHeat.Bundle bundle, int index) {
    /** Its current there, A. */
    double currentA() {
      return bundle.wires().get(index).currentA();
    }
  }

  BundleHeats(KitOrder order, List<Strand> strands) {
    this.coverings = new Coverings(order);
    Map<Run, List<Strand>> byRun = new LinkedHashMap<>();
    for (Strand strand : strands) {
      Set<Run> runs = new LinkedHashSet<>(strand.route().runs());
      runs.forEach(run -> byRun.computeIfAbsent(run, r -> new ArrayList<>()).add(strand));
      // Beyond its runs a lead lies alone, in the ambient of its hottest place.
      bundles.add(new Bundle(List.of(strand), Optional.empty(), strand.route().ambientC()));
    }
    // In the order of the vehicle's document, so that the order of leads does not matter.
    for (Run run : order.vehicle().runs()) {
      List<Strand> together = byRun.get(run);
      if (together != null) {
        bundles.add(new Bundle(together, Optional.of(run), coverings.ambientC(run)));
      }
    }
  }

  /**
   * Each strand in each of its bundles, there in the worst of all cases.
   *
   * @param wires wire of each strand
   * @param currents current of each strand by case, A
   */
  Map<Strand, List<Hottest>> at(
      Map<Strand, Wire> wires, Map<Strand, Map<String, Double>> currents) {
    Map<Strand, List<Hottest>> all = new LinkedHashMap<>();
    for (Bundle bundle : bundles) {
      Map<Strand, Hottest> hottest = new LinkedHashMap<>();
      for (Map<Strand, Double> load : loads(bundle, wires, currents)) {
        PlanningStopped.ifAsked();
        BundleHeat.Bundle lying = lying(bundle, wires, load);
        Optional<BundleHeat.Result> result = solve(lying);
        for (int i = 0; i < bundle.strands().size(); i++) {
          int index = i;
          Strand strand = bundle.strands().get(i);
          Hottest here =
              new Hottest(
                  result.map(it -> it.conductorC().get(index)).orElse(Double.POSITIVE_INFINITY),
                  bundle.run().map(Run::id),
                  lying,
                  i);
          hottest.merge(
              strand, here, (one, two) -> two.conductorC() > one.conductorC() ? two : one);
        }
      }
      hottest.forEach((strand, it) -> all.computeIfAbsent(strand, s -> new ArrayList<>()).add(it));
    }
    return all;
  }

  /** The same while the lead carries more than its load, the others as they were. */
  Hottest withCurrent(Hottest hottest, double currentA) {
    BundleHeat.Bundle bundle = hottest.bundle().withCurrentA(hottest.index(), currentA);
    return new Hottest(
        solve(bundle)
            .map(it -> it.conductorC().get(hottest.index()))
            .orElse(Double.POSITIVE_INFINITY),
        hottest.run(),
        bundle,
        hottest.index());
  }

  /** The bundle of a lead, solved; empty when copper would melt. */
  Optional<BundleHeat.Result> result(Hottest hottest) {
    return solve(hottest.bundle());
  }

  private Optional<BundleHeat.Result> solve(BundleHeat.Bundle bundle) {
    return KNOWN.of(bundle, BundleHeat::tryTemperatures);
  }

  // One load per case of every component in the bundle, the others at their worst.
  private static List<Map<Strand, Double>> loads(
      Bundle bundle, Map<Strand, Wire> wires, Map<Strand, Map<String, Double>> currents) {
    Map<String, Set<String>> cases = new LinkedHashMap<>();
    for (Strand strand : bundle.strands()) {
      cases.computeIfAbsent(strand.component(), c -> new LinkedHashSet<>()).addAll(strand.cases());
    }
    Map<String, Map<Strand, Double>> worst = new LinkedHashMap<>();
    Map<String, List<Map<Strand, Double>>> each = new LinkedHashMap<>();
    cases.forEach(
        (component, ids) -> {
          List<Map<Strand, Double>> loads = new ArrayList<>();
          for (String id : ids) {
            Map<Strand, Double> load = new LinkedHashMap<>();
            for (Strand strand : bundle.strands()) {
              if (strand.component().equals(component)) {
                load.put(strand, currents.getOrDefault(strand, Map.of()).getOrDefault(id, 0.0));
              }
            }
            loads.add(load);
          }
          each.put(component, loads.stream().distinct().toList());
          worst.put(
              component,
              loads.stream().max(Comparator.comparingDouble(it -> heat(it, wires))).orElseThrow());
        });
    Set<Map<Strand, Double>> all = new LinkedHashSet<>();
    each.forEach(
        (component, loads) -> {
          for (Map<Strand, Double> load : loads) {
            Map<Strand, Double> whole = new LinkedHashMap<>();
            worst.forEach((other, its) -> whole.putAll(other.equals(component) ? load : its));
            all.add(whole);
          }
        });
    return List.copyOf(all);
  }

  private static double heat(Map<Strand, Double> load, Map<Strand, Wire> wires) {
    double heat = 0;
    for (Map.Entry<Strand, Double> one : load.entrySet()) {
      Wire wire = wires.get(one.getKey());
      if (wire != null) {
        heat += one.getValue() * one.getValue() * Conductors.of(wire).ohmPerM20C();
      }
    }
    return heat;
  }

  private BundleHeat.Bundle lying(
      Bundle bundle, Map<Strand, Wire> wires, Map<Strand, Double> load) {
    List<LoadedWire> loaded = new ArrayList<>();
    List<Double> diametersMm = new ArrayList<>();
    for (Strand strand : bundle.strands()) {
      Conductor conductor = Conductors.of(wire(wires, strand));
      loaded.add(new LoadedWire(conductor.label(), conductor, load.getOrDefault(strand, 0.0)));
      diametersMm.add(conductor.overallDiameterMm());
    }
    List<Covering> layers =
        bundle
            .run()
            .flatMap(run -> coverings.of(run, diametersMm))
            .map(part -> List.of(Coverings.layer(part, diametersMm)))
            .orElse(List.of());
    return new BundleHeat.Bundle(loaded, bundle.ambientC(), OptionalDouble.empty(), layers);
  }

  private static Wire wire(Map<Strand, Wire> wires, Strand strand) {
    Wire wire = wires.get(strand);
    if (wire == null) {
      throw new IllegalStateException("no wire chosen for " + strand.needs());
    }
    return wire;
  }
}
