package org.loomwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.physics.cutting.CuttingStock;
import org.loomwright.physics.cutting.Piece;
import org.loomwright.physics.heat.Ampacity;
import org.loomwright.physics.heat.BundleHeat;
import org.loomwright.physics.heat.Covering;
import org.loomwright.physics.heat.FaaHandbook;
import org.loomwright.physics.heat.HandbookAmpacity;
import org.loomwright.physics.heat.LoadedWire;
import org.loomwright.physics.heat.Phase;
import org.loomwright.physics.heat.ThermalMass;
import org.loomwright.physics.heat.WireHeat;
import org.loomwright.physics.heat.WireTransient;
import org.loomwright.physics.network.ConductorHeat;
import org.loomwright.physics.network.ConstantCurrent;
import org.loomwright.physics.network.ConstantPower;
import org.loomwright.physics.network.ConstantResistance;
import org.loomwright.physics.network.Joint;
import org.loomwright.physics.network.Network;
import org.loomwright.physics.network.Source;
import org.loomwright.physics.network.Wire;
import org.loomwright.physics.network.WorstCaseRequest;
import org.loomwright.physics.packing.BundleSize;
import org.loomwright.physics.packing.CirclePacking;
import org.loomwright.physics.protection.DamageLine;
import org.loomwright.physics.protection.FaultCurrents;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.FuseFamily;
import org.loomwright.physics.protection.FusePlace;
import org.loomwright.physics.protection.FuseRerating;
import org.loomwright.physics.protection.Insulation;
import org.loomwright.physics.protection.LoadPoint;
import org.loomwright.physics.protection.LoadingByPlace;
import org.loomwright.physics.protection.ProtectionRequest;
import org.loomwright.physics.protection.Selectivity;
import org.loomwright.physics.protection.Withstand;
import org.loomwright.physics.sizing.FuseRequest;
import org.loomwright.physics.sizing.GaugeChoice;
import org.loomwright.physics.wire.Conductor;
import org.loomwright.physics.wire.Copper;
import org.loomwright.physics.wire.Drop;
import org.loomwright.physics.wire.Resistance;
import org.loomwright.physics.wire.Stranding;

/**
 * Every bare number that a public sum takes: what is no number, infinite or far out of range is
 * refused in words that name the range.
 */
final class RefusalsTest {
  private static final Conductor C = Conductor.metric(1);
  private static final Fuse TEN = new Fuse(FuseFamily.REGULAR_BLADE, 10);

  /** One argument of one sum, the others sound. */
  record Case(String name, DoubleConsumer sum) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> cases() {
    List<Case> all = new ArrayList<>();
    wires(all);
    heat(all);
    protection(all);
    networks(all);
    return all.stream();
  }

  private static void wires(List<Case> all) {
    OptionalDouble none = OptionalDouble.empty();
    all.add(new Case("area", x -> new Conductor("x", x, 0.01, 1, 2, "s")));
    all.add(new Case("ohm per m", x -> new Conductor("x", 1, x, 1, 2, "s")));
    all.add(new Case("conductor diameter", x -> new Conductor("x", 1, 0.01, x, 2, "s")));
    all.add(new Case("outside diameter", x -> new Conductor("x", 1, 0.01, 1, x, "s")));
    all.add(new Case("strand", x -> new Stranding(7, x)));
    all.add(new Case("copper", Copper::resistanceFactor));
    all.add(new Case("resistance m", x -> Resistance.of(new Resistance.Input(C, x, 20))));
    all.add(new Case("resistance C", x -> Resistance.of(new Resistance.Input(C, 1, x))));
    all.add(new Case("drop m", x -> Drop.of(new Drop.Input(C, x, none, 1, 12, 20))));
    all.add(
        new Case("drop back", x -> Drop.of(new Drop.Input(C, 1, OptionalDouble.of(x), 1, 12, 20))));
    all.add(new Case("drop A", x -> Drop.of(new Drop.Input(C, 1, none, x, 12, 20))));
    all.add(new Case("drop V", x -> Drop.of(new Drop.Input(C, 1, none, 1, x, 20))));
    all.add(new Case("drop C", x -> Drop.of(new Drop.Input(C, 1, none, 1, 12, x))));
    all.add(new Case("gauge A", x -> gauge(x, 1, 12, 3, 30, 105)));
    all.add(new Case("gauge m", x -> gauge(1, x, 12, 3, 30, 105)));
    all.add(new Case("gauge V", x -> gauge(1, 1, x, 3, 30, 105)));
    all.add(new Case("gauge %", x -> gauge(1, 1, 12, x, 30, 105)));
    all.add(new Case("gauge ambient", x -> gauge(1, 1, 12, 3, x, 105)));
    all.add(new Case("gauge rating", x -> gauge(1, 1, 12, 3, 30, x)));
    all.add(new Case("packing", x -> CirclePacking.of(List.of(1.0, x))));
    all.add(new Case("bundle size", x -> BundleSize.of(new BundleSize.Input(List.of(1.0, x)))));
    all.add(new Case("stock", x -> cut(x, 10, 0)));
    all.add(new Case("piece", x -> cut(100, x, 0)));
    all.add(new Case("kerf", x -> cut(100, 10, x)));
  }

