package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.equipment.LoadForm;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.planner.electrics.NeedFigures;
import org.loomwright.planner.electrics.PathPart;
import org.loomwright.planner.fixture.Bits;
import org.loomwright.planner.fixture.SmallCar;
import org.loomwright.planner.fixture.VehicleBuilder;
import org.loomwright.planner.plan.With;

/**
 * Networks of small vehicles, worked out again with plain arithmetic from the values of the
 * documents and the defaults of {@link org.loomwright.model.rules.ElectricDefaults}.
 */
class HandReckonedTest {
  // The vehicle: 11.8 V at the fuse blocks, section 15 mΩ from the battery, 40 °C everywhere, two
  // runs of 1200 mm with 20 mm tolerance each.
  private static final double LOWEST_V = 11.8;
  private static final double SECTION_OHM = 0.015;
  private static final double AMBIENT_C = 40;

  // The shop's rules: 50 mm slack and 20 mm service loop at each end.
  // Slack and service loop; a connector reaches from its first cavity to its eighth besides.
  private static final double PLAIN_M = 0.050 + 0.020;
  private static final double CONNECTOR_M = PLAIN_M + 7 * 0.010;
  private static final double ENDS_M = PLAIN_M + CONNECTOR_M;
  // The joint lies on the run by which the trunk comes, a splice spacing from the branches' place.
  private static final double JOINT_M = 0.050;
  private static final double RUN_M = 1.200 + 0.020;

  // ElectricDefaults: battery old and cold, crimp and contact, splice, ring on its stud, body, fuse
  // drop at rated current, highest voltage of a 12 V system.
  private static final double SOURCE_OHM = 0.020;
  private static final double CONTACT_OHM = 0.005;
  private static final double SPLICE_OHM = 0.0005;
  private static final double RING_OHM = 0.0025;
  private static final double BODY_OHM = 0.001;
  private static final double FUSE_V = 0.150;
  private static final double HIGHEST_V = 16;

  private static final double FACTORY_WIRE_C = 70;

  /** Largest resistance at 20 °C by ISO 6722-1, ohm/m; and diameter over the strands, mm. */
  private static final Map<Double, double[]> TABLE =
      Map.of(
          0.5, new double[] {0.0371, 1.10},
          1.0, new double[] {0.0185, 1.50},
          1.5, new double[] {0.0127, 1.80},
          2.5, new double[] {0.00760, 2.20},
          4.0, new double[] {0.00471, 2.80},
          6.0, new double[] {0.00314, 3.40});

  private static final double WITHIN = 1e-6;

  @Test
  void oneSlotOneLeadOneGround() {
    SolvedKit kit = kit(Bits.supply("30", 10));
    Sized feed = lead(kit, CircuitKind.SUPPLY);
    Sized ground = lead(kit, CircuitKind.GROUND);
    double feedOhm = leadOhm(feed, 2 * RUN_M + ENDS_M, 10);
    double groundOhm = leadOhm(ground, ENDS_M, 10);
    double fuseOhm = fuseOhm(feed);

    NeedFigures supply = kit.figures("e/p/1");
    currents(supply, 10, 10, 10, 10);
    assertThat(supply.path().get(0).ohm()).isCloseTo(fuseOhm, within(1e-12));
    assertThat(supply.path().get(2).ohm()).isCloseTo(feedOhm, within(1e-12));
    assertThat(supply.path().get(2).wire().orElseThrow().temperatureC())
        .isEqualTo(wholeC(feed, 10));
    double feedV = 10 * (fuseOhm + CONTACT_OHM + feedOhm + CONTACT_OHM);
    assertThat(supply.dropV()).isCloseTo(feedV, within(WITHIN));
    assertThat(supply.supply()).hasSize(1);
    assertThat(supply.supply().get(0).dropV()).isCloseTo(10 * SECTION_OHM, within(WITHIN));

    NeedFigures back = kit.figures("e/p/2");
    double groundV = 10 * (CONTACT_OHM + groundOhm + RING_OHM + BODY_OHM);
    currents(back, 10, 10, 10, 10);
    assertThat(back.dropV()).isCloseTo(groundV, within(WITHIN));
    assertThat(back.lowestV()).isEmpty();

    assertThat(supply.lowestV().orElseThrow())
        .isCloseTo(LOWEST_V - 10 * SOURCE_OHM - 10 * SECTION_OHM - feedV - groundV, within(WITHIN));
    assertThat(supply.lowestState()).isEqualTo("all loads on, source at 11.8 V");
    assertThat(kit.cases())
        .allSatisfy(it -> assertThat(it.figures().findings()).isEmpty())
        .allSatisfy(it -> assertThat(it.figures().proven()).isTrue());
  }

