package org.loomwright.physics.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;
import org.loomwright.physics.packing.EqualWires;

/**
 * Steady temperatures of a bundle of unequal wires with unequal currents, bare or covered, in still
 * air.
 *
 * <p>Model, each step on the cautious side:
 *
 * <ul>
 *   <li>Every wire makes its own Joule heat q = I² r20 (234.5 + T)/254.5 at its own temperature.
 *   <li>The outermost surface gives off the sum by natural convection and radiation, as for a
 *       single wire; coverings lie in between.
 *   <li>Inside, heat flows outward through a round section of conductivity 0.12 W/(m·K), the wires
 *       lying in rings, the densest heat in the middle. A ring from area share s0 to s1 with heat q
 *       raises the middle by q/(4πk) · (1 - (s1 ln s1 - s0 ln s0)/(s1 - s0)).
 *   <li>Every wire counts as if it lay in the middle, and is hotter than it by the heat through its
 *       own insulation.
 *   <li>The diameter, where it is not given, is that of the tightest packing: √(Σd²/0.9069), for
 *       two wires the sum of theirs. It is up to 16 % less than that of a real small bundle.
 *   <li>Wires that carry little could cool the others; this is not relied on. The result is the
 *       worst of the bundle and of all bundles of only its densest wires, and no wire is rated
 *       cooler than alone, nor a covered bundle cooler than a bare one.
 * </ul>
 *
 * For equal wires, all loaded, it is the same sum as {@link WireHeat}. More current never cools and
 * one more wire never helps; the densest wire made thicker never heats. A thicker wire among hotter
 * ones adds to the way from the middle to the surface, as a thick covering would: one size of a
 * catalogue more may raise the middle by up to a tenth of its rise (up to 250 K), and by 1 % among
 * wires up to 10 mm² with up to 6 A/mm².
 */
public final class BundleHeat {
  /** Most wires a bundle may hold here. */
  public static final int MOST_WIRES = 400;

  private BundleHeat() {}

  /**
   * @param wires 1 to 400 wires
   * @param ambientC still air and surroundings, -60 to 250 °C
   * @param diameterMm outside diameter by packing, mm; empty: the tightest possible
   * @param coverings from the inside out, possibly none
   */
  public record Bundle(
      List<LoadedWire> wires,
      double ambientC,
      OptionalDouble diameterMm,
      List<Covering> coverings) {
    /** Checks the ranges. */
    public Bundle {
      wires = List.copyOf(wires);
      coverings = List.copyOf(coverings);
      Require.within("number of wires", wires.size(), 1, MOST_WIRES, "wires");
      Require.within("ambient temperature", ambientC, -60, 250, "°C");
      double least = thickest(wires);
      diameterMm.ifPresent(d -> Require.within("bundle diameter", d, least, 1000, "mm"));
    }

    /** Bare, in the tightest packing. */
    public static Bundle bare(List<LoadedWire> wires, double ambientC) {
      return new Bundle(wires, ambientC, OptionalDouble.empty(), List.of());
    }

    /** The same bundle with other coverings. */
    public Bundle withCoverings(List<Covering> others) {
      return new Bundle(wires, ambientC, diameterMm, others);
    }

    /** The same bundle with another current in one of its wires. */
    public Bundle withCurrentA(int index, double currentA) {
      List<LoadedWire> changed = new ArrayList<>(wires);
      changed.set(index, changed.get(index).withCurrentA(currentA));
      return new Bundle(changed, ambientC, diameterMm, coverings);
    }

    private static double thickest(List<LoadedWire> wires) {
      return wires.stream().mapToDouble(w -> w.conductor().overallDiameterMm()).max().orElse(0);
    }
  }

  /**
   * @param conductorC temperature of each wire, in the order of the bundle, °C
   * @param hottest index of the hottest wire, the first where several are
   * @param surfaceC outside of the bare bundle, under coverings, °C
   * @param outsideC outermost surface, °C
   * @param heatWPerM heat of the whole bundle, W/m
   * @param trace how the hottest came about
   */
  public record Result(
      List<Double> conductorC,
      int hottest,
      double surfaceC,
      double outsideC,
      double heatWPerM,
      Trace trace) {
    /** Copies the list. */
    public Result {
      conductorC = List.copyOf(conductorC);
    }

    /** Temperature of the hottest conductor, °C. */
    public double hottestC() {
      return conductorC.get(hottest);
    }
  }

  /**
   * Steady temperatures.
   *
   * @throws SumException if a conductor would melt
   */
  public static Result temperatures(Bundle bundle) {
    return tryTemperatures(bundle)
        .orElseThrow(
            () ->
                new SumException(
                    "the bundle of "
                        + bundle.wires().size()
                        + " wires has no steady temperature below the melting point of copper"));
  }

  /** Steady temperatures; empty if a conductor would melt. */
  public static Optional<Result> tryTemperatures(Bundle bundle) {
    return worst(bundle).flatMap(state -> BundleReport.of(bundle, state));
  }

  /**
   * How one wire of the bundle comes to its temperature; empty if a conductor would melt.
   *
   * @param index the wire, from 0
   */
  public static Optional<Trace> trace(Bundle bundle, int index) {
    Require.within("wire index", index, 0, bundle.wires().size() - 1, "");
    return worst(bundle)
        .flatMap(
            state ->
                BundleReport.of(bundle, state)
                    .map(
                        it ->
                            BundleReport.trace(bundle, state, index, it.conductorC().get(index))));
  }

