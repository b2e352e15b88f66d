package org.loomwright.papers;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.BuildCount;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Fit;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.GapPart;
import org.loomwright.model.design.GapStatus;
import org.loomwright.model.design.Harness;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Leaf;
import org.loomwright.model.design.NeedGap;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.design.WayLine;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.vehicle.Undo;

/** A small but rich plan made by hand: every kind of thing a pack has to show. */
final class SamplePlan {
  /** Words that try to break markup, tables and fonts. */
  static final String FORGED = "<b>\"Ω & °C\" 'x²' −3</b>";

  static final String LONG =
      "Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft";

  private static final Condition TOW = Condition.is("tow-prep", "yes");
  private static final Condition FED = Condition.is("rear-feed", "yes");

  private SamplePlan() {}

  static Kit kit() {
    return new Kit(
        "heat-07",
        "Rear heater kit",
        "C",
        "osprey",
        "shop-rules",
        List.of("shop"),
        List.of(
            new Mount("heater", "main", Optional.of("floor"), Optional.empty()),
            new Mount("heater", "step", Optional.empty(), Optional.of("step-well"))),
        List.of(),
        Map.of("osprey", "7"));
  }

  static KitOrder order() {
    return new KitOrder(
        kit(),
        SampleVehicle.vehicle(),
        List.of(SampleVehicle.equipment()),
        SampleParts.parts(),
        SampleParts.rules());
  }

  /** With a failing check, a failed obligation and builds that are not served. */
  static Plan troubled() {
    List<Check> checks = new ArrayList<>(checks());
    checks.add(
        Check.of(
            "drop/L1/B1",
            "voltage drop on the feed",
            "lead H1",
            List.of("A2"),
            0.3604,
            0.36,
            true,
            "V",
            0.1,
            "shop rules, feed drop",
            List.of(
                new TraceLine("resistance", "ρ·l/A", 0.0249, "Ω", "ISO 6722-1"),
                new TraceLine("drop", "I·R", 0.3604, "V", "Ohm's law"))));
    List<Obligation> obligations = new ArrayList<>(obligations());
    obligations.add(
        new Obligation(
            "order", "no act that can't be undone precedes its question", false, "step 7"));
    return plan(
        checks,
        new Proof(
            false,
            BigInteger.valueOf(1152),
            obligations,
            leaves(),
            List.of(
                new Counterexample(
                    "order",
                    Map.of("rear-feed", "no"),
                    "vehicles with the rear section dead",
                    BigInteger.valueOf(576),
                    "land",
                    "the terminal goes in before the slot is known to be fed"))),
        List.of(
            new Unserved(
                "vehicles with both slots taken",
                TOW.and(FED),
                BigInteger.valueOf(12),
                List.of("heater/main/1"),
                "No slot with room is left.")));
  }

  /** A plan that can be released, with one marginal check. */
  static Plan good() {
    return plan(
        checks(),
        new Proof(true, BigInteger.valueOf(1152), obligations(), leaves(), List.of()),
        List.of());
  }

  private static Plan plan(List<Check> checks, Proof proof, List<Unserved> unserved) {
    return new Plan(
        kit(),
        new BuildCount(BigInteger.valueOf(1152), 6, 2, 5),
        gap(),
        new Fit(List.of("a cabin sensor module on vehicles without one"), List.of()),
        ways(),
        cases(),
        unserved,
        design(),
        Harness.NONE,
        checks,
        List.of(),
        List.of(),
        SampleGuide.guide(),
        proof,
        List.of("Lengths are those of the runs on file; two of them were measured."));
  }

  private static List<Obligation> obligations() {
    return List.of(
        new Obligation(
            "cover", "every possible build ends in exactly one case", true, "1152 builds"),
        new Obligation("met", "every need is met on every build", true, "4 needs"));
  }

  private static List<Leaf> leaves() {
    return List.of(
        new Leaf("test", List.of("A1", "B1"), "not prepared for towing", BigInteger.valueOf(800)),
        new Leaf("test", List.of("A2", "B1"), "prepared for towing", BigInteger.valueOf(352)));
  }

