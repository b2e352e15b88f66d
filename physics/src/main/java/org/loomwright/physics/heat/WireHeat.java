package org.loomwright.physics.heat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.packing.EqualWires;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;

/**
 * Steady conductor temperature at a current, and current at a conductor temperature, by heat
 * balance: Joule heat, natural convection round a horizontal cylinder (Churchill and Chu 1975),
 * radiation, conduction through insulation and bundle. Single wire in still air, or one wire in a
 * bundle of equal wires. A bundled wire is never rated better than the same wire alone or in a
 * smaller bundle of the same loaded share: a few idle wires more, or a count that packs badly, give
 * a bundle more surface, and that is not relied on.
 *
 * <p>Tried against 33 CFR 183.425 Table 5 at 30 °C ambient: 0.90 to 1.30 times the table for 8 to
 * 18 AWG in the 80, 90, 105 and 125 °C columns.
 */
public final class WireHeat {
  private static final double LOWEST_AMBIENT_C = -60;
  private static final double HIGHEST_AMBIENT_C = 250;

  /** Most wires a bundle may hold here; harnesses stay far below. */
  private static final int MOST_WIRES = 1000;

  /**
   * Smaller bundles are looked at up to this many wires. Beyond, the diameter grows without jumps,
   * and either more wires are loaded, which is worse, or one wire stays loaded among more idle
   * ones, which is first better and then worse, so that the ends of the range suffice.
   */
  private static final int LARGEST_SMALLER = 20;

  private static final MathContext CONSTANT = new MathContext(7);

  private WireHeat() {}

  /**
   * Where the wire lies.
   *
   * @param conductor the wire; all wires of the bundle are taken to be the same
   * @param ambientC still air and surroundings, -60 to 250 °C
   * @param wires wires in the bundle, this one included; 1 is a single wire
   * @param loadedShare share of the bundle's wires that carry the current at the same time, above 0
   *     to 1; empty means all. At least this one wire is always loaded
   */
  public record Lying(Conductor conductor, double ambientC, int wires, OptionalDouble loadedShare) {
    /** Checks the ranges. */
    public Lying {
      Require.within("ambient temperature", ambientC, LOWEST_AMBIENT_C, HIGHEST_AMBIENT_C, "°C");
      Require.within("number of wires", wires, 1, MOST_WIRES, "wires");
      loadedShare.ifPresent(s -> Require.within("loaded share", 100 * s, 1e-6, 100, "%"));
    }

    /** A single wire in still air. */
    public static Lying single(Conductor conductor, double ambientC) {
      return new Lying(conductor, ambientC, 1, OptionalDouble.empty());
    }

    /** The bundle, the wire alone, and the smaller bundles of the same share that may be worse. */
    List<HeatBalance> balances() {
      List<HeatBalance> all = new ArrayList<>();
      if (wires > 1) {
        all.add(bundle(wires));
      }
      all.add(HeatBalance.single(conductor, ambientC));
      for (int smaller = Math.min(wires - 1, LARGEST_SMALLER); smaller > 1; smaller--) {
        all.add(bundle(smaller));
      }
      return all;
    }

    private HeatBalance bundle(int count) {
      double loaded = Math.max(1, count * loadedShare.orElse(1));
      return HeatBalance.bundle(conductor, ambientC, count, loaded);
    }
  }

  /**
   * @param conductorC conductor temperature, °C
   * @param currentA current in the wire, A
   * @param surfaceC temperature of the outside, °C
   * @param convectionWPerM heat given off by convection, W/m, by the whole bundle
   * @param radiationWPerM heat given off by radiation, W/m, by the whole bundle
   * @param trace how it was reached
   */
  public record Result(
      double conductorC,
      double currentA,
      double surfaceC,
      double convectionWPerM,
      double radiationWPerM,
      Trace trace) {}

  /**
   * Conductor temperature at a steady current.
   *
   * @param currentA current in each loaded wire, A, not below zero
   * @throws org.loomwright.physics.SumException if the conductor would melt
   */
  public static Result temperature(Lying lying, double currentA) {
    Require.notNegative("current", currentA, "A");
    List<HeatBalance> balances = lying.balances();
    HeatBalance balance = balances.get(0);
    HeatBalance.State best = balance.atCurrent(currentA);
    for (HeatBalance other : balances) {
      if (other.isHotterThan(best.conductorC(), currentA)) {
        balance = other;
        best = other.atCurrent(currentA);
      }
    }
    Trace.Builder trace = Trace.builder();
    trace.given("current in the wire", currentA, "A");
    describe(trace, lying, balance, best);
    trace.line(
        "conductor temperature",
        "Ts + Rth * (heat by convection + heat by radiation)",
        best.conductorC(),
        "°C",
        "heat balance");
    return result(best, currentA, trace.build());
  }

