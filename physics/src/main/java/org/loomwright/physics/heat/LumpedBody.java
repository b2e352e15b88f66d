package org.loomwright.physics.heat;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * One metre of wire as a single body: C dT/dt = I² (r0 + r1 T) - q(T).
 *
 * <p>The heat given off q is straight between the points of its curve, so on each stretch the
 * equation is linear and solved exactly: with f = dT/dt, the time from T0 to T1 is (T1 - T0) ·
 * ln(f1/f0)/(f1 - f0), and after a time the temperature is T0 + f0 t (e^x - 1)/x with x = f' t.
 * There is no step to choose and none that can become unstable; the only error is that of the
 * curve.
 *
 * @param massJPerMK C, heat capacity, J/(m·K)
 * @param ohmPerM0 r0, resistance at 0 °C, ohm/m
 * @param ohmPerMK r1, rise of the resistance per kelvin, ohm/(m·K)
 * @param loss q by temperature
 */
record LumpedBody(double massJPerMK, double ohmPerM0, double ohmPerMK, LossCurve loss) {
  /** A stretch is left as reached when nothing more than this would change, K. */
  private static final double STILL = 1e-13;

  private static final int HALVINGS = 60;

  /** Heating rate at a temperature, K/s. */
  double rate(double currentA, double t) {
    return (currentA * currentA * (ohmPerM0 + ohmPerMK * t) - loss.heatAt(t)) / massJPerMK;
  }

  /** Where a walk stands. */
  record Stand(double temperatureC, double timeS) {}

  /** Time to come from one temperature to another at a current; empty if never. */
  OptionalDouble timeBetweenS(double fromC, double toC, double currentA) {
    if (fromC == toC) {
      return OptionalDouble.of(0);
    }
    boolean up = toC > fromC;
    double t = fromC;
    double time = 0;
    while (t != toC) {
      double edge = loss.next(t, up);
      double next = up ? Math.min(edge, toC) : Math.max(edge, toC);
      double part = crossingS(t, next, currentA);
      if (Double.isInfinite(part)) {
        return OptionalDouble.empty();
      }
      time += part;
      t = next;
    }
    return OptionalDouble.of(time);
  }

  /**
   * First time at which a warming body has been on its way for as long as the temperature it has
   * reached is allowed for; empty if the walk ends before. The allowed time falls with the
   * temperature, and is the answer also where the body comes to rest.
   *
   * @param toC where the walk ends at the latest, at or above {@code fromC}
   */
  OptionalDouble meetsS(double fromC, double toC, double currentA, DoubleUnaryOperator allowedS) {
    double t = fromC;
    double time = 0;
    while (time < allowedS.applyAsDouble(t) && t < toC) {
      double next = Math.min(loss.next(t, true), toC);
      double part = crossingS(t, next, currentA);
      if (!(time + part < allowedS.applyAsDouble(next))) {
        return OptionalDouble.of(meetsWithinS(t, next, time, currentA, allowedS));
      }
      time += part;
      t = next;
    }
    return time < allowedS.applyAsDouble(t) ? OptionalDouble.empty() : OptionalDouble.of(time);
  }

  // Within one stretch of the curve. Where its end is not reached, the body creeps up to a
  // temperature inside and meets the falling limit on the way. The time is read from the limit: so
  // close to rest the time under way is lost between two neighbouring temperatures.
  private double meetsWithinS(
      double fromC, double toC, double time, double currentA, DoubleUnaryOperator allowedS) {
    double low = fromC;
    double high = toC;
    for (int i = 0; i < HALVINGS && low < high; i++) {
      double middle = (low + high) / 2;
      if (time + crossingS(fromC, middle, currentA) < allowedS.applyAsDouble(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return allowedS.applyAsDouble(low);
  }

  /**
   * Where the body stands after a time, or when it reaches the end of its curve.
   *
   * @return temperature and the time used; less than asked where the curve ended
   */
  Stand after(double fromC, double currentA, double seconds) {
    double t = fromC;
    double left = seconds;
    while (left > 0) {
      double f = rate(currentA, t);
      if (Math.abs(f) * left < STILL) {
        return new Stand(t, seconds);
      }
      boolean up = f > 0;
      if (up && t >= loss.highestC()) {
        return new Stand(t, seconds - left);
      }
      double edge = loss.next(t, up);
      double part = crossingS(t, edge, currentA);
      if (part > left) {
        double slope = (rate(currentA, edge) - f) / (edge - t);
        double reached = t + f * left * growth(slope * left);
        return new Stand(up ? Math.min(reached, edge) : Math.max(reached, edge), seconds);
      }
      left -= part;
      t = edge;
    }
    return new Stand(t, seconds);
  }

  /** Time across one stretch on which the rate is straight; infinite if its end is not reached. */
  private double crossingS(double fromC, double toC, double currentA) {
    double f0 = rate(currentA, fromC);
    double f1 = rate(currentA, toC);
    double way = toC - fromC;
    if (!(f0 * way > 0) || !(f1 * way > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double change = (f1 - f0) / f0;
    double log = Math.abs(change) < 1e-8 ? 1 - change / 2 : Math.log1p(change) / change;
    return way / f0 * log;
  }

  /** (e^x - 1)/x, 1 at 0. */
  private static double growth(double x) {
    return Math.abs(x) < 1e-10 ? 1 + x / 2 : Math.expm1(x) / x;
  }
}
