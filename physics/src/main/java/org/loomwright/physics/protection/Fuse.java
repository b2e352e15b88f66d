package org.loomwright.physics.protection;

import java.util.List;
import java.util.OptionalDouble;
import org.loomwright.physics.Require;

/**
 * A fuse of a family and rating with its guaranteed opening band.
 *
 * <p>The standard gives limits at single multiples of the rating. Between them more current never
 * opens a fuse later, so the longest opening time at a current is that of the next lower gate: the
 * cautious one for the wire. Beyond the last gate it falls with 1/I² (constant melting I²t, common
 * practice).
 *
 * <p>The shortest opening time, which decides whether a starting current is ridden out, runs
 * straight between the gates on log-log axes, as makers draw their charts (common practice).
 * Between the first two gates, where the fuse only begins to open at all, it is that of the second.
 *
 * @param family form and curve
 * @param ratingA rated current, A
 */
public record Fuse(FuseFamily family, double ratingA) {
  /** Checks the rating. */
  public Fuse {
    Require.positive("fuse rating", ratingA, "A");
  }

  /** As people write it, e.g. "15 A blade type C". */
  public String label() {
    return Require.text(ratingA) + " A " + family.label();
  }

  /** Limits by multiple of the rating, lowest first. */
  public List<FuseGate> gates() {
    return family.gates(ratingA);
  }

  /** Current the fuse carries for good without opening, A: its lowest gate. */
  public double holdingA() {
    return gates().get(0).multiple() * ratingA;
  }

  /** The fuse stays closed at least this long, s; 0 above the last gate. */
  public double shortestOpeningS(double currentA) {
    double multiple = currentA / ratingA;
    List<FuseGate> gates = gates();
    for (int i = 0; i < gates.size(); i++) {
      FuseGate upper = gates.get(i);
      if (multiple <= upper.multiple() * (1 + 1e-9)) {
        return i < 2 || upper.minS() == 0
            ? upper.minS()
            : Math.max(upper.minS(), between(gates.get(i - 1), upper, multiple));
      }
    }
    return 0;
  }

  /** Shortest time on the log-log line between two gates. */
  private static double between(FuseGate lower, FuseGate upper, double multiple) {
    double part =
        Math.log(multiple / lower.multiple()) / Math.log(upper.multiple() / lower.multiple());
    return lower.minS() * Math.pow(upper.minS() / lower.minS(), part);
  }

  /** The fuse has opened after this long, s; infinite where no limit is guaranteed. */
  public double longestOpeningS(double currentA) {
    double multiple = currentA / ratingA;
    FuseGate last = gates().get(gates().size() - 1);
    if (multiple > last.multiple()) {
      double ratio = last.multiple() / multiple;
      return last.maxS() * ratio * ratio;
    }
    return gates().stream()
        .filter(g -> g.multiple() <= multiple * (1 + 1e-9))
        .mapToDouble(FuseGate::maxS)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Smallest current at which the fuse surely opens within a time, A; empty if at none. */
  public OptionalDouble currentOpeningWithinA(double timeS) {
    return gates().stream()
        .filter(g -> g.maxS() <= timeS)
        .mapToDouble(g -> g.multiple() * ratingA)
        .findFirst();
  }

  /**
   * Most energy the fuse may let through, A²s, over all currents of a range: the longest opening
   * time just below each gate, and at the ends of the range. Infinite where the range starts below
   * the currents at which the fuse surely opens.
   */
  public double largestLetThroughA2s(double fromA, double toA) {
    double worst = Math.max(letThrough(fromA), letThrough(toA));
    List<FuseGate> gates = gates();
    for (int i = 1; i < gates.size(); i++) {
      double gateA = gates.get(i).multiple() * ratingA;
      if (gateA > fromA && gateA <= toA) {
        worst = Math.max(worst, gateA * gateA * gates.get(i - 1).maxS());
      }
    }
    return worst;
  }

  private double letThrough(double currentA) {
    return currentA * currentA * longestOpeningS(currentA);
  }
}
