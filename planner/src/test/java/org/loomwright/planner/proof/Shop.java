package org.loomwright.planner.proof;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Reading;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Resistance;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Hazard;
import org.loomwright.model.vehicle.Nearby;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.SplicePolicy;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A small invented van that gets a heater. The heater's supply goes to slot F1 of a section fed
 * only on some builds and taken on builds prepared for towing, otherwise to slot F2; its ground
 * goes to a stud, where the van has no ground wire at the connector yet. A test changes a field and
 * plans the same kit on what comes out.
 */
final class Shop {
  static final Landing F1 = new Landing.InSlot("rear", "F1", "T-blade");
  static final Landing F2 = new Landing.InSlot("rear", "F2", "T-blade");
  static final Landing STUD = new Landing.OnGround("sill", "R-M6");
  static final Landing.Parked PARKED = new Landing.Parked("floor", "cap");

  final Trait rearFeed =
      Docs.trait(
          "rear-feed",
          TellHow.MEASURE_LIVE,
          List.of(),
          "yes",
          "rear section B fed",
          "no",
          "rear section B dead");
  final Trait tow =
      Docs.trait(
          "tow",
          TellHow.LOOK,
          List.of(),
          "yes",
          "prepared for towing",
          "no",
          "not prepared for towing");
  final Trait floorGround =
      Docs.trait(
          "floor-ground",
          TellHow.LOOK,
          List.of("trim"),
          "yes",
          "a ground wire at the floor connector",
          "no",
          "no ground wire at the floor connector");
  final Trait bodyLength =
      Docs.trait("body", TellHow.LOOK, List.of(), "short", "short", "mid", "mid", "long", "long");

  List<Trait> traits = new ArrayList<>(List.of(bodyLength, rearFeed, tow, floorGround));
  List<Exclusion> rules =
      new ArrayList<>(
          List.of(
              new Exclusion(
                  Condition.of("body = short and tow = yes"), "never built", Optional.empty())));
  List<CavityFact> cavities = new ArrayList<>();
  List<Slot> slots =
      new ArrayList<>(List.of(Docs.slot("F1", "B", "always"), Docs.slot("F2", "A", "always")));
  List<Circuit> circuits =
      new ArrayList<>(
          List.of(
              Docs.circuit(
                  "tow", CircuitKind.SUPPLY, "30", "slot rear F1", "unit tow", "tow = yes"),
              Docs.circuit(
                  "floor-ground",
                  CircuitKind.GROUND,
                  "",
                  "ground sill",
                  "cavity floor 2",
                  "floor-ground = yes")));
  boolean wet;
  boolean engineBay;
  boolean underneath;
  boolean restraint;
  boolean highVoltage;
  boolean moving;
  Optional<String> runAmbient = Optional.empty();
  Optional<Hazard> near = Optional.empty();
  List<String> cautions =
      new ArrayList<>(
          List.of(
              "caution/general: Read all first.",
              "caution/battery: Battery off.",
              "caution/restraint: Airbag parts near. Mind the clips.",
              "caution/chafing: Nothing may rub.",
              "caution/for-good: Be sure first.",
              "caution/parked: Parked ends are dead.",
              "caution/fuses: Each feed is fused close to its source.",
              "caution/power-on: Look once more."));
  String sectionLimit = "40 A";
  boolean sensorStud;
  Need supply = Docs.need(NeedKind.SUPPLY, "30", "12 A");
  Need ground = Docs.need(NeedKind.GROUND, "", "12 A");
  Landing supplyPin = new Landing.InCavity("floor", "1", "T-floor", Optional.empty(), false);
  Landing groundPin = new Landing.InCavity("floor", "2", "T-floor", Optional.empty(), false);
  double fuseA = 20;
  String supplyWire = "W2.5";
  double lengthMm = 1500;
  String contact = "1 mΩ";
  String body = "1 mΩ";
  String blockPlace = "floor";
  String feedDrop = "3 %";
  String groundDrop = "2 %";

