package org.loomwright.physics.protection;

import java.util.ArrayList;
import java.util.List;

/**
 * What a protection chart shows on log-log axes of current and time.
 *
 * @param fuse label of the fuse
 * @param wire label of the wire
 * @param earliest the fuse stays closed below this line; ends where no limit is known
 * @param latest the fuse is open above this line
 * @param damage the wire is damaged above this line
 * @param loads starting, stalled and steady current
 * @param endOfLineA smallest fault current, A
 * @param nearSourceA largest fault current, A
 */
public record ProtectionChart(
    String fuse,
    String wire,
    List<ChartPoint> earliest,
    List<ChartPoint> latest,
    List<ChartPoint> damage,
    List<LoadPoint> loads,
    double endOfLineA,
    double nearSourceA) {
  private static final int DAMAGE_POINTS = 60;
  private static final int TAIL_POINTS = 8;

  /** Copies the lists. */
  public ProtectionChart {
    earliest = List.copyOf(earliest);
    latest = List.copyOf(latest);
    damage = List.copyOf(damage);
    loads = List.copyOf(loads);
  }

  /** The chart of a request. */
  public static ProtectionChart of(ProtectionRequest request) {
    DamageLine line = DamageLine.of(request.wire());
    FaultCurrents.Result faults = FaultCurrents.of(request.faults());
    Fuse fuse = request.fuse();
    List<FuseGate> gates = fuse.gates();
    double toA =
        Math.max(faults.nearSourceA(), gates.get(gates.size() - 1).multiple() * fuse.ratingA());
    List<LoadPoint> loads = new ArrayList<>();
    loads.add(new LoadPoint("steady load", request.continuousA(), DamageLine.FOR_GOOD_S));
    request.starting().ifPresent(loads::add);
    request.stalled().ifPresent(loads::add);
    return new ProtectionChart(
        fuse.label(),
        request.wire().lying().conductor().label(),
        earliest(fuse, gates),
        latest(fuse, gates, toA),
        line.points(toA, DAMAGE_POINTS),
        loads,
        faults.endOfLineA(),
        faults.nearSourceA());
  }

  /** Corners of the earliest opening: level to the second gate, then straight from gate to gate. */
  private static List<ChartPoint> earliest(Fuse fuse, List<FuseGate> gates) {
    List<ChartPoint> points = new ArrayList<>();
    for (int i = 0; i < gates.size() && gates.get(i).minS() > 0; i++) {
      double currentA = gates.get(i).multiple() * fuse.ratingA();
      points.add(new ChartPoint(currentA, gates.get(i).minS()));
      if (i == 0 && gates.get(1).minS() > 0) {
        points.add(new ChartPoint(currentA * (1 + 1e-6), gates.get(1).minS()));
      }
    }
    return points;
  }

  /** Corners of the latest opening: steps down at the gates, then with constant I²t. */
  private static List<ChartPoint> latest(Fuse fuse, List<FuseGate> gates, double toA) {
    List<ChartPoint> points = new ArrayList<>();
    for (int i = 0; i < gates.size(); i++) {
      FuseGate gate = gates.get(i);
      if (Double.isInfinite(gate.maxS())) {
        continue;
      }
      double currentA = gate.multiple() * fuse.ratingA();
      double before = Math.min(DamageLine.FOR_GOOD_S, gates.get(Math.max(0, i - 1)).maxS());
      points.add(new ChartPoint(currentA, before));
      points.add(new ChartPoint(currentA, gate.maxS()));
    }
    double lastA = points.get(points.size() - 1).currentA();
    for (int i = 1; i <= TAIL_POINTS && toA > lastA; i++) {
      double currentA = lastA * Math.pow(toA / lastA, (double) i / TAIL_POINTS);
      points.add(new ChartPoint(currentA, fuse.longestOpeningS(currentA)));
    }
    return points;
  }
}
