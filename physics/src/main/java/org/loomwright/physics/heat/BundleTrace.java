package org.loomwright.physics.heat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.packing.EqualWires;
import org.loomwright.physics.wire.Conductor;

/**
 * Writes out how a conductor of a bundle comes to its temperature, so that every line can be
 * reckoned again from the others: equal wires that lie next to each other in the order of heat make
 * one group, numbered from the middle outward.
 */
final class BundleTrace {
  private static final MathContext SHARE = new MathContext(9);
  private static final String CONDUCTION = "heat conduction in a round section; k from memory";

  /** Wires of the same size with the same current, and their rings in the section. */
  private record Group(LoadedWire wire, int count, double conductorC, double from, double to) {
    double heatWPerM() {
      double i = wire.currentA();
      return count * i * i * wire.conductor().resistanceOhmPerM(conductorC);
    }

    double weight() {
      double inner = from == 0 ? 0 : from * Math.log(from);
      double mean = (to * Math.log(to) - inner) / (to - from);
      return (1 - mean) / (4 * Math.PI * HeatBalance.BUNDLE_W_PER_MK);
    }

    String words() {
      return (count == 1 ? "a wire" : "each of " + count + " wires") + " of " + wire.name();
    }
  }

  private final BundleHeat.Bundle bundle;
  private final BundleState state;
  private final List<Group> groups;
  private final Surroundings around;
  private final String heat;
  private final Trace.Builder trace = Trace.builder();

  private BundleTrace(BundleHeat.Bundle bundle, BundleState state) {
    this.bundle = bundle;
    this.state = state;
    this.groups = groups(state);
    this.around = state.section().around();
    this.heat = groups.size() == 1 ? "q1" : "heat of the section";
  }

  /**
   * @param state the section that decides: the worst of the bundle, or the wire alone where it is
   *     hotter so
   * @param wire whose temperature it is
   * @param conductorC its temperature
   */
  static Trace of(BundleHeat.Bundle bundle, BundleState state, LoadedWire wire, double conductorC) {
    return new BundleTrace(bundle, state).lines(wire, conductorC);
  }

  private static List<Group> groups(BundleState state) {
    List<LoadedWire> wires = state.section().wires();
    double total = wires.stream().mapToDouble(BundleTrace::square).sum();
    List<Group> groups = new ArrayList<>();
    double inner = 0;
    int at = 0;
    while (at < wires.size()) {
      LoadedWire first = wires.get(at);
      int end = at;
      double sum = 0;
      while (end < wires.size() && wires.get(end).equals(first)) {
        sum += square(first);
        end++;
      }
      double outer = end == wires.size() ? 1 : inner + sum / total;
      groups.add(new Group(first, end - at, state.conductorC().get(at), inner, outer));
      inner = outer;
      at = end;
    }
    return groups;
  }

  private static double square(LoadedWire wire) {
    double d = wire.conductor().overallDiameterMm();
    return d * d;
  }

  private Trace lines(LoadedWire wire, double conductorC) {
    trace
        .given("ambient", bundle.ambientC(), "°C")
        .given("wires in the bundle", bundle.wires().size(), "1");
    if (state.section().wires().size() != bundle.wires().size()) {
      trace.line(
          "wires that count, densest heat first",
          state.section().bundled()
              ? "worst of the bundle and all its parts"
              : "this wire alone, worse than in the bundle",
          state.section().wires().size(),
          "1",
          "little-loaded wires are not relied on for cooling");
    }
    for (int i = 0; i < groups.size(); i++) {
      Group group = groups.get(i);
      trace.given("I" + (i + 1) + ", current in " + group.words(), group.wire().currentA(), "A");
    }
    diameters();
    heat();
    String bare = surface();
    String inside = state.section().bundled() ? middle(bare) : bare;
    Conductor c = wire.conductor();
    return trace
        .given("current in this wire", wire.currentA(), "A")
        .line(
            "resistance per metre of " + c.label() + " at temperature",
            "r20 * (234.5 + T) / 254.5, r20 = " + number(c.ohmPerM20C()) + " ohm/m",
            c.resistanceOhmPerM(conductorC),
            "ohm/m",
            c.source())
        .line(
            "conductor, " + wire.name(),
            inside + " + I² r ln(D / d) / (2 pi k), " + insulation(c),
            conductorC,
            "°C",
            "heat conduction in its insulation; k from memory")
        .build();
  }

