package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.SpliceMethod;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.SplicePolicy;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Undo;

/** What must be so on a build for an end of a lead to be landed. */
final class LandingRules {
  private final Subject subject;

  LandingRules(Subject subject) {
    this.subject = subject;
  }

  /**
   * What must be so.
   *
   * @param pulled whether a seal plug was pulled out of the cavity before
   */
  List<Must> of(Lead lead, Landing landing, boolean pulled) {
    if (landing instanceof Landing.InCavity it) {
      return subject
          .vehicle()
          .connector(it.connector())
          .map(connector -> inCavity(it, connector, pulled))
          .orElseGet(() -> never("the vehicle has no connector '" + it.connector() + "'"));
    }
    if (landing instanceof Landing.InSlot it) {
      return inSlot(it);
    }
    if (landing instanceof Landing.IntoCircuit it) {
      return subject
          .vehicle()
          .circuit(it.circuit())
          .map(circuit -> intoCircuit(it, circuit))
          .orElseGet(() -> never("the vehicle has no circuit '" + it.circuit() + "'"));
    }
    if (landing instanceof Landing.OnGround it) {
      return subject
          .vehicle()
          .ground(it.ground())
          .map(stud -> onGround(it, stud))
          .orElseGet(() -> never("the vehicle has no ground '" + it.ground() + "'"));
    }
    if (landing instanceof Landing.InHousing it) {
      return List.of(
          must(
              subject.housing(it.housing()).isPresent(),
              "the kit has no housing '" + it.housing() + "'"));
    }
    if (landing instanceof Landing.InJoint it) {
      return List.of(
          must(
              subject
                  .joint(it.joint())
                  .filter(joint -> joint.leads().contains(lead.id()))
                  .isPresent(),
              "the kit has no joint '" + it.joint() + "' with lead " + lead.id() + " in it"));
    }
    return List.of();
  }

  /** Builds on which the seal plug of the cavity has been pulled. */
  Region pulled(Landing landing, Progress progress) {
    return landing instanceof Landing.InCavity it
        ? progress.done(new Act.PullPlug(it.connector(), it.cavity()))
        : subject.facts().regions().none();
  }

