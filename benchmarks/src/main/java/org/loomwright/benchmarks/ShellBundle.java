package org.loomwright.benchmarks;

import java.util.Comparator;
import java.util.List;
import org.loomwright.physics.heat.BundleHeat;
import org.loomwright.physics.heat.LoadedWire;

/**
 * The plain reference of a bundle's temperature, written out from the same model: the round section
 * cut into many thin shells, the wires spread over them with the densest heat inside, heat carried
 * from shell to shell, and the outside found by trying: temperatures are worked out again and again
 * until nothing moves, for the whole bundle and for every part of its densest wires.
 */
final class ShellBundle {
  private static final int SHELLS = 400;
  private static final double BUNDLE_W_PER_MK = 0.12;
  private static final double INSULATION_W_PER_MK = 0.15;
  private static final double EMISSIVITY = 0.75;
  private static final double STEFAN_BOLTZMANN = 5.670374419e-8;
  private static final double SETTLED_K = 1e-6;

  private final List<LoadedWire> wires;
  private final double ambientC;

  private ShellBundle(List<LoadedWire> wires, double ambientC) {
    this.wires = wires;
    this.ambientC = ambientC;
  }

  /** Temperature of the hottest conductor, °C. */
  static double hottestC(BundleHeat.Bundle bundle) {
    List<LoadedWire> order =
        bundle.wires().stream()
            .sorted(Comparator.comparingDouble(ShellBundle::density).reversed())
            .toList();
    double hottest = bundle.ambientC();
    for (int n = 1; n <= order.size(); n++) {
      hottest =
          Math.max(hottest, new ShellBundle(order.subList(0, n), bundle.ambientC()).hottest());
    }
    return hottest;
  }

  private static double density(LoadedWire w) {
    double d = w.conductor().overallDiameterMm();
    return w.currentA() * w.currentA() * w.conductor().ohmPerM20C() / (d * d);
  }

  private double hottest() {
    int n = wires.size();
    double squares = 0;
    for (LoadedWire w : wires) {
      squares += square(w.conductor().overallDiameterMm());
    }
    double diameterM = Math.sqrt(squares / (Math.PI / Math.sqrt(12))) / 1000;
    double[] t = new double[n];
    java.util.Arrays.fill(t, ambientC);
    double[] q = new double[n];
    double hottest = ambientC;
    double moved = 1;
    while (moved > SETTLED_K) {
      double sum = 0;
      for (int i = 0; i < n; i++) {
        LoadedWire w = wires.get(i);
        q[i] = square(w.currentA()) * w.conductor().ohmPerM20C() * (234.5 + t[i]) / 254.5;
        sum += q[i];
      }
      double middleC = surfaceC(diameterM, sum) + middleRiseK(q, squares);
      moved = 0;
      for (int i = 0; i < n; i++) {
        LoadedWire w = wires.get(i);
        double across =
            Math.log(w.conductor().overallDiameterMm() / w.conductor().conductorDiameterMm())
                / (2 * Math.PI * INSULATION_W_PER_MK);
        double next = middleC + q[i] * across;
        moved = Math.max(moved, Math.abs(next - t[i]));
        t[i] = next;
        hottest = Math.max(hottest, next);
      }
    }
    return hottest;
  }

  /** Heat carried outward through the shells one by one. */
  private double middleRiseK(double[] q, double squares) {
    double inside = 0;
    double rise = 0;
    double edge = 0;
    int ring = -1;
    double perArea = 0;
    for (int s = 0; s < SHELLS; s++) {
      double r = (s + 0.5) / SHELLS;
      while (ring < wires.size() - 1 && r * r >= edge) {
        ring++;
        double share = square(wires.get(ring).conductor().overallDiameterMm()) / squares;
        perArea = q[ring] / share;
        edge += share;
      }
      inside += perArea * 2 * r / SHELLS;
      rise += inside / (2 * Math.PI * BUNDLE_W_PER_MK * r) / SHELLS;
    }
    return rise;
  }

  /** Temperature of the outside that gives off a heat, by halving. */
  private double surfaceC(double diameterM, double heatWPerM) {
    double low = ambientC;
    double high = 1100;
    while (high - low > 1e-8) {
      double middle = (low + high) / 2;
      if (givenOff(diameterM, middle) < heatWPerM) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Churchill and Chu 1975 with the air of the U.S. Standard Atmosphere 1976, and radiation. */
  private double givenOff(double diameterM, double surfaceC) {
    double film = (surfaceC + ambientC) / 2 + 273.15;
    double rise = surfaceC - ambientC;
    double viscosity = 1.458e-6 * Math.pow(film, 1.5) / (film + 110.4);
    double conductivity =
        2.64638e-3 * Math.pow(film, 1.5) / (film + 245.4 * Math.pow(10, -12 / film));
    double density = 101_325 / (287.053 * film);
    double prandtl = viscosity * 1006 / conductivity;
    double rayleigh =
        9.80665
            / film
            * rise
            * Math.pow(diameterM, 3)
            * density
            * density
            * 1006
            / (viscosity * conductivity);
    double root =
        0.60
            + 0.387
                * Math.pow(rayleigh, 1.0 / 6)
                / Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
    double radiation =
        EMISSIVITY
            * STEFAN_BOLTZMANN
            * Math.PI
            * diameterM
            * (Math.pow(surfaceC + 273.15, 4) - Math.pow(ambientC + 273.15, 4));
    return root * root * conductivity * Math.PI * rise + radiation;
  }

  private static double square(double x) {
    return x * x;
  }
}