  Vehicle vehicle() {
    return new Vehicle(
        "van",
        "Van",
        "1",
        Voltage.of("12 V"),
        Voltage.of("11.8 V"),
        Optional.empty(),
        "floor",
        List.of(),
        Optional.empty(),
        Optional.empty(),
        SplicePolicy.CRIMP,
        traits,
        rules,
        List.of(
            new Opening(
                "trim",
                "the floor trim",
                "floor",
                TimeSpan.of("60 s"),
                TimeSpan.of("60 s"),
                List.of(),
                List.of(),
                Optional.of("Mind the clips."),
                true)),
        Optional.empty(),
        List.of(
            new Place(
                "floor",
                "the floor",
                Temperature.of("40 °C"),
                wet,
                engineBay,
                underneath,
                Optional.empty()),
            new Place("roof", "the roof", Temperature.of("85 °C"), false, false, Optional.empty())),
        List.of(
            run(
                "r1",
                "floor",
                runAmbient,
                moving,
                near.map(it -> List.of(new Nearby(it, Length.of("300 mm")))).orElse(List.of()),
                false,
                false),
            run("r2", "roof", Optional.empty(), false, List.of(), restraint, highVoltage)),
        List.of(
            new Connector(
                "floor",
                "the floor connector",
                "HS-floor",
                Optional.empty(),
                "floor",
                List.of("trim"),
                Docs.VIEW,
                Optional.empty(),
                Docs.recipe(Undo.EASILY),
                false,
                false,
                cavities,
                Optional.empty())),
        List.of(
            new FuseBlock(
                "rear",
                "the rear block",
                blockPlace,
                List.of(),
                Docs.VIEW,
                Optional.empty(),
                Docs.recipe(Undo.NOT_AT_ALL),
                List.of(
                    Docs.section("A", "section A", "30", "always", sectionLimit),
                    Docs.section("B", "section B", "30", "rear-feed = yes", sectionLimit)),
                slots)),
        List.of(
            new GroundStud(
                "sill",
                "the sill stud",
                "floor",
                List.of(),
                "M6",
                2,
                3,
                Current.of("50 A"),
                Current.of("5 A"),
                Optional.of(Resistance.of(body)),
                sensorStud,
                "bare it",
                Optional.empty())),
        circuits);
  }

  private static Run run(
      String id,
      String to,
      Optional<String> ambient,
      boolean moving,
      List<Nearby> near,
      boolean restraint,
      boolean highVoltage) {
    return new Run(
        id,
        "floor",
        to,
        Length.of("2000 mm"),
        Length.of("50 mm"),
        "the loom",
        false,
        List.of(),
        List.of(),
        ambient.map(Temperature::of),
        false,
        moving,
        near,
        List.of(),
        restraint,
        highVoltage,
        Optional.empty());
  }

  KitOrder order() {
    Plug plug =
        new Plug(
            "main",
            "main plug",
            "HS-heater",
            Optional.empty(),
            List.of(
                new Pin("1", "supply", Optional.of(supply)),
                new Pin("2", "ground", Optional.of(ground))));
    return new KitOrder(
        new Kit(
            "K1",
            "Heater kit",
            "A",
            "van",
            "rules",
            List.of("parts"),
            List.of(new Mount("heater", "main", Optional.of("floor"), Optional.empty())),
            List.of(),
            Map.of()),
        vehicle(),
        List.of(new Equipment("heater", "heater", "1", List.of(plug), List.of(), List.of())),
        Docs.parts(contact),
        Docs.rules(feedDrop, groundDrop));
  }

  static Case oneCase(String id, String component, String topic, String when) {
    return new Case(
        id,
        component,
        topic,
        "builds with " + when,
        Condition.of(when),
        BigInteger.ONE,
        0,
        Map.of());
  }

  List<Case> cases() {
    return List.of(
        oneCase("A1", "A", "heater feed", "rear-feed = yes and tow = no"),
        oneCase("A2", "A", "heater feed", "rear-feed = no or tow = yes"),
        oneCase("B1", "B", "heater ground", "floor-ground = no"),
        oneCase("B2", "B", "heater ground", "floor-ground = yes"));
  }

  Design design() {
    List<String> all = List.of("A1", "A2", "B1", "B2");
    return new Design(
        List.of(
            lead(
                "L1",
                "A",
                supplyWire,
                new LeadEnd(
                    "floor",
                    List.of(
                        new EndUse(F1, List.of("A1"), true), new EndUse(F2, List.of("A2"), true))),
                new LeadEnd("floor", List.of(new EndUse(supplyPin, List.of("A1", "A2"), true)))),
            lead(
                "L2",
                "B",
                "W2.5",
                new LeadEnd(
                    "floor",
                    List.of(
                        new EndUse(groundPin, List.of("B1"), true),
                        new EndUse(PARKED, List.of("B2"), false))),
                new LeadEnd(
                    "floor",
                    List.of(
                        new EndUse(STUD, List.of("B1"), true),
                        new EndUse(PARKED, List.of("B2"), false))))),
        List.of(),
        List.of(),
        List.of(
            new FuseFit("rear", "F1", fuseA, "FU", List.of("L1"), List.of("A1")),
            new FuseFit("rear", "F2", fuseA, "FU", List.of("L1"), List.of("A2"))),
        List.of(
            new PartNumber(
                "K1-1",
                "every build",
                List.of("L1", "L2"),
                all,
                1,
                List.of(),
                10,
                BigDecimal.ONE,
                BigDecimal.ONE,
                "EUR")));
  }

