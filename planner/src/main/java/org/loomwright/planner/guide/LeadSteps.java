package org.loomwright.planner.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.ServiceRecipe;
import org.loomwright.model.vehicle.SplicePolicy;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.ways.Reach;

/** The steps that lay, land, change and park the leads. */
final class LeadSteps {
  private final KitOrder order;
  private final Facts facts;
  private final CaseRegions regions;
  private final Names names;
  private final LayWords laying;
  private final Rules rules;

  LeadSteps(KitOrder order, Facts facts, CaseRegions regions, Names names, LayWords laying) {
    this.order = order;
    this.facts = facts;
    this.regions = regions;
    this.names = names;
    this.laying = laying;
    this.rules = order.rules();
  }

  /** Lays every lead that the build uses. */
  Draft lay(Lead lead) {
    return new Draft("lay/" + lead.id(), StepKind.ACT, lead.a().place(), regions.using(lead))
        .say("Lay lead " + lead.label(), laying.of(lead))
        .live(false)
        .does(new Act.Lay(lead.id()), Undo.EASILY)
        .relies(lead.needs())
        .takes(2);
  }

  /** All steps at one end of a lead, each act with its confirmation. */
  List<Draft> end(Lead lead, boolean a) {
    LeadEnd end = a ? lead.a() : lead.b();
    List<Draft> drafts = new ArrayList<>();
    for (EndUse use : end.uses()) {
      if (use.landing() instanceof Landing.Parked parked) {
        drafts.addAll(use.asMade() ? loose(lead, a, parked, use) : park(lead, a, parked, use));
      } else {
        drafts.addAll(land(lead, a, use));
      }
    }
    return drafts;
  }

  private List<Draft> land(Lead lead, boolean a, EndUse use) {
    Landing landing = use.landing();
    LeadEnd end = a ? lead.a() : lead.b();
    Region on = regions.of(use.cases());
    String side = a ? "a" : "b";
    if (use.asMade()
        && landing instanceof Landing.InHousing in
        && regions.filledOnBench(lead, end, in)) {
      // Nothing to do in the vehicle.
      return List.of();
    }
    if (use.asMade() && landing instanceof Landing.InJoint) {
      return List.of();
    }
    List<Draft> drafts = new ArrayList<>();
    List<String> openings = openings(landing, end.place());
    if (landing instanceof Landing.InCavity in && in.pullPlug()) {
      pull(lead, in, on, openings).ifPresent(drafts::add);
    }
    String key = lead.id() + side + "/" + place(landing);
    boolean bare = landing instanceof Landing.IntoCircuit;
    boolean change = !use.asMade();
    // What is cut off is not put on again.
    Undo undo = change ? Undo.NOT_AT_ALL : undo(landing);
    String title =
        (bare ? "Splice lead " : change ? "Change and land lead " : "Land lead ")
            + lead.label()
            + (bare ? " into " : landing instanceof Landing.OnGround ? " on " : " in ")
            + names.spot(landing);
    Draft draft =
        new Draft("land/" + key, StepKind.ACT, end.place(), on)
            .say(title, text(lead, end, landing, change))
            .because(because(undo, landing, change))
            .behind(openings)
            .live(false)
            .does(
                change
                    ? new Act.Change(lead.id(), side, landing)
                    : new Act.Land(lead.id(), side, landing),
                undo)
            .relies(lead.needs())
            .tools(names.recipe(landing).map(ServiceRecipe::tools).orElse(List.of()))
            .shows(names.face(landing))
            .takes(minutes(landing, change));
    if (change || bare) {
      names.tool(landing).ifPresent(tool -> draft.tools(List.of(tool)));
    }
    drafts.add(draft);
    drafts.add(
        new Draft("confirm/" + key, StepKind.CONFIRM, end.place(), on)
            .say(confirmTitle(landing), confirm(landing))
            .behind(openings)
            .relies(lead.needs())
            .takes(0.5));
    return drafts;
  }