  /** The temperature of each lead alone on its run, by the heat balance of one bare wire. */
  @Test
  void conductorsAreAsWarmAsTheHeatBalanceSays() {
    SolvedKit kit = kit(Bits.supply("30", 10));
    for (CircuitKind kind : List.of(CircuitKind.SUPPLY, CircuitKind.GROUND)) {
      Sized sized = lead(kit, kind);
      BundleHeats.Hottest hottest = kit.chosen().evaluation().hottest(sized.strand());
      assertThat(hottest.currentA()).isCloseTo(10, within(WITHIN));
      assertThat(hottest.bundle().wires()).hasSize(1);
      assertThat(hottest.conductorC()).isCloseTo(conductorC(sized, 10), within(0.01));
      assertThat(hottest.conductorC()).isGreaterThan(AMBIENT_C + 1);
    }
  }

  /**
   * The shared wire carries both loads. The voltage of the document holds with the factory's loads
   * on, so inside the source only the added 3 A count.
   */
  @Test
  void aSpliceSharesTheFactoryWireButDoesNotBurdenTheSourceTwice() {
    Circuit lamp =
        With.changed(
            circuit("w", "slot b f1", List.of("unit lamp"), 6, List.of("rear")),
            "length",
            Optional.of(Length.of("2 m")));
    SolvedKit kit = solve(SmallCar.car(1).add(lamp), SmallCar.plug(Bits.supply("30", 3), 3));
    Sized feed = lead(kit, CircuitKind.SUPPLY);
    double wireOhm = ohm(0.00760, 2, FACTORY_WIRE_C);
    double leadOhm = leadOhm(feed, ENDS_M, 3);
    double fuseOhm = FUSE_V / 20;
    double groundOhm = leadOhm(lead(kit, CircuitKind.GROUND), ENDS_M, 3);

    NeedFigures supply = kit.figures("e/p/1");
    currents(supply, 9, 9, 9, 3, 3, 3);
    double feedV = 9 * (fuseOhm + CONTACT_OHM + wireOhm) + 3 * (SPLICE_OHM + leadOhm + CONTACT_OHM);
    assertThat(supply.dropV()).isCloseTo(feedV, within(WITHIN));
    double groundV = 3 * (CONTACT_OHM + groundOhm + RING_OHM + BODY_OHM);
    assertThat(kit.figures("e/p/2").dropV()).isCloseTo(groundV, within(WITHIN));
    assertThat(supply.lowestV().orElseThrow())
        .isCloseTo(LOWEST_V - 3 * SOURCE_OHM - 9 * SECTION_OHM - feedV - groundV, within(WITHIN));
  }

  @Test
  void aFactoryWireOfUnknownLengthCountsItsFarCrimpOnly() {
    Circuit lamp = circuit("w", "slot b f1", List.of("unit lamp"), 6, List.of("rear"));
    SolvedKit kit = solve(SmallCar.car(1).add(lamp), SmallCar.plug(Bits.supply("30", 3), 3));
    double leadOhm = leadOhm(lead(kit, CircuitKind.SUPPLY), ENDS_M, 3);
    assertThat(kit.figures("e/p/1").dropV())
        .isCloseTo(
            9 * (FUSE_V / 20 + 2 * CONTACT_OHM) + 3 * (SPLICE_OHM + leadOhm + CONTACT_OHM),
            within(WITHIN));
  }

