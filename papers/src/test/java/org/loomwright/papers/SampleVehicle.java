package org.loomwright.papers;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.colour.Colour;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.ServiceRecipe;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.SplicePolicy;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.View;

/** An invented vehicle and what goes into it. */
final class SampleVehicle {
  private SampleVehicle() {}

  static Vehicle vehicle() {
    return new Vehicle(
        "osprey",
        "Osprey 3 panel van",
        "7",
        Voltage.of("12 V"),
        Voltage.of("11.8 V"),
        Optional.empty(),
        "step-well",
        List.of("floor-panel"),
        Optional.of(TimeSpan.of("2 min")),
        Optional.empty(),
        SplicePolicy.CRIMP,
        List.of(
            trait(
                "tow-prep", "towing preparation", "prepared for towing", "not prepared for towing"),
            trait(
                "rear-feed", "feed of the rear section", "rear section fed", "rear section dead")),
        List.of(),
        List.of(
            new Opening(
                "b-trim",
                "the left B-pillar trim",
                "b-pillar",
                TimeSpan.of("6 min"),
                TimeSpan.of("5 min"),
                List.of(),
                List.of("trim wedge"),
                Optional.of("Belt pretensioner behind it."),
                true),
            new Opening(
                "floor-panel",
                "the floor panel of the step well",
                "step-well",
                TimeSpan.of("3 min"),
                TimeSpan.of("3 min"),
                List.of(),
                List.of("T30 driver"),
                Optional.empty(),
                false)),
        Optional.empty(),
        List.of(
            place("step-well", "left step well"),
            place("b-pillar", "left B-pillar foot"),
            place("rear", "rear cabin floor")),
        List.of(
            run("r1", "step-well", "b-pillar", "1450 mm"), run("r2", "b-pillar", "rear", "980 mm")),
        List.of(
            new Connector(
                "floor",
                "the rear floor connector",
                "H-FLOOR",
                Optional.empty(),
                "rear",
                List.of("floor-panel"),
                new View(Side.WIRE_SIDE, LatchDirection.DOWN),
                Optional.empty(),
                recipe(Undo.EASILY),
                false,
                false,
                List.of(),
                Optional.empty())),
        List.of(
            new FuseBlock(
                "rear-block",
                "the rear fuse block",
                "b-pillar",
                List.of("b-trim"),
                new View(Side.MATING_SIDE, LatchDirection.LEFT),
                Optional.of("H-FUSE"),
                recipe(Undo.SPECIAL_TOOL),
                List.of(
                    new Section(
                        "s2",
                        "section 2",
                        "30",
                        Condition.is("rear-feed", "yes"),
                        Optional.empty(),
                        Current.of("60 A"),
                        Current.of("20 A"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())),
                List.of(
                    new Slot(
                        "9",
                        "s2",
                        "blade",
                        Current.of("20 A"),
                        Condition.always(),
                        Optional.empty(),
                        "the upper one",
                        "the lower one",
                        "T-630",
                        Optional.empty())))),
        List.of(
            new GroundStud(
                "g4",
                "the ground stud G4",
                "b-pillar",
                List.of("b-trim"),
                "M6",
                2,
                4,
                Current.of("40 A"),
                Current.of("10 A"),
                Optional.empty(),
                false,
                "clean to bare metal, seal after",
                Optional.empty())),
        List.of(
            new Circuit(
                "aux-feed",
                "the factory auxiliary feed",
                CircuitKind.SUPPLY,
                Optional.of("30"),
                Spot.of("unit body-module"),
                List.of(Spot.of("loose rear")),
                WireSize.of("2.5 mm²"),
                Optional.of(Length.of("3 m")),
                Colour.of("red/yellow"),
                Optional.empty(),
                Condition.is("tow-prep", "yes"),
                Optional.empty(),
                Optional.of(Current.of("20 A")),
                Optional.empty(),
                Optional.of(Current.of("2 A")),
                List.of("rear"),
                false,
                Optional.empty())));
  }

  static Equipment equipment() {
    return new Equipment(
        "heater",
        "Brisk 2 rear-cabin heater",
        "1",
        List.of(
            new Plug(
                "main",
                "main plug",
                "H-FLOOR",
                Optional.empty(),
                List.of(
                    new Pin("1", "supply", Optional.empty()),
                    new Pin("2", "ground", Optional.empty()))),
            new Plug(
                "step",
                "step plug",
                "H-STEP",
                Optional.empty(),
                List.of(new Pin("1", "s", Optional.empty())))),
        List.of(),
        List.of());
  }

  private static Trait trait(String id, String name, String yes, String no) {
    return new Trait(
        id,
        name,
        List.of(
            new TraitValue("yes", yes, Optional.of(Percent.of("30 %"))),
            new TraitValue("no", no, Optional.of(Percent.of("70 %")))),
        new Tell(
            TellHow.LOOK,
            "b-pillar",
            List.of(),
            TimeSpan.of("1 min"),
            "Look.",
            Map.of("yes", "there", "no", "not there"),
            List.of()),
        Optional.empty());
  }

  private static Place place(String id, String name) {
    return new Place(id, name, Temperature.of("60 °C"), false, false, Optional.empty());
  }

  private static Run run(String id, String from, String to, String length) {
    return new Run(
        id,
        from,
        to,
        Length.of(length),
        Length.of("30 mm"),
        "the factory loom on the left sill",
        false,
        List.of("the grommet behind the step well"),
        List.of(),
        Optional.empty(),
        false,
        false,
        List.of(),
        List.of(),
        false,
        false,
        Optional.empty());
  }

  private static ServiceRecipe recipe(Undo undo) {
    return new ServiceRecipe(
        Optional.of("Slide the lock out."),
        "Push the terminal in until it clicks.",
        undo,
        Optional.of("Slide the lock in."),
        List.of());
  }
}
