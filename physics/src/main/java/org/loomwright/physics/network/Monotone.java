package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Looks at how loads act on each other and says for which figures the worst state is certain.
 *
 * <p>With the loads taken out as ports, the voltages u across them obey u = c E - Z i(u), where Z
 * holds the transfer resistances between ports and c the shares of the sources. Two structures are
 * certain:
 *
 * <ol>
 *   <li>Only loads of constant current and power are switched (resistive ones, always on, stay part
 *       of the network), and all entries of Z and c are non-negative. Then u ↦ cE - Z i(u) rises
 *       with u, because i falls or stays as u rises; its highest fixed point, which is the state
 *       the solver finds, falls when a load is added or a source lowered (comparison of monotone
 *       maps, Tarski).
 *   <li>Z has an inverse without positive entries off its diagonal (an M-matrix), and the inverse
 *       times c is non-negative. Then F(u) = Z⁻¹(u - cE) + i(u) falls with every other component
 *       and rises when a load is added or a source lowered, so the highest root falls, for loads of
 *       all three kinds (Ortega and Rheinboldt, Iterative Solution of Nonlinear Equations in
 *       Several Variables, 13.5, from memory). Networks whose loads all return to one common node
 *       are of this kind.
 * </ol>
 *
 * <p>The state of most stress is all loads on at the lowest supply, that of least stress all off at
 * the highest. Between them every voltage falls and every current of a load of constant current or
 * power rises or stays. A branch's current is a sum of shares of these and of the sources; if all
 * shares push the same way, its extremes are at the two ends. In the first structure u is a concave
 * function of the sources (the highest fixed point of a map that is concave in both), hence P/u
 * convex, hence a branch's current with non-negative shares of all loads is convex in the sources:
 * it is largest with all loads on at one of the corners of the supply range.
 */
final class Monotone {
  /** With more ranged sources than this, their corners are too many to try. */
  static final int MOST_RANGED = 6;

  private static final double ROUNDING = 1e-9;

  private final WorstCaseRequest request;
  private final Transfer transfer;
  private final Set<String> proven = new LinkedHashSet<>();

  private Monotone(WorstCaseRequest request, Transfer transfer) {
    this.request = request;
    this.transfer = transfer;
  }

  /**
   * First structure: no resistor is switched.
   *
   * @return empty if the shares cannot be reckoned, because parts float without the loads
   */
  static Optional<Monotone> withoutResistors(WorstCaseRequest request) {
    List<Load> ports =
        request.network().all(Load.class).stream()
            .filter(l -> !(l instanceof ConstantResistance))
            .toList();
    return Transfer.of(request.network(), ports)
        .map(
            t -> {
              Monotone m = new Monotone(request, t);
              if (m.sharesHold()) {
                m.prove();
                m.proveConvex();
              }
              return m;
            });
  }

  /**
   * Second structure: any load may be switched.
   *
   * @return empty if the shares cannot be reckoned, because parts float without the loads
   */
  static Optional<Monotone> withResistors(WorstCaseRequest request) {
    return Transfer.of(request.network(), request.network().all(Load.class))
        .map(
            t -> {
              Monotone m = new Monotone(request, t);
              if (m.inverseHolds()) {
                m.prove();
              }
              return m;
            });
  }

  /**
   * Keys (see {@link Tally}) of the figures whose worst state is among the ends, all loads on at a
   * corner of the supply range, and each load alone on at the highest supply.
   */
  Set<String> proven() {
    return proven;
  }

  /** For each branch the switched loads that push its current one way, and those the other way. */
  List<Set<String>> drivers() {
    Set<Set<String>> found = new LinkedHashSet<>();
    for (Element branch : transfer.branches()) {
      for (int sign : new int[] {1, -1}) {
        double least = ROUNDING * largestShare(branch);
        Set<String> on = new LinkedHashSet<>();
        for (Load p : transfer.ports()) {
          if (sign * transfer.amperesPerAmpere(branch, p) > least
              && request.switched().contains(p.name())) {
            on.add(p.name());
          }
        }
        found.add(on);
      }
    }
    return new ArrayList<>(found);
  }

  private double largestShare(Element branch) {
    double most = 0;
    for (Load p : transfer.ports()) {
      most = Math.max(most, Math.abs(transfer.amperesPerAmpere(branch, p)));
    }
    return most;
  }