  @Test
  void whatIsAlreadyWiredIsReckonedFromTheFactoryWires() {
    Circuit feed =
        With.changed(
            circuit("w", "slot b f1", List.of("cavity k 1"), 0, List.of()),
            "length",
            Optional.of(Length.of("3 m")));
    Circuit ground =
        With.changed(
            Bits.circuit(
                "v",
                CircuitKind.GROUND,
                Optional.of("31"),
                "ground g1",
                "cavity k 2",
                Condition.always()),
            "length",
            Optional.of(Length.of("50 cm")));
    SolvedKit kit =
        solve(SmallCar.car(1).add(feed).add(ground), SmallCar.plug(Bits.supply("30", 8), 8));
    assertThat(kit.chosen().leads()).isEmpty();
    double feedV = 8 * (FUSE_V / 20 + CONTACT_OHM + ohm(0.00760, 3, FACTORY_WIRE_C) + CONTACT_OHM);
    double groundV = 8 * (CONTACT_OHM + ohm(0.00760, 0.5, FACTORY_WIRE_C) + RING_OHM + BODY_OHM);
    currents(kit.figures("e/p/1"), 8, 8, 8, 8);
    assertThat(kit.figures("e/p/1").dropV()).isCloseTo(feedV, within(WITHIN));
    assertThat(kit.figures("e/p/2").dropV()).isCloseTo(groundV, within(WITHIN));
    assertThat(kit.figures("e/p/1").lowestV().orElseThrow())
        .isCloseTo(LOWEST_V - 8 * (SOURCE_OHM + SECTION_OHM) - feedV - groundV, within(WITHIN));
  }

  @Test
  void aTrunkCarriesBothBranches() {
    VehicleBuilder car =
        SmallCar.car(1)
            .add(Bits.connector("k2", "middle", Optional.empty()))
            .add(With.changed(Bits.stud("g2", 1, 12, 200, false), "place", "middle"));
    Plug far = SmallCar.plug(Bits.supply("30", 3, "q 1"), 3);
    Plug near =
        Bits.plug("q", Bits.pin("1", Bits.supply("30", 4, "p 1")), Bits.pin("2", Bits.ground(4)));
    SolvedKit kit =
        SolvedKit.of(
            Bits.order(
                car.build(),
                List.of(Bits.equipment("e", far, near)),
                List.of(Bits.on("e", "p", "k"), Bits.on("e", "q", "k2"))));
    Sized trunk = ending(kit, "slot b f1", "joint J1 at middle");
    Sized toFar = ending(kit, "joint J1 at middle", "cavity k 1");
    Sized toNear = ending(kit, "joint J1 at middle", "cavity k2 1");
    double trunkOhm = leadOhm(trunk, RUN_M - JOINT_M + PLAIN_M, 7);
    double farOhm = leadOhm(toFar, RUN_M + JOINT_M + CONNECTOR_M, 3);
    double nearOhm = leadOhm(toNear, JOINT_M + CONNECTOR_M, 4);
    double sharedV = 7 * (fuseOhm(trunk) + CONTACT_OHM + trunkOhm + SPLICE_OHM);
    double farV = sharedV + 3 * (SPLICE_OHM + farOhm + CONTACT_OHM);
    double nearV = sharedV + 4 * (SPLICE_OHM + nearOhm + CONTACT_OHM);
    currents(kit.figures("e/p/1"), 7, 7, 7, 7, 3, 3, 3);
    currents(kit.figures("e/q/1"), 7, 7, 7, 7, 4, 4, 4);
    assertThat(kit.figures("e/p/1").dropV()).isCloseTo(farV, within(WITHIN));
    assertThat(kit.figures("e/q/1").dropV()).isCloseTo(nearV, within(WITHIN));
    double farGroundOhm = leadOhm(ending(kit, "cavity k 2", "ground g1"), ENDS_M, 3);
    double nearGroundOhm = leadOhm(ending(kit, "cavity k2 2", "ground g2"), ENDS_M, 4);
    double bothV = LOWEST_V - 7 * (SOURCE_OHM + SECTION_OHM);
    assertThat(kit.figures("e/p/1").lowestV().orElseThrow())
        .isCloseTo(
            bothV - farV - 3 * (CONTACT_OHM + farGroundOhm + RING_OHM + BODY_OHM), within(WITHIN));
    assertThat(kit.figures("e/q/1").lowestV().orElseThrow())
        .isCloseTo(
            bothV - nearV - 4 * (CONTACT_OHM + nearGroundOhm + RING_OHM + BODY_OHM),
            within(WITHIN));
  }