  private void diameters() {
    int wires = state.section().wires().size();
    boolean whole = wires == bundle.wires().size();
    boolean given = whole && bundle.diameterMm().isPresent();
    boolean added = whole && wires <= 2 || !state.section().bundled();
    String what = "diameter of the bundle";
    if (given) {
      trace.given(what, around.bareDiameterMm(), "mm");
    } else {
      trace.line(
          what,
          added ? terms("") + constants() : "sqrt((" + terms("²") + ") / 0.9069)" + constants(),
          around.bareDiameterMm(),
          "mm",
          added
              ? "wires side by side"
              : "tightest packing, " + density() + " of the area, cautious");
    }
    double diameterMm = around.bareDiameterMm();
    for (int i = 0; i < around.coverings().size(); i++) {
      Covering layer = around.coverings().get(i);
      diameterMm += layer.addedDiameterMm();
      trace.line(
          "outside diameter over layer " + (i + 1) + ", " + layer.name(),
          "D + 2 (gap + wall), gap = "
              + number(layer.gapMm())
              + " mm, wall = "
              + number(layer.wallMm())
              + " mm",
          diameterMm,
          "mm",
          layer.source());
    }
  }

  private static String density() {
    return Require.text(Math.round(1e4 * EqualWires.HEXAGONAL_DENSITY) / 1e4);
  }

  private String terms(String power) {
    return IntStream.range(0, groups.size())
        .mapToObj(i -> "n" + (i + 1) + " d" + (i + 1) + power)
        .collect(Collectors.joining(" + "));
  }

  private String constants() {
    return IntStream.range(0, groups.size())
        .mapToObj(
            i ->
                ", n"
                    + (i + 1)
                    + " = "
                    + groups.get(i).count()
                    + ", d"
                    + (i + 1)
                    + " = "
                    + number(groups.get(i).wire().conductor().overallDiameterMm())
                    + " mm")
        .collect(Collectors.joining());
  }

  private void heat() {
    String inside = state.section().bundled() ? "middle of the bundle" : bareName();
    for (int i = 1; i <= groups.size(); i++) {
      Group group = groups.get(i - 1);
      Conductor c = group.wire().conductor();
      trace
          .line(
              "T" + i + ", conductor of " + group.wire().name() + ", as in the middle",
              inside + " + q" + i + " ln(D / d) / (2 pi k n), " + insulation(c) + count(group),
              group.conductorC(),
              "°C",
              "heat conduction in its insulation; k from memory")
          .line(
              "q"
                  + i
                  + ", heat of "
                  + (group.count() == 1 ? "the wire" : "the wires")
                  + " with I"
                  + i,
              "n I"
                  + i
                  + "² r20 (234.5 + T"
                  + i
                  + ") / 254.5, r20 = "
                  + number(c.ohmPerM20C())
                  + " ohm/m"
                  + count(group),
              group.heatWPerM(),
              "W/m",
              "Joule's law; " + c.source());
    }
    if (groups.size() > 1) {
      trace.line(heat, sum("q"), state.heatWPerM(), "W/m", "sum of all wires that count");
    }
  }

  private static String count(Group group) {
    return ", n = " + group.count();
  }

  private String sum(String letter) {
    return IntStream.rangeClosed(1, groups.size())
        .mapToObj(i -> letter + i)
        .collect(Collectors.joining(" + "));
  }

  /** Lines of what the outside gives off, and inward through the coverings; name of the last. */
  private String surface() {
    double filmK = (state.flow().outsideC() + bundle.ambientC()) / 2 + SurfaceHeat.KELVIN;
    SurfaceHeat flow = state.flow().heat();
    String air = "k = " + number(Air.conductivity(filmK)) + " W/(m K)";
    trace
        .line(
            "outermost surface",
            "Ta + (" + heat + " - heat by radiation) / (Nu k pi), " + air + ", found by trial",
            state.flow().outsideC(),
            "°C",
            "heat balance")
        .line(
            "Nusselt number",
            "(0.60 + 0.387 Ra^(1/6) / (1 + (0.559 / Pr)^(9/16))^(8/27))², Ra = "
                + number(flow.rayleigh())
                + ", Pr = "
                + number(Air.prandtl(filmK)),
            flow.nusselt(),
            "1",
            SurfaceHeat.CONVECTION_SOURCE)
        .line(
            "heat by convection",
            "Nu k pi (Ts - Ta), " + air,
            flow.convectionWPerM(),
            "W/m",
            SurfaceHeat.CONVECTION_SOURCE)
        .line(
            "heat by radiation",
            "eps sigma pi D / 1000 * ((Ts + 273.15)⁴ - (Ta + 273.15)⁴), eps = 0.75, sigma ="
                + " 5.670374419e-8",
            flow.radiationWPerM(),
            "W/m",
            "Stefan and Boltzmann; emissivity 0.75 (ECSS-Q-ST-30-11C Annex C)");
    double diameterMm = around.outsideDiameterMm();
    double t = state.flow().outsideC();
    String outer = "outermost surface";
    for (int i = around.coverings().size(); i >= 1; i--) {
      Covering layer = around.coverings().get(i - 1);
      double wallMm = diameterMm - 2 * layer.wallMm();
      diameterMm -= layer.addedDiameterMm();
      t = layer(layer, i, wallMm, diameterMm, outer, t);
      outer = "surface under layer " + i;
    }
    return outer;
  }

