package org.loomwright.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.design.Shown;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.View;

/** A guide with two questions and branches that meet again. */
final class SampleGuide {
  private static final Condition TOW = Condition.is("tow-prep", "yes");
  private static final Condition FED = Condition.is("rear-feed", "yes");

  private SampleGuide() {}

  static Guide guide() {
    List<Step> steps = new ArrayList<>();
    add(
        steps,
        "warn",
        StepKind.CAUTION,
        "b-pillar",
        "Belt pretensioner within reach",
        "Isolate the battery and wait 2 min before work near its yellow wiring.",
        Undo.EASILY);
    add(
        steps,
        "prepare",
        StepKind.PREPARE,
        "rear",
        "Lay out the kit",
        "Lay the leads out and compare the labels with the list.",
        Undo.EASILY);
    ask(
        steps,
        "ask-tow",
        "Is the vehicle prepared for towing?",
        TellHow.ASK_OWNER,
        "tow-prep",
        new Answer(
            "yes", "prepared for towing", "a coupling or a code on the order", Optional.empty()),
        new Answer("no", "not prepared for towing", "no coupling, no code", Optional.empty()));
    ask(
        steps,
        "ask-feed",
        "Measure at slot 9, upper blade, against ground",
        TellHow.MEASURE_LIVE,
        "rear-feed",
        new Answer(
            "yes",
            "rear section fed",
            "lamp bright",
            Optional.of(new Band(Optional.of(11.5), Optional.empty(), "V"))),
        new Answer(
            "no",
            "rear section dead",
            "1 V or less",
            Optional.of(new Band(Optional.empty(), Optional.of(1.0), "V"))));
    act(steps, "isolate", "step-well", "Isolate the battery", new Act.Isolate(), Undo.EASILY);
    act(
        steps,
        "open",
        "b-pillar",
        "Take off the left B-pillar trim",
        new Act.Open("b-trim"),
        Undo.EASILY);
    steps.add(
        new Step(
            "land",
            7,
            StepKind.ACT,
            "b-pillar",
            "Put end A of lead H1 into slot 9, load blade",
            "Push the terminal in until it clicks. The load blade is the lower one.",
            "On the fed blade the lead would have no fuse.",
            List.of("b-trim"),
            Optional.of(false),
            Optional.empty(),
            Optional.of(new Act.Land("L1", "a", new Landing.InSlot("rear-block", "9", "T-630"))),
            Undo.SPECIAL_TOOL,
            List.of("heater/main/1"),
            List.of("mirror"),
            Optional.of(
                new Shown(
                    "rear-block",
                    "H-FUSE",
                    List.of("9"),
                    new View(Side.MATING_SIDE, LatchDirection.LEFT))),
            List.of(),
            3));
    add(
        steps,
        "confirm",
        StepKind.CONFIRM,
        "b-pillar",
        "Pull on lead H1 at slot 9",
        "It does not come out.",
        Undo.EASILY);
    act(
        steps,
        "splice",
        "rear",
        "Cut off end A of lead H1 and splice it into the auxiliary feed",
        new Act.Change("L1", "a", new Landing.IntoCircuit("aux-feed", "rear", "SP-1")),
        Undo.NOT_AT_ALL);
    act(
        steps,
        "park",
        "b-pillar",
        "Cap, label and tape back end A of lead H1",
        new Act.Park("L1", "a", new Landing.Parked("b-pillar", "CAP-1")),
        Undo.EASILY);
    steps.add(
        new Step(
            "floor",
            11,
            StepKind.ACT,
            "rear",
            "Put end B of lead H1 into cavity 1 of the rear floor connector",
            "Pull the seal plug first. Slide the lock out, push the terminal in until it clicks,"
                + " slide the lock in.",
            "",
            List.of("floor-panel"),
            Optional.of(false),
            Optional.empty(),
            Optional.of(
                new Act.Land(
                    "L1",
                    "b",
                    new Landing.InCavity("floor", "1", "T-280", Optional.empty(), true))),
            Undo.EASILY,
            List.of("heater/main/1"),
            List.of("pick"),
            Optional.of(
                new Shown(
                    "floor",
                    "H-FLOOR",
                    List.of("1"),
                    new View(Side.WIRE_SIDE, LatchDirection.DOWN))),
            List.of(),
            4));
    act(steps, "connect", "step-well", "Connect the battery", new Act.Reconnect(), Undo.EASILY);
    steps.add(
        new Step(
            "test",
            steps.size() + 1,
            StepKind.MEASURE,
            "rear",
            "Measure the supply at the heater plug with the heater on",
            "Cavity 1 against cavity 2.",
            "",
            List.of(),
            Optional.of(true),
            Optional.empty(),
            Optional.empty(),
            Undo.EASILY,
            List.of(),
            List.of(),
            Optional.empty(),
            readings(),
            2));

    return new Guide(
        "warn",
        steps,
        List.of(
            edge("warn", "prepare"),
            edge("prepare", "ask-tow"),
            new Edge("ask-tow", "ask-feed", TOW, "prepared for towing"),
            new Edge("ask-tow", "isolate", TOW.negate(), "not prepared for towing"),
            edge("ask-feed", "isolate"),
            edge("isolate", "open"),
            new Edge("open", "land", TOW.negate(), "not prepared for towing"),
            new Edge("open", "splice", TOW.and(FED), "prepared for towing, rear section fed"),
            new Edge(
                "open", "park", TOW.and(FED.negate()), "prepared for towing, rear section dead"),
            edge("land", "confirm"),
            edge("confirm", "floor"),
            edge("splice", "floor"),
            edge("park", "floor"),
            edge("floor", "connect"),
            edge("connect", "test")),
        List.of("test"),
        List.of("meter", "mirror", "pick", "trim wedge"),
        96.4,
        1.3);
  }

