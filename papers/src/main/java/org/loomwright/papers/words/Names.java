package org.loomwright.papers.words;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.equipment.Plug;
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
  /** Something like "rear-block": parts joined by hyphens, standing alone. */
  private static final Pattern ID =
      Pattern.compile("(?<![\\p{L}\\d/-])[a-z0-9]+(?:-[a-z0-9]+)+(?![\\p{L}\\d/-])");

  private static final Pattern SLOT_OF =
      Pattern.compile("\\bslot ([a-z0-9-]+) ([A-Z0-9]+)(?![\\p{L}\\d-])");

  private static final Pattern NAMED_STEP = Pattern.compile("^(step \\d+) \\([^)]*\\): (.*)$");

  private static final Pattern DECIMALS = Pattern.compile("(?<![\\d.])\\d+\\.\\d{7,}(?![\\d.])");

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
        .or(() -> plug(id).map(it -> "the housing for the " + it))
        .or(() -> housing(id).map(it -> "housing for " + it.matesWith()))
        .orElse(id);
  }

  /** The name of a plug of the equipment by "EQUIPMENT/PLUG". */
  public Optional<String> plug(String id) {
    return order.equipment().stream()
        .flatMap(it -> it.plugs().stream().filter(p -> id.equals(it.id() + "/" + p.id())))
        .map(Plug::name)
        .findFirst();
  }

  /** The name of the pin a need belongs to, which tells the needs of one kit apart. */
  public String pin(String needId) {
    return order.equipment().stream()
        .flatMap(
            it ->
                it.plugs().stream()
                    .flatMap(
                        plug ->
                            plug.pins().stream()
                                .filter(
                                    pin ->
                                        needId.equals(
                                            it.id() + "/" + plug.id() + "/" + pin.cavity()))))
        .map(pin -> pin.name())
        .findFirst()
        .orElseGet(() -> need(needId));
  }

  /** Words about a pin without the equipment's name before it, where they name only one pin. */
  public String brief(String words) {
    String bare =
        order.equipment().stream()
            .map(it -> it.name() + ", ")
            .filter(words::startsWith)
            .findFirst()
            .map(it -> words.substring(it.length()))
            .orElse(words);
    long alike =
        order.equipment().stream()
            .flatMap(it -> it.plugs().stream())
            .flatMap(it -> it.pins().stream())
            .filter(it -> bare.startsWith(it.name()))
            .count();
    return alike > 1 ? words : bare;
  }

  /**
   * Words of the plan as a customer reads them: ids that are no words of their own give way to
   * names, and long decimals are rounded.
   */
  public String prose(String words) {
    String slots =
        SLOT_OF
            .matcher(words)
            .replaceAll(
                found ->
                    Matcher.quoteReplacement(slot(found.group(1), found.group(2), found.group())));
    String named =
        ID.matcher(slots)
            .replaceAll(found -> Matcher.quoteReplacement(place(owner(found.group()))));
    return DECIMALS
        .matcher(named)
        .replaceAll(found -> Matcher.quoteReplacement(Figures.figure(parse(found.group()), "")));
  }

  private String slot(String block, String slot, String otherwise) {
    return vehicle()
        .fuseBlock(block)
        .map(it -> "slot " + slot + " of " + it.name())
        .orElse(otherwise);
  }

  private static double parse(String digits) {
    return Double.parseDouble(digits);
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
                named(parts.grommets().stream().filter(it -> it.id().equals(id)), it -> it.name()))
        .or(() -> named(parts.clips().stream().filter(it -> it.id().equals(id)), it -> it.name()))
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

  /** The printed number of a step; of a step the proof names with number, id and title, no id. */
  public String step(String stepId) {
    return plan.guide()
        .step(stepId)
        .map(it -> "step " + it.number())
        .orElseGet(() -> NAMED_STEP.matcher(stepId).replaceFirst("$1 ($2)"));
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

  /** What is done with an end in the cases in which it lands elsewhere; empty when none. */
  public String otherwise(String endName, LeadEnd end) {
    String usual = landing(end.asMade());
    return end.uses().stream()
        .filter(use -> !use.asMade() || !landing(use.landing()).equals(usual))
        .map(use -> "end " + endName + ", " + cases(use.cases()) + ": " + rework(end, use))
        .collect(Collectors.joining("\n"));
  }

  /** Cases in words, e.g. "case A1" or "cases A1, A2". */
  public static String cases(List<String> ids) {
    return ids.isEmpty()
        ? "no case"
        : (ids.size() == 1 ? "case " : "cases ")
            + ids.stream()
                .sorted(Comparator.comparing(String::length).thenComparing(it -> it))
                .collect(Collectors.joining(", "));
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