  private static void gauge(double a, double m, double v, double drop, double air, double rating) {
    GaugeChoice.of(GaugeChoice.Input.single(a, m, v, drop, air, rating));
  }

  private static void cut(double stockMm, double pieceMm, double kerfMm) {
    CuttingStock.of(new CuttingStock.Input(stockMm, List.of(new Piece(pieceMm, 2)), kerfMm));
  }

  private static void heat(List<Case> all) {
    WireHeat.Lying lying = WireHeat.Lying.single(C, 40);
    OptionalDouble none = OptionalDouble.empty();
    all.add(new Case("lying ambient", x -> WireHeat.Lying.single(C, x)));
    all.add(new Case("lying share", x -> new WireHeat.Lying(C, 40, 3, OptionalDouble.of(x))));
    all.add(new Case("temperature A", x -> WireHeat.temperature(lying, x)));
    all.add(new Case("current C", x -> WireHeat.current(lying, x)));
    all.add(new Case("ampacity rating", x -> Ampacity.of(Ampacity.Input.single(C, x, 40))));
    all.add(new Case("ampacity ambient", x -> Ampacity.of(Ampacity.Input.single(C, 105, x))));
    all.add(new Case("handbook rating", x -> new HandbookAmpacity.Input(C, x, 40, 1, none)));
    all.add(new Case("handbook ambient", x -> new HandbookAmpacity.Input(C, 105, x, 1, none)));
    all.add(new Case("altitude", FaaHandbook::altitudeFactor));
    all.add(new Case("bundle factor", x -> FaaHandbook.bundleFactor(3, x)));
    all.add(new Case("free air", x -> FaaHandbook.allowed(x, 0, 1, 1)));
    all.add(new Case("faa ambient", x -> FaaHandbook.conductorC(x, 105, 1, 2)));
    all.add(new Case("faa rating", x -> FaaHandbook.conductorC(40, x, 1, 2)));
    all.add(new Case("faa current", x -> FaaHandbook.conductorC(40, 105, x, 2)));
    all.add(new Case("faa allowed", x -> FaaHandbook.conductorC(40, 105, 0, x)));
    all.add(new Case("run length", x -> FaaHandbook.correctedLength(x, 20)));
    all.add(new Case("run temperature", x -> FaaHandbook.correctedLength(1, x)));
    all.add(new Case("loaded wire", x -> new LoadedWire("w", C, x)));
    BundleHeat.Bundle bundle = BundleHeat.Bundle.bare(List.of(new LoadedWire("w", C, 1)), 40);
    all.add(new Case("bundle ambient", x -> BundleHeat.Bundle.bare(bundle.wires(), x)));
    all.add(
        new Case(
            "bundle diameter",
            x -> new BundleHeat.Bundle(bundle.wires(), 40, OptionalDouble.of(x), List.of())));
    all.add(new Case("bundle limit", x -> BundleHeat.allowedCurrentA(bundle, 0, x)));
    all.add(new Case("gap", x -> new Covering("c", x, 1, 0.2, "s")));
    all.add(new Case("wall", x -> new Covering("c", 0, x, 0.2, "s")));
    all.add(new Case("conductivity", x -> new Covering("c", 0, 1, x, "s")));
    all.add(new Case("phase A", x -> new Phase(x, 1)));
    all.add(new Case("phase s", x -> new Phase(1, x)));
    WireTransient wire = WireTransient.of(lying, ThermalMass.copperOnly(C));
    all.add(new Case("start", x -> wire.temperatureAfterC(x, new Phase(1, 1))));
    all.add(new Case("reach start", x -> wire.timeToReachS(x, 90, 1)));
    all.add(new Case("reach limit", x -> wire.timeToReachS(40, x, 1)));
    all.add(new Case("reach A", x -> wire.timeToReachS(40, 90, x)));
  }