  /** First structure: no transfer resistance and no share of a source is negative. */
  private boolean sharesHold() {
    for (Load load : request.network().all(Load.class)) {
      double own = 0;
      for (Load p : transfer.ports()) {
        own = Math.max(own, Math.abs(transfer.loadOhm(load, p)));
      }
      for (Load p : transfer.ports()) {
        if (!(transfer.loadOhm(load, p) >= -ROUNDING * own)) {
          return false;
        }
      }
      for (Source s : transfer.sources()) {
        if (!(transfer.loadVoltsPerVolt(load, s) >= -ROUNDING)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Second structure: the transfer resistances are the inverse of an M-matrix. */
  private boolean inverseHolds() {
    // Loads between the same two nodes are one port.
    Map<List<String>, Load> byEnds = new LinkedHashMap<>();
    for (Load p : transfer.ports()) {
      byEnds.putIfAbsent(List.of(p.from(), p.to()), p);
    }
    List<Load> ports = List.copyOf(byEnds.values());
    int n = ports.size();
    DMatrixRMaj z = new DMatrixRMaj(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        z.set(i, j, transfer.loadOhm(ports.get(i), ports.get(j)));
      }
    }
    DMatrixRMaj inverse = new DMatrixRMaj(n, n);
    if (!CommonOps_DDRM.invert(z, inverse)) {
      return false;
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double size = Math.sqrt(Math.abs(inverse.get(i, i) * inverse.get(j, j)));
        if (i != j && !(inverse.get(i, j) <= ROUNDING * size)) {
          return false;
        }
      }
      for (Source s : transfer.sources()) {
        double share = 0;
        for (int j = 0; j < n; j++) {
          share += inverse.get(i, j) * transfer.loadVoltsPerVolt(ports.get(j), s);
        }
        if (!(share >= -ROUNDING * Math.abs(inverse.get(i, i)))) {
          return false;
        }
      }
    }
    return true;
  }

  private void prove() {
    for (Load load : request.network().all(Load.class)) {
      proven.add(Tally.voltageOf(load));
      if (transfer.ports().contains(load)) {
        // Of a resistor the highest voltage counts: it alone on, at the highest supply.
        proven.add(Tally.currentOf(load));
      }
    }
    for (Element branch : transfer.branches()) {
      if (pushesOneWay(branch)) {
        proven.add(Tally.currentOf(branch));
      }
    }
  }

  private void proveConvex() {
    if (request.ranged().size() > MOST_RANGED) {
      return;
    }
    for (Element branch : transfer.branches()) {
      if (pushesForward(branch, 1) || pushesForward(branch, -1)) {
        proven.add(Tally.currentOf(branch));
      }
    }
  }

  /** Whether loads and sources all push the current of a branch in one direction. */
  private boolean pushesForward(Element branch, int sign) {
    double least = ROUNDING * largestShare(branch);
    for (Load p : transfer.ports()) {
      if (!(sign * transfer.amperesPerAmpere(branch, p) >= -least)) {
        return false;
      }
    }
    double base = 0;
    double size = 0;
    for (Source s : transfer.sources()) {
      double share = sign * transfer.amperesPerVolt(branch, s);
      base += share * (share > 0 ? request.lowestV(s) : request.highestV(s));
      size += Math.abs(share) * request.highestV(s);
    }
    return base >= -ROUNDING * size;
  }

  /** Whether more stress moves the current of a branch in one direction only. */
  private boolean pushesOneWay(Element branch) {
    double least = ROUNDING * largestShare(branch);
    boolean up = true;
    boolean down = true;
    for (Load p : transfer.ports()) {
      double share = transfer.amperesPerAmpere(branch, p);
      if (p instanceof ConstantResistance && Math.abs(share) > least) {
        return false;
      }
      up &= share >= -least;
      down &= share <= least;
    }
    double largest = 0;
    for (Source s : transfer.sources()) {
      largest = Math.max(largest, Math.abs(transfer.amperesPerVolt(branch, s)));
    }
    for (Source s : transfer.sources()) {
      if (request.highestV(s) > request.lowestV(s)) {
        double share = transfer.amperesPerVolt(branch, s);
        up &= share <= ROUNDING * largest;
        down &= share >= -ROUNDING * largest;
      }
    }
    return up || down;
  }
}