  /**
   * Steady current that brings the conductor to a temperature; 0 if the ambient is already there.
   *
   * @param conductorC conductor temperature, up to 1083 °C
   */
  public static Result current(Lying lying, double conductorC) {
    Require.within("conductor temperature", conductorC, -60, Copper.MELTING_C, "°C");
    double targetC = Math.max(conductorC, lying.ambientC());
    List<HeatBalance> balances = lying.balances();
    HeatBalance balance = balances.get(0);
    HeatBalance.State least = balance.atConductor(targetC);
    for (HeatBalance other : balances) {
      if (other.isHotterThan(targetC, least.currentA())) {
        balance = other;
        least = other.atConductor(targetC);
      }
    }
    Trace.Builder trace = Trace.builder();
    trace.given("conductor temperature", conductorC, "°C");
    describe(trace, lying, balance, least);
    trace.line(
        "current in each loaded wire",
        "sqrt((heat by convection + heat by radiation) / (wires loaded at once * r(T)))",
        least.currentA(),
        "A",
        "heat balance");
    return result(least, least.currentA(), trace.build());
  }

  private static Result result(HeatBalance.State state, double currentA, Trace trace) {
    return new Result(
        state.conductorC(),
        currentA,
        state.surfaceC(),
        state.heat().convectionWPerM(),
        state.heat().radiationWPerM(),
        trace);
  }

  private static void describe(
      Trace.Builder trace, Lying lying, HeatBalance balance, HeatBalance.State state) {
    Conductor c = lying.conductor();
    boolean bundled = balance.diameterMm() > c.overallDiameterMm();
    double filmK = (state.surfaceC() + lying.ambientC()) / 2 + SurfaceHeat.KELVIN;
    trace.given("ambient", lying.ambientC(), "°C").given("wires in the bundle", lying.wires(), "1");
    if (balance.wires() != lying.wires()) {
      trace.line(
          "wires that count",
          "worst of this bundle and all smaller ones",
          balance.wires(),
          "1",
          "more surface by more wires is not relied on");
    }
    trace
        .given("wires loaded at once", balance.loadedWires(), "1")
        .line(
            "resistance per metre of " + c.label() + " at temperature",
            "r20 * (234.5 + T) / 254.5, r20 = " + number(c.ohmPerM20C()) + " ohm/m",
            c.resistanceOhmPerM(state.conductorC()),
            "ohm/m",
            c.source())
        .line(
            "outside diameter",
            bundled
                ? "Dw * packing, Dw = "
                    + number(c.overallDiameterMm())
                    + " mm, packing = "
                    + number(EqualWires.ratio(balance.wires()))
                : "table",
            balance.diameterMm(),
            "mm",
            bundled ? EqualWires.SOURCE : c.source())
        .line(
            "thermal resistance conductor to surface",
            bundled
                ? bundleResistance(c, balance.wires(), balance.loadedWires())
                : ownResistance(c),
            balance.resistanceToSurface(),
            "K m/W",
            "k = 0.15 W/(m K) insulation, 0.12 W/(m K) across a bundle (from memory)")
        .line(
            "surface temperature",
            "T - Rth * (heat by convection + heat by radiation), found by trial",
            state.surfaceC(),
            "°C",
            "heat balance")
        .line(
            "Nusselt number",
            "(0.60 + 0.387 Ra^(1/6) / (1 + (0.559 / Pr)^(9/16))^(8/27))², Ra = "
                + number(state.heat().rayleigh())
                + ", Pr = "
                + number(Air.prandtl(filmK)),
            state.heat().nusselt(),
            "1",
            SurfaceHeat.CONVECTION_SOURCE)
        .line(
            "heat by convection",
            "Nu k pi (Ts - Ta), k = " + number(Air.conductivity(filmK)) + " W/(m K)",
            state.heat().convectionWPerM(),
            "W/m",
            SurfaceHeat.CONVECTION_SOURCE)
        .line(
            "heat by radiation",
            "eps sigma pi D / 1000 * ((Ts + 273.15)⁴ - (Ta + 273.15)⁴), eps = 0.75, sigma ="
                + " 5.670374419e-8",
            state.heat().radiationWPerM(),
            "W/m",
            "Stefan and Boltzmann; emissivity 0.75 (ECSS-Q-ST-30-11C Annex C)");
  }

  private static String ownResistance(Conductor c) {
    return "ln(Dw / d) / (2 pi ki), " + insulation(c);
  }

  private static String bundleResistance(Conductor c, int wires, double loaded) {
    return "1 / (4 pi kb) + ln(sqrt(n / m)) / (2 pi kb) + ln(Dw / d) / (2 pi ki m), n = "
        + wires
        + ", m = "
        + number(loaded)
        + ", kb = "
        + number(HeatBalance.BUNDLE_W_PER_MK)
        + " W/(m K), "
        + insulation(c);
  }

  private static String insulation(Conductor c) {
    return "ki = "
        + number(HeatBalance.INSULATION_W_PER_MK)
        + " W/(m K), Dw = "
        + number(c.overallDiameterMm())
        + " mm, d = "
        + number(c.conductorDiameterMm())
        + " mm";
  }

  /** A constant of a formula with as many digits as a pocket calculator is given. */
  static String number(double value) {
    return Require.text(new BigDecimal(value).round(CONSTANT).doubleValue());
  }
}