  private Lead lead(String id, String component, String wire, LeadEnd a, LeadEnd b) {
    double areaMm2 = wire.equals("W1") ? 1 : wire.equals("W4") ? 4 : 2.5;
    return new Lead(
        id,
        id,
        "a lead",
        component,
        List.of("heater/main/" + (id.equals("L1") ? "1" : "2")),
        wire,
        areaMm2,
        Colour.of("red"),
        a,
        b,
        List.of("r1"),
        1300,
        lengthMm,
        lengthMm,
        50,
        50,
        12,
        id.equals("L1") ? 20 : 0);
  }

  Guide guide() {
    Script script = new Script();
    for (String caution : cautions) {
      script.then(
          Script.caution(
              caution.substring(0, caution.indexOf(':')),
              caution.substring(caution.indexOf(':') + 2)));
    }
    return script
        .then(Script.ask(rearFeed))
        .then(Script.ask(tow))
        .then(Script.act("isolate", new Act.Isolate()))
        .then(Script.act("lay/L1", new Act.Lay("L1")))
        .then(Script.act("open/trim", new Act.Open("trim")))
        .then(Script.ask(floorGround))
        .branch(
            List.of("floor-ground = no", "floor-ground = yes"),
            List.of(
                s ->
                    s.then(Script.act("land/L2/a", new Act.Land("L2", "a", groundPin)))
                        .then(Script.act("land/L2/b", new Act.Land("L2", "b", STUD))),
                s ->
                    s.then(Script.act("park/L2/a", new Act.Park("L2", "a", PARKED)))
                        .then(Script.act("park/L2/b", new Act.Park("L2", "b", PARKED)))))
        .then(Script.act("land/L1/b", new Act.Land("L1", "b", supplyPin)))
        .branch(
            List.of("rear-feed = yes and tow = no", "not (rear-feed = yes and tow = no)"),
            List.of(s -> slot(s, F1, "F1"), s -> slot(s, F2, "F2")))
        .then(Script.act("plug-in", new Act.PlugIn("heater/main")))
        .then(Script.act("close/trim", new Act.Close("trim")))
        .then(Script.act("reconnect", new Act.Reconnect()))
        .then(Script.measure("measure/load", underLoad()))
        .then(Script.measure("measure/function", functions()))
        .guide();
  }

  List<Reading> underLoad() {
    double supplyV = 12;
    List<Reading> readings = new ArrayList<>();
    readings.add(
        Script.reading(
            "drop-feed/heater/main/1",
            atMost(Percent.of(feedDrop).fraction() * supplyV),
            "always"));
    readings.add(
        Script.reading(
            "drop-ground/heater/main/2",
            atMost(Percent.of(groundDrop).fraction() * supplyV),
            "floor-ground = no"));
    supply
        .minimumVoltage()
        .ifPresent(
            leastV ->
                readings.add(
                    Script.reading(
                        "voltage/heater/main/1",
                        Optional.of(new Band(Optional.of(leastV.volts()), Optional.empty(), "V")),
                        "always")));
    return readings;
  }

  static List<Reading> functions() {
    return List.of(
        Script.reading("works/heater/main/1", Optional.empty(), "always"),
        Script.reading("works-together", Optional.empty(), "always"));
  }

  private static Optional<Band> atMost(double mostV) {
    return Optional.of(new Band(Optional.empty(), Optional.of(mostV), "V"));
  }

  private Script slot(Script script, Landing landing, String slot) {
    return script
        .then(Script.act("land/L1/a/" + slot, new Act.Land("L1", "a", landing), Undo.NOT_AT_ALL))
        .then(Script.act("fuse/" + slot, new Act.FitFuse("rear", slot, fuseA)));
  }

  Proof prove(Guide guide) {
    return ProofMaker.prove(order(), cases(), design(), guide);
  }

  Proof prove() {
    return prove(guide());
  }
}