  /** Its most, 10 A, are meant at 16 V: 1.6 Ω. Behind a line it takes a little less than that. */
  @Test
  void aResistanceTakesMostAtTheHighestAndGetsLeastAtTheLowestSupply() {
    SolvedKit kit = kit(draws(Bits.supply("30", 10), LoadForm.RESISTANCE));
    double loadOhm = HIGHEST_V / 10;
    double mostA =
        settled(currentA -> HIGHEST_V / (loadOhm + lineOhm(kit, currentA)), HIGHEST_V / loadOhm);
    NeedFigures supply = kit.figures("e/p/1");
    currents(supply, mostA, mostA, mostA, mostA);
    double lineOhm = lineOhm(kit, mostA);
    assertThat(mostA).isLessThan(10);
    assertThat(supply.lowestV().orElseThrow())
        .isCloseTo(LOWEST_V * loadOhm / (loadOhm + lineOhm), within(WITHIN));
  }

  /** V² - E·V + P·R = 0; the load stands at the higher of its two roots. */
  @Test
  void aPowerTakesMostAtTheLowestSupply() {
    SolvedKit kit =
        kit(
            With.changed(
                draws(Bits.supply("30", 10), LoadForm.POWER),
                "minimumVoltage",
                Optional.of(Voltage.of("10 V"))));
    double powerW = 10 * 10;
    double mostA = settled(currentA -> powerW / root(LOWEST_V, powerW, lineOhm(kit, currentA)), 10);
    NeedFigures supply = kit.figures("e/p/1");
    currents(supply, mostA, mostA, mostA, mostA);
    assertThat(mostA).isBetween(100 / 11.8, 10.0);
    double lowestV = root(LOWEST_V, powerW, lineOhm(kit, mostA));
    assertThat(supply.lowestV().orElseThrow()).isCloseTo(lowestV, within(WITHIN));
    // What the source gives is what load and line take.
    assertThat(LOWEST_V * mostA)
        .isCloseTo(powerW + mostA * mostA * lineOhm(kit, mostA), within(1e-5));
  }

  /** Without a least voltage the power is meant at the lowest supply. */
  @Test
  void aPowerWithoutALeastVoltageIsMeantAtTheLowestSupply() {
    SolvedKit kit = kit(draws(Bits.supply("30", 5), LoadForm.POWER));
    double powerW = 5 * LOWEST_V;
    double mostA = settled(currentA -> powerW / root(LOWEST_V, powerW, lineOhm(kit, currentA)), 5);
    currents(kit.figures("e/p/1"), mostA, mostA, mostA, mostA);
    assertThat(mostA).isGreaterThan(5);
  }

  private static double root(double emfV, double powerW, double ohm) {
    return (emfV + Math.sqrt(emfV * emfV - 4 * powerW * ohm)) / 2;
  }

  private static double settled(DoubleUnaryOperator next, double start) {
    double value = start;
    for (int i = 0; i < 100; i++) {
      value = next.applyAsDouble(value);
    }
    return value;
  }

  /** All in series with the load of one slot, one lead, one ground, source included. */
  private static double lineOhm(SolvedKit kit, double currentA) {
    Sized feed = lead(kit, CircuitKind.SUPPLY);
    return SOURCE_OHM
        + SECTION_OHM
        + fuseOhm(feed)
        + CONTACT_OHM
        + leadOhm(feed, 2 * RUN_M + ENDS_M, currentA)
        + CONTACT_OHM
        + CONTACT_OHM
        + leadOhm(lead(kit, CircuitKind.GROUND), ENDS_M, currentA)
        + RING_OHM
        + BODY_OHM;
  }

  private static SolvedKit kit(Need supply) {
    return solve(SmallCar.car(1), SmallCar.plug(supply, supply.continuous().amperes()));
  }

  private static SolvedKit solve(VehicleBuilder car, Plug plug) {
    return SolvedKit.of(SmallCar.order(car, plug));
  }

  private static Circuit circuit(
      String id, String from, List<String> to, double loadA, List<String> reachedAt) {
    return Bits.circuit(
        id,
        CircuitKind.SUPPLY,
        Optional.of("30"),
        from,
        to,
        "2.5 mm²",
        Condition.always(),
        Optional.of(Bits.amps(20)),
        Optional.of(Bits.amps(loadA)),
        reachedAt,
        false);
  }