  private static void protection(List<Case> all) {
    DamageLine line = DamageLine.of(DamageLine.Wire.hot(C, Insulation.PVC, 105, 40));
    all.add(new Case("line rating", x -> DamageLine.Wire.hot(C, Insulation.PVC, x, 40)));
    all.add(new Case("line A", line::timeS));
    all.add(new Case("line s", line::currentA));
    all.add(
        new Case(
            "line start",
            x -> new DamageLine.Wire(WireHeat.Lying.single(C, 40), Insulation.PVC, 105, x)));
    all.add(new Case("withstand s", x -> withstand(OptionalDouble.empty(), x)));
    all.add(new Case("withstand C", x -> withstand(OptionalDouble.of(x), 1)));
    all.add(new Case("fuse", x -> new Fuse(FuseFamily.REGULAR_BLADE, x)));
    all.add(new Case("re-rating", x -> FuseRerating.factor(FuseFamily.LARGE_BLADE, x)));
    all.add(
        new Case("loading", x -> LoadingByPlace.of(FuseFamily.LARGE_BLADE, FusePlace.CABIN, x)));
    all.add(new Case("load point A", x -> new LoadPoint("p", x, 1)));
    all.add(new Case("load point s", x -> new LoadPoint("p", 1, x)));
    for (int i = 0; i < 8; i++) {
      int at = i;
      all.add(new Case("loop " + i, x -> loop(at, x)));
    }
    all.add(new Case("pair other", x -> pair(25, x, 20, 30)));
    all.add(new Case("pair from", x -> pair(25, 1, x, 30)));
    all.add(new Case("pair to", x -> pair(25, 1, 20, x)));
    all.add(new Case("pair ambient", x -> pair(x, 1, 20, 30)));
    all.add(new Case("request load", x -> request(x, 5)));
    all.add(new Case("request s", x -> request(1, x)));
    all.add(new Case("choice A", x -> FuseRequest.of(x, 0, 0, C, 1, 40, 12)));
    all.add(new Case("choice peak", x -> FuseRequest.of(1, x, 0, C, 1, 40, 12)));
    all.add(new Case("choice peak s", x -> FuseRequest.of(1, 1, x, C, 1, 40, 12)));
    all.add(new Case("choice m", x -> FuseRequest.of(1, 0, 0, C, x, 40, 12)));
    all.add(new Case("choice V", x -> FuseRequest.of(1, 0, 0, C, 1, 40, x)));
  }

  private static void withstand(OptionalDouble startC, double timeS) {
    Withstand.of(new Withstand.Input(C, Insulation.PVC, startC, timeS));
  }

  private static void loop(int at, double x) {
    double[] in = {11, 15, 0.02, 0.06, 1, 1, 0.01, 105};
    in[at] = x;
    FaultCurrents.of(
        new FaultCurrents.Loop(in[0], in[1], in[2], in[3], C, in[4], in[5], in[6], in[7]));
  }

  private static void pair(double ambientC, double otherA, double fromA, double toA) {
    Selectivity.of(new Selectivity.Pair(TEN, TEN, ambientC, otherA, fromA, toA));
  }

  private static void request(double continuousA, double openingS) {
    FaultCurrents.Loop faults = new FaultCurrents.Loop(11, 15, 0.02, 0.06, C, 1, 1, 0, 105);
    DamageLine.Wire wire = DamageLine.Wire.hot(C, Insulation.PVC, 105, 40);
    new ProtectionRequest(
        TEN,
        FusePlace.CABIN,
        25,
        continuousA,
        Optional.empty(),
        Optional.empty(),
        wire,
        faults,
        openingS);
  }

  private static void networks(List<Case> all) {
    all.add(new Case("emf", x -> new Source("e", "a", "b", x, 0.01)));
    all.add(new Case("internal", x -> new Source("e", "a", "b", 12, x)));
    all.add(new Case("joint", x -> Joint.fuse("f", "a", "b", x, "s")));
    all.add(new Case("wire m", x -> new Wire("w", "a", "b", C, x, 20)));
    all.add(new Case("wire C", x -> new Wire("w", "a", "b", C, 1, x)));
    all.add(new Case("load A", x -> new ConstantCurrent("l", "a", "b", x)));
    all.add(new Case("load cut-off", x -> new ConstantCurrent("l", "a", "b", 1, x)));
    all.add(new Case("load ohm", x -> new ConstantResistance("l", "a", "b", x)));
    all.add(new Case("load W", x -> new ConstantPower("l", "a", "b", x, 0)));
    all.add(new Case("power cut-off", x -> new ConstantPower("l", "a", "b", 1, x)));
    all.add(new Case("still air", ConductorHeat::inStillAir));
    all.add(new Case("range low", x -> new WorstCaseRequest.EmfRange(x, 13)));
    all.add(new Case("range high", x -> new WorstCaseRequest.EmfRange(12, x)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whatIsNoFigureIsRefusedInWords(Case one) {
    for (double bad :
        new double[] {
          Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e300, -1e300
        }) {
      assertThatThrownBy(() -> one.sum().accept(bad))
          .as(one + " " + bad)
          .isInstanceOf(SumException.class)
          .satisfies(
              e ->
                  assertThat(e.getMessage())
                      .containsPattern(
                          "must be from .+ to|must be above zero|must not be below zero|must be at"
                              + " least|must have a resistance from .+ to|must be larger than|holds"
                              + " up to|than the stock|at least a thousandth"));
    }
  }

  /** The other way: a network of sound elements is not refused. */
  @ParameterizedTest
  @MethodSource("sound")
  void soundFiguresAreTaken(Network network) {
    assertThat(new WorstCaseRequest(network, Set.of(), Map.of(), 1).network()).isEqualTo(network);
  }

  static Stream<Network> sound() {
    return Stream.of(
        new Network(
            "a",
            List.of(
                new Source("e", "a", "b", 0, 1e-6),
                new Wire("w", "b", "c", C, 1000, 200),
                new ConstantPower("l", "c", "a", 0, 0))));
  }
}