  private Optional<Draft> pull(Lead lead, Landing.InCavity in, Region on, List<String> openings) {
    Connector connector = order.vehicle().connector(in.connector()).orElseThrow();
    Region plugged = on.and(facts.plugged(connector, in.cavity()));
    if (plugged.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Draft(
                "pull/" + in.connector() + "/" + in.cavity() + "/" + lead.id(),
                StepKind.ACT,
                connector.place(),
                plugged)
            .say(
                "Pull the seal plug out of " + names.spot(in),
                "Pull it straight out from the wire side. Keep it: the cavity needs it again if the"
                    + " lead ever comes out.")
            .behind(openings)
            .live(false)
            .does(new Act.PullPlug(in.connector(), in.cavity()), Undo.EASILY)
            .relies(lead.needs())
            .shows(names.face(in))
            .takes(0.5));
  }

  private String text(Lead lead, LeadEnd end, Landing landing, boolean change) {
    StringBuilder text = new StringBuilder();
    if (change) {
      text.append(
          end.asMade() instanceof Landing.InJoint
              ? "Cut the lead off at the kit's joint. "
              : "Cut off the terminal it was made with. ");
    }
    if (landing instanceof Landing.IntoCircuit into) {
      text.append("Slide the sleeve on first. ")
          .append(
              order.vehicle().splicePolicy() == SplicePolicy.CRIMP ? "Crimp" : "Crimp or solder")
          .append(" the lead into ")
          .append(names.circuit(into.circuit()))
          .append(" (")
          .append(
              order
                  .vehicle()
                  .circuit(into.circuit())
                  .map(it -> it.colour().text() + ", " + it.wire().text())
                  .orElse(""))
          .append("), at least ")
          .append(Names.number(rules.spliceSpacing().value().mm()))
          .append(" mm from any other splice, branch or connector. Shrink the sleeve until")
          .append(" adhesive shows at both ends.");
      return text.toString();
    }
    if (landing instanceof Landing.OnGround on) {
      return text.append(order.vehicle().ground(on.ground()).map(GroundStud::prepare).orElse(""))
          .toString();
    }
    if (landing instanceof Landing.InHousing) {
      return text.append(
              "Push the terminal in from the wire side until it clicks, then pull on the")
          .append(" wire.")
          .toString();
    }
    names
        .recipe(landing)
        .ifPresent(
            recipe -> {
              recipe.unlock().ifPresent(unlock -> text.append(unlock).append(' '));
              text.append(recipe.fill()).append(' ');
              recipe.lock().ifPresent(lock -> text.append(lock).append(' '));
            });
    if (landing instanceof Landing.InSlot in) {
      names
          .slot(in)
          .ifPresent(
              slot ->
                  text.append("Use ")
                      .append(slot.loadBlade())
                      .append(", never ")
                      .append(slot.fedBlade())
                      .append(". Leave the fuse out for now."));
    }
    return text.toString().strip();
  }

  private static String because(Undo undo, Landing landing, boolean change) {
    if (landing instanceof Landing.IntoCircuit) {
      return "A cut into a factory wire stays: make sure this is the right wire before you cut.";
    }
    if (change) {
      return "What is cut off can't be put on again: make sure this is the right lead and the right"
          + " end.";
    }
    return switch (undo) {
      case EASILY -> "";
      case SPECIAL_TOOL ->
          "This terminal does not come out again without a special tool: look twice before you push.";
      case NOT_AT_ALL -> "This can't be undone: look twice before you push.";
    };
  }

  private static String confirmTitle(Landing landing) {
    return landing instanceof Landing.OnGround
        ? "Check the ring"
        : landing instanceof Landing.IntoCircuit ? "Check the splice" : "Click, tug, look";
  }

  private static String confirm(Landing landing) {
    if (landing instanceof Landing.OnGround) {
      return "The ring lies flat on bright metal and does not turn by hand.";
    }
    if (landing instanceof Landing.IntoCircuit) {
      return "A firm tug does not move the wire; no strand stands out; adhesive shows at both ends.";
    }
    return "You heard or felt the click, a light tug does not move the wire, and the lock closes"
        + " flush.";
  }