  private String bareName() {
    return around.coverings().isEmpty() ? "outermost surface" : "surface under layer 1";
  }

  private double layer(
      Covering layer, int i, double wallMm, double innerMm, String outer, double outerC) {
    double inside = layer.insideC(innerMm, outerC, state.flow().heat().totalWPerM());
    double wallC =
        new Covering(layer.name(), 0, layer.wallMm(), layer.wallWPerMK(), layer.source())
            .insideC(wallMm, outerC, state.flow().heat().totalWPerM());
    String wall = layer.gapMm() == 0 ? "surface under layer " + i : "inner face of layer " + i;
    trace.line(
        wall,
        outer
            + " + "
            + heat
            + " ln(Do / Di) / (2 pi k), Do = "
            + number(wallMm + 2 * layer.wallMm())
            + " mm, Di = "
            + number(wallMm)
            + " mm, k = "
            + number(layer.wallWPerMK())
            + " W/(m K)",
        wallC,
        "°C",
        layer.source());
    return layer.gapMm() == 0 ? inside : gap(i, wallMm, innerMm, wall, wallC, inside);
  }

  private double gap(
      int i, double wallMm, double innerMm, String wall, double wallC, double insideC) {
    double airK = (wallC + insideC) / 2 + SurfaceHeat.KELVIN;
    double conduction =
        2 * Math.PI * Air.conductivity(airK) * (insideC - wallC) / Math.log(wallMm / innerMm);
    double all = AirGap.heatWPerM(innerMm, wallMm, insideC, wallC);
    String under = "surface under layer " + i;
    String across = "heat by radiation across the gap under layer " + i;
    trace
        .line(
            across,
            "sigma pi Di / 1000 * (("
                + under
                + " + 273.15)⁴ - ("
                + wall
                + " + 273.15)⁴) / (1 / eps + Di / Do * (1 / eps - 1)), eps = 0.75, sigma ="
                + " 5.670374419e-8, Di = "
                + number(innerMm)
                + " mm, Do = "
                + number(wallMm)
                + " mm",
            all - conduction,
            "W/m",
            "Stefan and Boltzmann, grey concentric surfaces; emissivity 0.75 (ECSS-Q-ST-30-11C"
                + " Annex C)")
        .line(
            under,
            wall
                + " + ("
                + heat
                + " - "
                + across
                + ") ln(Do / Di) / (2 pi k), k = "
                + number(Air.conductivity(airK))
                + " W/(m K), Di = "
                + number(innerMm)
                + " mm, Do = "
                + number(wallMm)
                + " mm, found by trial",
            insideC,
            "°C",
            "conduction through still air; " + Air.SOURCE);
    return insideC;
  }

  /** Rise from the bare surface to the middle, ring by ring; name of the temperature there. */
  private String middle(String bare) {
    for (int i = 1; i <= groups.size(); i++) {
      Group group = groups.get(i - 1);
      String bracket =
          groups.size() == 1
              ? ""
              : i == 1
                  ? "(1 - ln(s1)) "
                  : "(1 - (s" + i + " ln(s" + i + ") - s" + (i - 1) + " ln(s" + (i - 1) + ")) / (s"
                      + i + " - s" + (i - 1) + ")) ";
      trace.line(
          "m" + i + ", rise of the middle by q" + i,
          "q"
              + i
              + " "
              + bracket
              + "/ (4 pi k), "
              + (groups.size() == 1 ? "" : shares(i, group))
              + "k = "
              + number(HeatBalance.BUNDLE_W_PER_MK)
              + " W/(m K)",
          group.heatWPerM() * group.weight(),
          "K",
          CONDUCTION + "; s: share of the area up to this ring");
    }
    trace.line(
        "middle of the bundle", bare + " + " + sum("m"), state.middleC(), "°C", "sum of the rises");
    return "middle of the bundle";
  }

  private static String shares(int i, Group group) {
    String own = "s" + i + " = " + share(group.to()) + ", ";
    return i == 1 ? own : "s" + (i - 1) + " = " + share(group.from()) + ", " + own;
  }

  private static String insulation(Conductor c) {
    return "D = "
        + number(c.overallDiameterMm())
        + " mm, d = "
        + number(c.conductorDiameterMm())
        + " mm, k = "
        + number(HeatBalance.INSULATION_W_PER_MK)
        + " W/(m K)";
  }

  private static String number(double value) {
    return WireHeat.number(value);
  }

  /** Shares are subtracted from each other, so they need more digits. */
  private static String share(double value) {
    return Require.text(new BigDecimal(value).round(SHARE).doubleValue());
  }
}