  /**
   * The section that decides; empty if a conductor would melt.
   *
   * <p>Which wire makes the densest heat depends on the temperature in the middle, so the wires are
   * put in order again at the temperature found. A new order finds the middle hotter or the same;
   * there are only so many orders, so this ends, and at the order it ends with no part of the
   * bundle is hotter.
   */
  private static Optional<BundleState> worst(Bundle bundle) {
    List<LoadedWire> order = densestFirst(bundle.wires(), 20);
    Optional<BundleState> worst = worst(bundle, order);
    while (worst.isPresent()) {
      List<LoadedWire> next = densestFirst(order, worst.get().middleC());
      if (next.equals(order)) {
        break;
      }
      Optional<BundleState> state = worst(bundle, next);
      if (state.isPresent() && state.get().middleC() <= worst.get().middleC()) {
        break;
      }
      order = next;
      worst = state;
    }
    return worst;
  }

  /** Wires by heat per area with a temperature in the middle; equal ones stay as they stand. */
  private static List<LoadedWire> densestFirst(List<LoadedWire> wires, double middleC) {
    return wires.stream()
        .sorted(Comparator.comparingDouble((LoadedWire w) -> w.heatDensity(middleC)).reversed())
        .toList();
  }

  /** The hottest section of an order; empty if a conductor would melt. */
  private static Optional<BundleState> worst(Bundle bundle, List<LoadedWire> order) {
    BundleState worst = null;
    for (BundleState.Section section : sections(bundle, order)) {
      if (worst != null && !BundleState.canBeHotter(section, worst.middleC())) {
        continue;
      }
      Optional<BundleState> state = BundleState.solve(section);
      if (state.isEmpty()) {
        return Optional.empty();
      }
      if (worst == null || state.get().middleC() > worst.middleC()) {
        worst = state.get();
      }
    }
    return Optional.ofNullable(worst);
  }

  /**
   * Largest current in one wire, the others as given, that keeps this wire at or below a
   * temperature; 0 if it is above it even without current.
   *
   * @param index the wire, from 0
   * @param limitC its limit, up to 300 °C
   */
  public static double allowedCurrentA(Bundle bundle, int index, double limitC) {
    Require.within("wire index", index, 0, bundle.wires().size() - 1, "");
    Require.within("conductor temperature", limitC, -60, 300, "°C");
    LoadedWire wire = bundle.wires().get(index);
    double alone =
        WireHeat.current(
                WireHeat.Lying.single(wire.conductor(), bundle.ambientC()),
                Math.max(limitC, bundle.ambientC()))
            .currentA();
    return Roots.rising(i -> excessK(bundle.withCurrentA(index, i), index, limitC), 0, alone, 1e-9);
  }

  /** Kelvins above the limit; large where the bundle has no steady state. */
  private static double excessK(Bundle bundle, int index, double limitC) {
    return tryTemperatures(bundle).map(r -> r.conductorC().get(index) - limitC).orElse(2000.0);
  }

  /**
   * The whole bundle and its densest parts, covered and bare, the largest first. Where the whole is
   * wider than its parts go by, all parts that leave out one wire are looked at: among wires of
   * nearly equal density the thicker ones may be hotter than the densest.
   */
  private static List<BundleState.Section> sections(Bundle bundle, List<LoadedWire> sorted) {
    List<BundleState.Section> sections = new ArrayList<>();
    int all = sorted.size();
    add(sections, bundle, sorted, bundle.diameterMm().orElseGet(() -> wholeMm(sorted)));
    if (all == 2 || bundle.diameterMm().isPresent()) {
      for (int left = all - 2; left >= 0; left--) {
        List<LoadedWire> others = new ArrayList<>(sorted);
        others.remove(left);
        add(sections, bundle, others, partMm(others));
      }
    }
    for (int n = all - 1; n >= 1; n--) {
      List<LoadedWire> part = sorted.subList(0, n);
      add(sections, bundle, part, partMm(part));
    }
    return sections;
  }

  /** A part, covered and bare. */
  private static void add(
      List<BundleState.Section> sections, Bundle bundle, List<LoadedWire> part, double mm) {
    if (part.isEmpty()) {
      return;
    }
    boolean bundled = bundle.wires().size() > 1;
    if (!bundle.coverings().isEmpty()) {
      Surroundings covered = new Surroundings(mm, bundle.ambientC(), bundle.coverings());
      sections.add(new BundleState.Section(part, bundled, covered));
    }
    Surroundings bare = new Surroundings(mm, bundle.ambientC(), List.of());
    sections.add(new BundleState.Section(part, bundled, bare));
  }

  /** Diameter of the whole bundle where none is given, mm. */
  private static double wholeMm(List<LoadedWire> wires) {
    return wires.size() <= 2
        ? wires.stream().mapToDouble(w -> w.conductor().overallDiameterMm()).sum()
        : partMm(wires);
  }

  /**
   * Diameter of a part of a bundle, mm: by area alone, also for a single wire. So a part of given
   * area is the hotter the more heat it makes, and the worst part is always one of the densest
   * wires.
   */
  private static double partMm(List<LoadedWire> wires) {
    double squares =
        wires.stream().mapToDouble(w -> w.conductor().overallDiameterMm()).map(d -> d * d).sum();
    return Math.sqrt(squares / EqualWires.HEXAGONAL_DENSITY);
  }
}