  private List<Draft> loose(Lead lead, boolean a, Landing.Parked parked, EndUse use) {
    String side = a ? "a" : "b";
    return List.of(
        new Draft(
                "loose/" + lead.id() + side,
                StepKind.ACT,
                (a ? lead.a() : lead.b()).place(),
                regions.of(use.cases()))
            .say(
                "Tape back lead " + lead.label() + " at " + names.place(parked.place()),
                "Its end is capped on the bench and stays so until it is needed. Keep its label on"
                    + " and tape it back to the loom where it can be found again.")
            .because("An open end can touch metal or draw water.")
            .live(false)
            .does(new Act.Park(lead.id(), side, parked), Undo.EASILY)
            .relies(lead.needs())
            .takes(rules.parkTime().value().seconds() / 60));
  }

  private List<Draft> park(Lead lead, boolean a, Landing.Parked parked, EndUse use) {
    LeadEnd end = a ? lead.a() : lead.b();
    Region on = regions.parking(lead, use.cases());
    boolean liveJoint = end.asMade() instanceof Landing.InJoint in && regions.jointUsed(in, use);
    String side = a ? "a" : "b";
    return List.of(
        new Draft(
                "park/" + lead.id() + side + "/" + String.join("+", use.cases()),
                StepKind.ACT,
                end.place(),
                on)
            .say(
                "Park lead " + lead.label() + " at " + names.place(parked.place()),
                (liveJoint ? "Cut it off close to the kit's joint and seal both cut ends. " : "")
                    + (end.asMade() instanceof Landing.Parked
                        ? "Leave the end cap over it,"
                        : "Put an end cap over it,")
                    + " keep its label on, and tape it back to the loom. It"
                    + " stays dead and is there if the vehicle is changed later.")
            .because(
                (liveJoint ? "What is cut stays cut: make sure this is the right lead. " : "")
                    + "An open end can touch metal or draw water.")
            .live(false)
            .does(new Act.Park(lead.id(), side, parked), liveJoint ? Undo.NOT_AT_ALL : Undo.EASILY)
            .relies(lead.needs())
            .takes(rules.parkTime().value().seconds() / 60));
  }

  private double minutes(Landing landing, boolean change) {
    double minutes = change ? rules.reworkTime().value().seconds() / 60 : 0;
    return minutes
        + (landing instanceof Landing.IntoCircuit
                    ? rules.spliceTime().value()
                    : rules.insertTime().value())
                .seconds()
            / 60;
  }

  private List<String> openings(Landing landing, String place) {
    return Reach.openings(order.vehicle(), touch(landing, place));
  }

  /** What a landing at a place touches. */
  static Touch touch(Landing landing, String place) {
    if (landing instanceof Landing.InCavity in) {
      return new Touch.AtCavity(in.connector(), in.cavity(), place);
    } else if (landing instanceof Landing.InSlot in) {
      return new Touch.AtSlot(in.block(), in.slot(), place);
    } else if (landing instanceof Landing.OnGround on) {
      return new Touch.AtGround(on.ground(), place);
    }
    return landing instanceof Landing.IntoCircuit into
        ? new Touch.AtCircuit(into.circuit(), into.place())
        : new Touch.AtJoint("", place);
  }

  private Undo undo(Landing landing) {
    if (landing instanceof Landing.InCavity in) {
      return order
          .vehicle()
          .connector(in.connector())
          .map(it -> it.recipe().fillUndo())
          .orElse(Undo.NOT_AT_ALL);
    } else if (landing instanceof Landing.InSlot in) {
      return order
          .vehicle()
          .fuseBlock(in.block())
          .map((FuseBlock it) -> it.recipe().fillUndo())
          .orElse(Undo.NOT_AT_ALL);
    }
    return landing instanceof Landing.IntoCircuit ? Undo.NOT_AT_ALL : Undo.EASILY;
  }

  private static String place(Landing landing) {
    if (landing instanceof Landing.InCavity in) {
      return in.connector() + "/" + in.cavity();
    } else if (landing instanceof Landing.InSlot in) {
      return in.block() + "/" + in.slot();
    } else if (landing instanceof Landing.OnGround on) {
      return on.ground();
    } else if (landing instanceof Landing.IntoCircuit into) {
      return into.circuit() + "/" + into.place();
    } else if (landing instanceof Landing.InHousing in) {
      return in.housing() + "/" + in.cavity();
    }
    return landing instanceof Landing.InJoint in ? in.joint() : "";
  }
}