  private static List<NeedGap> gap() {
    return List.of(
        new NeedGap(
            "heater/main/1",
            "battery supply of the heater, 12.5 A",
            List.of(
                new GapPart(
                    GapStatus.MISSING,
                    TOW.negate(),
                    "not prepared for towing",
                    BigInteger.valueOf(800),
                    "Cavity 1 of the rear floor connector is empty.",
                    List.of("seen 2026-03-04, M. Orr")),
                new GapPart(
                    GapStatus.PARTLY_THERE,
                    TOW,
                    "prepared for towing",
                    BigInteger.valueOf(352),
                    "The factory auxiliary feed ends taped back at the rear cabin floor.",
                    List.of("measured 2026-03-04, M. Orr", "drawing")))),
        new NeedGap(
            "heater/main/2",
            "ground of the heater " + FORGED,
            List.of(
                new GapPart(
                    GapStatus.NOT_KNOWN,
                    Condition.always(),
                    "all vehicles " + LONG,
                    BigInteger.valueOf(1152),
                    "Nobody has looked.",
                    List.of()))));
  }

  private static List<WayLine> ways() {
    return List.of(
        new WayLine(
            "heater/main/1/slot/rear-block/9",
            "heater/main/1",
            WayKind.FACTORY_SLOT,
            "new lead from slot 9 of the rear fuse block",
            FED,
            BigInteger.valueOf(576),
            14.25,
            Undo.SPECIAL_TOOL,
            List.of("slot 9", "cavity 1"),
            Optional.empty(),
            List.of("A1")),
        new WayLine(
            "heater/main/1/splice/aux-feed",
            "heater/main/1",
            WayKind.SPLICE,
            "splice into the factory auxiliary feed",
            TOW,
            BigInteger.valueOf(352),
            18.5,
            Undo.NOT_AT_ALL,
            List.of("12.5 A of the auxiliary feed"),
            Optional.empty(),
            List.of("A2")),
        new WayLine(
            "heater/main/1/splice/restraint",
            "heater/main/1",
            WayKind.SPLICE,
            "splice into the pretensioner feed",
            Condition.always(),
            BigInteger.valueOf(1152),
            0,
            Undo.NOT_AT_ALL,
            List.of(),
            Optional.of("it belongs to the restraint system"),
            List.of()),
        new WayLine(
            "heater/main/2/ground/g4",
            "heater/main/2",
            WayKind.GROUND_STUD,
            "new lead to ground stud G4",
            Condition.always(),
            BigInteger.valueOf(1152),
            6,
            Undo.EASILY,
            List.of("one lug on G4"),
            Optional.empty(),
            List.of("B1")));
  }

  private static List<Case> cases() {
    return List.of(
        new Case(
            "A1",
            "A",
            "heater feed",
            "not prepared for towing",
            TOW.negate(),
            BigInteger.valueOf(800),
            0.694,
            Map.of("heater/main/1", "heater/main/1/slot/rear-block/9")),
        new Case(
            "A2",
            "A",
            "heater feed",
            "prepared for towing, rear section fed",
            TOW.and(FED),
            BigInteger.valueOf(176),
            0.153,
            Map.of("heater/main/1", "heater/main/1/splice/aux-feed")),
        new Case(
            "A3",
            "A",
            "heater feed",
            "prepared for towing, rear section dead",
            TOW.and(FED.negate()),
            BigInteger.valueOf(176),
            0.153,
            Map.of("heater/main/1", "heater/main/1/splice/aux-feed")),
        new Case(
            "B1",
            "B",
            "heater ground",
            "all vehicles",
            Condition.always(),
            BigInteger.valueOf(1152),
            1,
            Map.of("heater/main/2", "heater/main/2/ground/g4")));
  }