  /** How a landing can be taken back, by what the vehicle says of the place. */
  Undo undo(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return subject
          .vehicle()
          .connector(it.connector())
          .map(connector -> connector.recipe().fillUndo())
          .orElse(Undo.NOT_AT_ALL);
    }
    if (landing instanceof Landing.InSlot it) {
      return subject
          .vehicle()
          .fuseBlock(it.block())
          .map(block -> block.recipe().fillUndo())
          .orElse(Undo.NOT_AT_ALL);
    }
    // A factory wire that was cut or pierced stays so (common practice).
    return landing instanceof Landing.IntoCircuit ? Undo.NOT_AT_ALL : Undo.EASILY;
  }

  private List<Must> inCavity(Landing.InCavity landing, Connector connector, boolean pulled) {
    String at = "cavity " + landing.cavity() + " of " + connector.name();
    List<Must> all = new ArrayList<>();
    all.add(
        must(!connector.restraint(), connector.name() + " belongs to airbags or pretensioners"));
    all.add(must(!connector.highVoltage(), connector.name() + " is high voltage"));
    all.add(new Must(subject.facts().present(connector), connector.name() + " is not there"));
    for (Circuit circuit :
        subject.facts().endingAt(new Spot.OfCavity(connector.id(), landing.cavity()))) {
      all.add(
          new Must(
              subject.facts().present(circuit).not(),
              at + " is wired already, by " + circuit.name()));
    }
    all.add(
        new Must(subject.facts().blocked(connector, landing.cavity()).not(), at + " is blocked"));
    Region plugged = subject.facts().plugged(connector, landing.cavity());
    all.add(
        pulled
            ? new Must(plugged, at + " has no seal plug to pull")
            : new Must(plugged.not(), at + " still has its seal plug"));
    all.add(
        must(
            // A plug that only some builds of a case have is pulled on those alone.
            landing.pullPlug() || !pulled,
            "the landing and the steps before it differ on a seal plug in " + at));
    all.add(fits(landing, connector, at));
    return all;
  }

  private Must fits(Landing.InCavity landing, Connector connector, String at) {
    Optional<Cavity> cavity =
        subject
            .order()
            .parts()
            .housing(connector.housing())
            .flatMap((Housing housing) -> housing.cavity(landing.cavity()));
    if (cavity.isEmpty()) {
      return must(false, "housing '" + connector.housing() + "' has no such place as " + at);
    }
    return must(
        cavity.get().terminals().contains(landing.terminal()),
        "terminal '" + landing.terminal() + "' does not fit " + at);
  }

  private List<Must> inSlot(Landing.InSlot landing) {
    Optional<FuseBlock> block = subject.vehicle().fuseBlock(landing.block());
    Optional<Slot> slot = block.flatMap(it -> it.slot(landing.slot()));
    if (block.isEmpty() || slot.isEmpty()) {
      return never("the vehicle has no slot " + landing.block() + " " + landing.slot());
    }
    String at = "slot " + slot.get().id() + " of " + block.get().name();
    String section =
        block.get().section(slot.get().section()).map(it -> it.name()).orElse("its section");
    List<Must> all = new ArrayList<>();
    all.add(
        new Must(
            subject.facts().fed(block.get(), slot.get()),
            section + ", which feeds " + at + ", is dead"));
    all.add(new Must(subject.facts().metal(slot.get()), at + " has no metal fitted"));
    for (Circuit circuit :
        subject.facts().endingAt(new Spot.OfSlot(block.get().id(), slot.get().id()))) {
      all.add(
          new Must(subject.facts().present(circuit).not(), at + " is taken by " + circuit.name()));
    }
    all.add(
        must(
            landing.terminal().equals(slot.get().terminal()),
            "terminal '"
                + landing.terminal()
                + "' does not fit "
                + at
                + ", which takes '"
                + slot.get().terminal()
                + "'"));
    return all;
  }

  private List<Must> intoCircuit(Landing.IntoCircuit landing, Circuit circuit) {
    SplicePolicy policy = subject.vehicle().splicePolicy();
    Optional<Splice> splice =
        subject.order().parts().splices().stream()
            .filter(it -> it.id().equals(landing.splice()))
            .findFirst();
    List<Must> all = new ArrayList<>();
    all.add(new Must(subject.facts().present(circuit), circuit.name() + " is not there"));
    all.add(must(!circuit.restraint(), circuit.name() + " belongs to airbags or pretensioners"));
    all.add(
        must(
            circuit.reachedAt().contains(landing.place()),
            circuit.name() + " can't be reached at '" + landing.place() + "'"));
    all.add(must(policy != SplicePolicy.NONE, "the maker allows no splice into its wires"));
    all.add(must(splice.isPresent(), "the parts have no splice '" + landing.splice() + "'"));
    all.add(
        must(
            policy != SplicePolicy.CRIMP
                || splice.filter(it -> it.method() == SpliceMethod.CRIMP).isPresent(),
            "the maker allows crimped splices only"));
    return all;
  }

  private List<Must> onGround(Landing.OnGround landing, GroundStud stud) {
    Optional<Ring> ring =
        subject.order().parts().rings().stream()
            .filter(it -> it.id().equals(landing.ring()))
            .findFirst();
    return List.of(
        must(!stud.sensor(), stud.name() + " serves sensors and takes no added load"),
        must(
            ring.filter(it -> it.thread().equals(stud.thread())).isPresent(),
            "ring '"
                + landing.ring()
                + "' does not fit the "
                + stud.thread()
                + " of "
                + stud.name()));
  }

  private Must must(boolean so, String otherwise) {
    return new Must(
        so ? subject.facts().regions().all() : subject.facts().regions().none(), otherwise);
  }

  private List<Must> never(String otherwise) {
    return List.of(must(false, otherwise));
  }
}
