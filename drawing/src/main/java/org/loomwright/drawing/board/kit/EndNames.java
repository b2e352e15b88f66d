package org.loomwright.drawing.board.kit;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.design.Tail;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Vehicle;

/** What ends, places and joints are called on the board; no name stands for two things. */
final class EndNames {
  /** Labels of a joint's leads are written out up to this many letters; ids beyond. */
  private static final int MOST_LETTERS = 48;

  private final Plan plan;
  private final Vehicle vehicle;
  private final Set<String> taken = new LinkedHashSet<>();
  private final Map<String, String> places = new LinkedHashMap<>();
  private final Map<String, String> tails = new LinkedHashMap<>();
  private final Map<String, String> joints = new LinkedHashMap<>();

  private EndNames(Plan plan, KitOrder order) {
    this.plan = plan;
    this.vehicle = order.vehicle();
  }

  static EndNames of(Plan plan, KitOrder order) {
    EndNames names = new EndNames(plan, order);
    for (Joint joint : plan.design().joints()) {
      names.joints.put(joint.id(), names.unique(names.jointWords(joint), joint.id()));
    }
    for (Tail tail : plan.harness().tails()) {
      names.tails.put(tail.id(), names.unique(names.subject(tail), tail.id()));
    }
    plan.harness().bundles().stream()
        .flatMap(bundle -> java.util.stream.Stream.of(bundle.from(), bundle.to()))
        .forEach(names::placeNode);
    plan.harness().tails().forEach(tail -> names.placeNode(tail.place()));
    plan.harness().joints().forEach(joint -> names.placeNode(joint.place()));
    return names;
  }

  private void placeNode(String place) {
    if (!places.containsKey(place)) {
      places.put(place, unique(place(place), place));
    }
  }

  private String unique(String words, String id) {
    String name = taken.add(words) ? words : words + " (" + id + ")";
    taken.add(name);
    return name;
  }

  /** The name of a node. */
  String node(HarnessGraph.Node node) {
    Map<String, String> names =
        switch (node.sort()) {
          case PLACE -> places;
          case TAIL -> tails;
          case JOINT -> joints;
        };
    return joint(names, node.id(), () -> node.toString());
  }

  /** The name of a joint on a branch. */
  String joint(String id) {
    return joint(joints, id, () -> "joint " + id);
  }

  private static String joint(Map<String, String> names, String id, Supplier<String> what) {
    String name = names.get(id);
    if (name == null) {
      throw new IllegalStateException("the harness names " + what.get() + ", which is not known");
    }
    return name;
  }

  /** The name of a place. */
  String place(String id) {
    return vehicle.place(id).map(it -> it.name()).orElse(id);
  }

  private String subject(Tail tail) {
    String id = tail.subject();
    return switch (tail.kind()) {
      case HOUSING -> housing(id).map(it -> "housing for " + it.matesWith()).orElse(id);
      case CONNECTOR -> vehicle.connector(id).map(it -> it.name()).orElse(id);
      case BLOCK -> vehicle.fuseBlock(id).map(it -> it.name()).orElse(id);
      case GROUND -> vehicle.ground(id).map(it -> it.name()).orElse(id);
      case LOOSE -> "capped ends, " + place(id);
      case CIRCUIT -> "splice into " + vehicle.circuit(id).map(it -> it.name()).orElse(id);
    };
  }

  Optional<SuppliedHousing> housing(String id) {
    return plan.design().housings().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  Optional<Lead> lead(String id) {
    return plan.design().leads().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  private String jointWords(Joint joint) {
    List<String> labels =
        joint.leads().stream().map(id -> lead(id).map(Lead::label).orElse(id)).toList();
    String words = String.join(" + ", labels);
    return joint.id()
        + ": "
        + (words.length() <= MOST_LETTERS ? words : String.join(" + ", joint.leads()));
  }

  /** Where a lead's other end is, as named on the board. */
  String other(Lead lead, boolean isSideA) {
    LeadEnd end = isSideA ? lead.b() : lead.a();
    if (end.asMade() instanceof Landing.InJoint joint) {
      return "joint " + joint.joint();
    }
    return plan.harness().tails().stream()
        .filter(tail -> tail.ends().contains(new Tail.End(lead.id(), !isSideA)))
        .findFirst()
        .map(tail -> node(new HarnessGraph.Node(HarnessGraph.Sort.TAIL, tail.id())))
        .orElseGet(() -> place(end.place()));
  }

  /** The cavity, slot or other spot of an end as made, in a word or two. */
  static String spot(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return it.cavity();
    }
    if (landing instanceof Landing.InHousing it) {
      return it.cavity();
    }
    if (landing instanceof Landing.InSlot it) {
      return it.slot();
    }
    if (landing instanceof Landing.OnGround) {
      return "ring";
    }
    if (landing instanceof Landing.IntoCircuit) {
      return "splice";
    }
    return landing instanceof Landing.Parked ? "cap" : "joint";
  }

  /** The part numbers that hold a lead; empty where all do. */
  String numbers(Lead lead) {
    List<PartNumber> all = plan.design().partNumbers();
    List<String> holding =
        all.stream().filter(it -> it.leads().contains(lead.id())).map(PartNumber::id).toList();
    return holding.size() == all.size() ? "" : "only in " + String.join(", ", holding);
  }

  /** What becomes of an end in the cases that do not use it as made; empty where none differs. */
  String changes(LeadEnd end) {
    return end.uses().stream()
        .filter(use -> !use.asMade())
        .map(this::change)
        .collect(Collectors.joining("; "));
  }

  private String change(EndUse use) {
    String cases = use.cases().isEmpty() ? "no case" : String.join(", ", use.cases());
    return use.landing() instanceof Landing.Parked
        ? "parked in " + cases
        : "changeable: in " + cases + " " + landing(use.landing());
  }

  private String landing(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      String owner = vehicle.connector(it.connector()).map(to -> to.name()).orElse(it.connector());
      return owner + ", cavity " + it.cavity();
    }
    if (landing instanceof Landing.InHousing it) {
      return it.housing() + ", cavity " + it.cavity();
    }
    if (landing instanceof Landing.InSlot it) {
      String owner = vehicle.fuseBlock(it.block()).map(to -> to.name()).orElse(it.block());
      return owner + ", slot " + it.slot();
    }
    if (landing instanceof Landing.OnGround it) {
      return vehicle.ground(it.ground()).map(to -> to.name()).orElse(it.ground());
    }
    if (landing instanceof Landing.IntoCircuit it) {
      return "splice into "
          + vehicle.circuit(it.circuit()).map(to -> to.name()).orElse(it.circuit());
    }
    return landing instanceof Landing.InJoint it ? "joint " + it.joint() : "parked";
  }
}