  private static Need draws(Need need, LoadForm form) {
    return With.changed(need, "draws", Optional.of(form));
  }

  private static Sized lead(SolvedKit kit, CircuitKind kind) {
    List<Sized> found =
        kit.chosen().leads().stream().filter(it -> it.strand().kind() == kind).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static Sized ending(SolvedKit kit, String a, String b) {
    return kit.chosen().leads().stream()
        .filter(it -> it.strand().key().equals(a + " > " + b))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    "no lead "
                        + a
                        + " > "
                        + b
                        + "; there are "
                        + kit.chosen().leads().stream().map(it -> it.strand().key()).toList()));
  }

  private static void currents(NeedFigures figures, double... wantedA) {
    assertThat(figures.path().stream().mapToDouble(PathPart::currentA).toArray())
        .as(figures.path().stream().map(PathPart::name).toList().toString())
        .containsExactly(wantedA, within(WITHIN));
  }

  private static double fuseOhm(Sized sized) {
    return FUSE_V / sized.need().fuse().ratingA();
  }

  private static double leadOhm(Sized sized, double lengthM, double currentA) {
    assertThat(sized.lead().lengthMm()).isCloseTo(lengthM * 1000, within(1e-9));
    return ohm(table(sized)[0], lengthM, wholeC(sized, currentA));
  }

  /** Resistance of copper at a temperature, IEC 60228. */
  private static double ohm(double ohmPerM20C, double lengthM, double temperatureC) {
    return ohmPerM20C * lengthM * (234.5 + temperatureC) / 254.5;
  }

  private static double[] table(Sized sized) {
    return Optional.ofNullable(TABLE.get(sized.wire().size().areaMm2())).orElseThrow();
  }

  /** Temperatures are rounded up to whole kelvins. */
  private static double wholeC(Sized sized, double currentA) {
    return Math.ceil(conductorC(sized, currentA) - 1e-6);
  }

  /**
   * One bare wire in still air: heat I²R at its own temperature = natural convection of a
   * horizontal cylinder (Churchill and Chu 1975) + radiation of emissivity 0.75 (ECSS-Q-ST-30-11C
   * Annex C); insulation of 0.15 W/(m·K). Air by the U.S. Standard Atmosphere 1976.
   */
  private static double conductorC(Sized sized, double currentA) {
    double ohmPerM = table(sized)[0];
    double innerMm = table(sized)[1];
    double outerMm = sized.wire().diameter().mm();
    double low = AMBIENT_C;
    double high = 300;
    for (int i = 0; i < 80; i++) {
      double conductorC = (low + high) / 2;
      double heat = currentA * currentA * ohm(ohmPerM, 1, conductorC);
      double surfaceC = conductorC - heat * Math.log(outerMm / innerMm) / (2 * Math.PI * 0.15);
      if (surfaceC < AMBIENT_C || givenOff(outerMm / 1000, surfaceC) < heat) {
        low = conductorC;
      } else {
        high = conductorC;
      }
    }
    return low;
  }

  private static double givenOff(double diameterM, double surfaceC) {
    double riseK = surfaceC - AMBIENT_C;
    double film = (surfaceC + AMBIENT_C) / 2 + 273.15;
    double viscosity = 1.458e-6 * Math.pow(film, 1.5) / (film + 110.4);
    double conductivity =
        2.64638e-3 * Math.pow(film, 1.5) / (film + 245.4 * Math.pow(10, -12 / film));
    double density = 101_325 / (287.053 * film);
    double prandtl = viscosity * 1006 / conductivity;
    double rayleigh =
        9.80665
            / film
            * riseK
            * Math.pow(diameterM, 3)
            * prandtl
            * Math.pow(density / viscosity, 2);
    double nusselt =
        Math.pow(
            0.60
                + 0.387
                    * Math.pow(rayleigh, 1 / 6.0)
                    / Math.pow(1 + Math.pow(0.559 / prandtl, 9 / 16.0), 8 / 27.0),
            2);
    double convection = Math.PI * nusselt * conductivity * riseK;
    double radiation =
        0.75
            * 5.670374419e-8
            * Math.PI
            * diameterM
            * (Math.pow(surfaceC + 273.15, 4) - Math.pow(AMBIENT_C + 273.15, 4));
    return convection + radiation;
  }
}