  private static Design design() {
    return new Design(
        List.of(
            lead(
                "L1",
                "H1",
                "heater supply",
                "A",
                "W-X25",
                2.5,
                "red",
                new LeadEnd(
                    "b-pillar",
                    List.of(
                        new EndUse(
                            new Landing.InSlot("rear-block", "9", "T-630"), List.of("A1"), true),
                        new EndUse(
                            new Landing.IntoCircuit("aux-feed", "rear", "SP-1"),
                            List.of("A2"),
                            false),
                        new EndUse(new Landing.Parked("b-pillar", "CAP-1"), List.of("A3"), false))),
                end(
                    "rear",
                    new Landing.InCavity("floor", "1", "T-280", Optional.empty(), true),
                    "A1",
                    "A2",
                    "A3"),
                12.5,
                15),
            lead(
                "L2",
                "H2",
                "heater ground",
                "B",
                "W-X25",
                2.5,
                "black",
                end(
                    "rear",
                    new Landing.InCavity("floor", "2", "T-280", Optional.empty(), false),
                    "B1"),
                end("b-pillar", new Landing.OnGround("g4", "R-M6"), "B1"),
                12.5,
                0),
            lead(
                "L3",
                "S1 <&\"'",
                "step signal " + FORGED,
                "B",
                "W-X10",
                1,
                "red/white",
                end("b-pillar", new Landing.InJoint("J1", "SP-1"), "B1"),
                end(
                    "step-well",
                    new Landing.InHousing("HS1", "1", "T-150", Optional.of("S-15")),
                    "B1"),
                0.4,
                5),
            lead(
                "L4",
                "=S2",
                "step spare",
                "B",
                "W-X10",
                1,
                "black",
                end("b-pillar", new Landing.InJoint("J1", "SP-1"), "B1"),
                new LeadEnd(
                    "rear",
                    List.of(
                        new EndUse(
                            new Landing.InHousing("HS2", "11", "T-280", Optional.empty()),
                            List.of("B1"),
                            true),
                        new EndUse(
                            new Landing.InHousing("HS2", "3", "T-280", Optional.empty()),
                            List.of("B2"),
                            false))),
                0.4,
                5)),
        List.of(new Joint("J1", "b-pillar", "SP-1", List.of("L3", "L4"))),
        List.of(
            new SuppliedHousing(
                "HS1",
                "H-STEP",
                "step-well",
                "the step plug of the heater",
                List.of("1"),
                List.of("2", "3", "4")),
            new SuppliedHousing(
                "HS2",
                "H-ROUND",
                "rear",
                "the socket of the heater",
                List.of("3", "11"),
                List.of("7"))),
        List.of(new FuseFit("rear-block", "9", 15, "F-15", List.of("L1"), List.of("A1"))),
        List.of(
            number("HEAT-07-1", "not prepared for towing", List.of("L1", "L2"), 0.694),
            number(
                "HEAT-07-2/" + "tow*prep: with a name that is far too long for a tab",
                "prepared for towing",
                List.of("L1", "L2", "L3", "L4"),
                0.306)));
  }

  private static PartNumber number(String id, String words, List<String> leads, double share) {
    return new PartNumber(
        id,
        words,
        leads,
        List.of("A1", "B1"),
        share,
        List.of(
            part("W-X25", "cross-linked wire 2.5 mm² " + FORGED, 5.4, "m", 5.83, "0.70", "4.08"),
            part("T-280", "blade terminal 2.8, tin", 2, "pc", 3, "0.18", "0.54"),
            part("R-M6", "ring M6", 1, "pc", 2, "0.22", "0.44")),
        14.6,
        new BigDecimal("5.06"),
        new BigDecimal("11.68"),
        "EUR");
  }

  private static PartLine part(
      String id,
      String name,
      double quantity,
      String unit,
      double buy,
      String price,
      String total) {
    return new PartLine(
        id, name, quantity, unit, buy, new BigDecimal(price), new BigDecimal(total), "EUR");
  }

  private static Lead lead(
      String id,
      String label,
      String what,
      String component,
      String wire,
      double areaMm2,
      String colour,
      LeadEnd a,
      LeadEnd b,
      double currentA,
      double fuseA) {
    return new Lead(
        id,
        label,
        what,
        component,
        List.of("heater/main/1"),
        wire,
        areaMm2,
        Colour.of(colour),
        a,
        b,
        List.of("r1", "r2"),
        2430,
        2590,
        2605,
        60,
        42.4,
        currentA,
        fuseA);
  }

  private static LeadEnd end(String place, Landing landing, String... cases) {
    return new LeadEnd(place, List.of(new EndUse(landing, List.of(cases), true)));
  }

  private static List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    checks.add(check("load/F9", "load of the fuse", "slot 9", 12.5, 15, "A", 0.1));
    checks.add(check("temp/L1", "conductor temperature", "lead H1", 118, 125, "°C", 0.1));
    for (int i = 1; i <= 34; i++) {
      checks.add(
          check("drop/x" + i, "voltage drop on the ground", "lead X" + i, 0.01 * i, 0.5, "V", 0.1));
    }
    return checks;
  }

  private static Check check(
      String id, String name, String on, double figure, double limit, String unit, double band) {
    return Check.of(
        id,
        name,
        on,
        List.of("A1", "A2"),
        figure,
        limit,
        true,
        unit,
        band,
        "shop rules, common practice",
        List.of(
            new TraceLine("current", "given", 12.5, "A", "equipment document"),
            new TraceLine("figure", "I·R(T), R at 80 °C", figure, unit, "IEC 60228")));
  }
}
