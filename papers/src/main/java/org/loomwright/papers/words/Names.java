package org.loomwright.papers.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Names for people of the things a plan refers to by id. An id without a name stands for itself, so
 * that a paper never hides what it refers to.
 *
 * @param order kit with its documents
 * @param plan its plan
 */
public record Names(KitOrder order, Plan plan) {

  /** The name of a place. */
  public String place(String id) {
    return vehicle().place(id).map(it -> it.name()).orElse(id);
  }

  /** The name of an opening. */
  public String opening(String id) {
    return vehicle().opening(id).map(it -> it.name()).orElse(id);
  }

  /** The name of a connector, fuse block, stud or supplied housing. */
  public String owner(String id) {
    Vehicle vehicle = vehicle();
    return vehicle
        .connector(id)
        .map(it -> it.name())
        .or(() -> vehicle.fuseBlock(id).map(it -> it.name()))
        .or(() -> vehicle.ground(id).map(it -> it.name()))
        .or(() -> housing(id).map(it -> "housing for " + it.matesWith()))
        .orElse(id);
  }

  /** The housing the kit brings under this id. */
  public Optional<SuppliedHousing> housing(String id) {
    return plan.design().housings().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  /** The name of a part. */
  public String part(String id) {
    Parts parts = order.parts();
    return parts
        .wire(id)
        .map(it -> it.name())
        .or(() -> parts.housing(id).map(it -> it.name()))
        .or(() -> parts.terminal(id).map(it -> it.name()))
        .or(() -> named(parts.seals().stream().filter(it -> it.id().equals(id)), it -> it.name()))
        .or(() -> named(parts.rings().stream().filter(it -> it.id().equals(id)), it -> it.name()))
        .or(() -> named(parts.splices().stream().filter(it -> it.id().equals(id)), it -> it.name()))
        .or(() -> named(parts.fuses().stream().filter(it -> it.id().equals(id)), it -> it.name()))
        .or(
            () ->
                named(parts.coverings().stream().filter(it -> it.id().equals(id)), it -> it.name()))
        .or(
            () ->
                named(parts.sundries().stream().filter(it -> it.id().equals(id)), it -> it.name()))
        .orElse(id);
  }

  /** The printed label of a lead. */
  public String label(String leadId) {
    return plan.design().leads().stream()
        .filter(it -> it.id().equals(leadId))
        .map(Lead::label)
        .findFirst()
        .orElse(leadId);
  }

  /** The printed number of a step. */
  public String step(String stepId) {
    return plan.guide().step(stepId).map(it -> "step " + it.number()).orElse(stepId);
  }

  /** The need in words. */
  public String need(String needId) {
    return plan.gap().stream()
        .filter(it -> it.need().equals(needId))
        .map(it -> it.words())
        .findFirst()
        .orElse(needId);
  }

  /** Where a landing is, in words. */
  public String landing(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return owner(it.connector()) + ", cavity " + it.cavity();
    }
    if (landing instanceof Landing.InHousing it) {
      return owner(it.housing()) + ", cavity " + it.cavity();
    }
    if (landing instanceof Landing.InSlot it) {
      return owner(it.block()) + ", slot " + it.slot() + ", load blade";
    }
    if (landing instanceof Landing.OnGround it) {
      return owner(it.ground());
    }
    if (landing instanceof Landing.IntoCircuit it) {
      return "spliced into "
          + vehicle().circuit(it.circuit()).map(circuit -> circuit.name()).orElse(it.circuit());
    }
    if (landing instanceof Landing.InJoint it) {
      return "joint " + it.joint();
    }
    if (landing instanceof Landing.Parked it) {
      return "parked at " + place(it.place());
    }
    throw new IllegalStateException("a landing of an unknown kind: " + landing);
  }

  /** Where an end goes as made, with its place where the landing does not say it. */
  public String end(LeadEnd end) {
    return landing(end.asMade()) + "\n" + place(end.place());
  }

  /** What is done with an end in the cases in which it is not used as made; empty when none. */
  public String otherwise(String endName, LeadEnd end) {
    return end.uses().stream()
        .filter(use -> !use.asMade())
        .map(use -> "end " + endName + ", " + cases(use.cases()) + ": " + rework(end, use))
        .collect(Collectors.joining("\n"));
  }

  /** Cases in words, e.g. "case A1" or "cases A1, A2". */
  public static String cases(List<String> ids) {
    return ids.isEmpty()
        ? "no case"
        : (ids.size() == 1 ? "case " : "cases ") + String.join(", ", ids);
  }

  private String rework(LeadEnd end, EndUse use) {
    if (use.landing() instanceof Landing.Parked parked) {
      return "park at " + place(parked.place()) + ", cap " + parked.cap();
    }
    return sameTreatment(end.asMade(), use.landing())
        ? landing(use.landing())
        : "cut off, then " + landing(use.landing());
  }

  /** A terminal that fits both places is moved, not cut off. */
  private static boolean sameTreatment(Landing one, Landing other) {
    return !terminal(one).isEmpty() && terminal(one).equals(terminal(other));
  }

  private static String terminal(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return it.terminal();
    }
    if (landing instanceof Landing.InHousing it) {
      return it.terminal();
    }
    if (landing instanceof Landing.InSlot it) {
      return it.terminal();
    }
    return landing instanceof Landing.OnGround it ? it.ring() : "";
  }

  private Vehicle vehicle() {
    return order.vehicle();
  }

  private static <T> Optional<String> named(
      Stream<T> things, java.util.function.Function<T, String> name) {
    return things.findFirst().map(name);
  }
}