  private static List<Reading> readings() {
    return List.of(
        new Reading(
            "voltage/heater/main/1",
            "voltage at the heater plug",
            ReadingKind.NUMBER,
            Optional.of("V"),
            Optional.of(new Band(Optional.of(11.2), Optional.empty(), "V")),
            Optional.empty(),
            Optional.empty(),
            TOW,
            "in case A1",
            "Look at the ground.",
            "the heater's paper"),
        new Reading(
            "works/heater/main/1",
            "the heater works",
            ReadingKind.WORKS,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Condition.always(),
            "",
            "Look at its fuse.",
            ""));
  }

  private static Edge edge(String from, String to) {
    return new Edge(from, to, Condition.always(), "");
  }

  private static void add(
      List<Step> steps,
      String id,
      StepKind kind,
      String place,
      String title,
      String text,
      Undo undo) {
    steps.add(
        new Step(
            id,
            steps.size() + 1,
            kind,
            place,
            title,
            text,
            "",
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            undo,
            List.of(),
            List.of(),
            Optional.empty(),
            List.of(),
            2));
  }

  private static void act(
      List<Step> steps, String id, String place, String title, Act act, Undo undo) {
    steps.add(
        new Step(
            id,
            steps.size() + 1,
            StepKind.ACT,
            place,
            title,
            title + " as its maker says.",
            "",
            List.of(),
            Optional.of(false),
            Optional.empty(),
            Optional.of(act),
            undo,
            List.of(),
            List.of(),
            Optional.empty(),
            List.of(),
            5));
  }

  private static void ask(
      List<Step> steps, String id, String title, TellHow how, String trait, Answer... answers) {
    steps.add(
        new Step(
            id,
            steps.size() + 1,
            StepKind.ASK,
            "b-pillar",
            title,
            "",
            "",
            List.of(),
            how == TellHow.MEASURE_LIVE ? Optional.of(true) : Optional.empty(),
            Optional.of(new Ask(trait, how, List.of(answers))),
            Optional.empty(),
            Undo.EASILY,
            List.of(),
            how.isReading() ? List.of("meter") : List.of(),
            Optional.empty(),
            List.of(),
            3));
  }
}
