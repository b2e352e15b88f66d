package org.loomwright.planner.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.equipment.Demand;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Diagram;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.builds.Splitting;
import org.loomwright.planner.ways.Reach;

/** Works out a fit check: which questions are worth asking, and what each answer decides. */
final class FitMaker {
  private final KitOrder order;
  private final Vehicle vehicle;
  private final Plan plan;
  private final Builds builds;
  private final Covered covered;
  private final Asked asked;

  FitMaker(KitOrder order, Plan plan) {
    this.order = order;
    this.vehicle = order.vehicle();
    this.plan = plan;
    this.builds = Builds.of(vehicle);
    this.covered = new Covered(plan, builds);
    this.asked = new Asked(vehicle, builds);
  }

  FitCheck make() {
    List<Region> wiring = wiring();
    List<Region> modules = demands(Equipment::modules);
    List<Region> coding = demands(Equipment::coding);
    Map<PartNumber, Region> boxes = covered.boxes();
    List<Region> numbers = new ArrayList<>(boxes.values());
    numbers.add(boxes.values().stream().reduce(builds.possible(), Region::minus));
    asked.decide(Topic.WIRING, wiring);
    decideDemands(Topic.MODULES, modules);
    decideDemands(Topic.CODING, coding);
    asked.decide(Topic.NUMBER, numbers);
    for (Case one : plan.cases()) {
      Region when = builds.where(one.when()).and(covered.covered());
      asked.decide(Topic.WORK, List.of(when, covered.covered().minus(when)));
    }
    List<Trait> traits = asked.traits();
    List<String> others = new ArrayList<>(builds.traits().keySet());
    others.removeAll(traits.stream().map(Trait::id).toList());
    Settling settling = new Settling(others);
    return compact(
        new FitCheck(
            traits.stream().map(asked::question).toList(),
            others.stream().map(this::trait).toList(),
            new Wiring(
                Splitting.of(traits, wiring, settling::left), refusals(traits), covered.held()),
            new Demands(
                whole(modules, traits, settling), each(Equipment::modules, modules, traits)),
            new Demands(whole(coding, traits, settling), each(Equipment::coding, coding, traits)),
            new Numbers(
                boxes.keySet().stream().map(PartNumber::id).toList(),
                Splitting.of(traits, numbers, settling::left)),
            new WorkMaker(vehicle, plan, covered, traits).make()));
  }

  private List<Region> wiring() {
    return List.of(
        covered.covered(),
        covered.refused(),
        builds.possible().minus(covered.covered()).minus(covered.refused()));
  }

  // Builds on which each demand is open.
  private List<Region> demands(Function<Equipment, List<Demand>> kind) {
    return order.equipment().stream()
        .flatMap(it -> kind.apply(it).stream())
        .map(it -> builds.possible().minus(builds.where(it.metWhen())))
        .toList();
  }

  private void decideDemands(Topic topic, List<Region> needed) {
    needed.forEach(it -> asked.decide(topic, List.of(it, builds.possible().minus(it))));
  }

  private Diagram<Left> whole(List<Region> needed, List<Trait> traits, Settling settling) {
    Region any = needed.stream().reduce(builds.none(), Region::or);
    return Splitting.of(traits, List.of(builds.possible().minus(any), any), settling::left);
  }

  private List<Demands.Demanded> each(
      Function<Equipment, List<Demand>> kind, List<Region> needed, List<Trait> traits) {
    List<Demands.Demanded> each = new ArrayList<>();
    for (Equipment equipment : order.equipment()) {
      for (Demand demand : kind.apply(equipment)) {
        Region open = needed.get(each.size());
        each.add(
            new Demands.Demanded(
                equipment.name() + ": " + demand.what(),
                demand.evidence().map(FitMaker::words).orElse(""),
                Splitting.of(
                    traits, List.of(builds.possible().minus(open), open), Settling::classesOnly)));
      }
    }
    return each;
  }

  // Customers need not know who in the shop or elsewhere found it out.
  private static String words(Evidence evidence) {
    return evidence.how().name().toLowerCase(Locale.ROOT)
        + evidence.when().map(day -> " " + day).orElse("")
        + evidence.note().map(note -> ": " + note).orElse("");
  }

  private List<Wiring.Refusal> refusals(List<Trait> traits) {
    List<Wiring.Refusal> refusals = new ArrayList<>();
    for (Unserved it : plan.unserved()) {
      Region concerned = builds.where(it.when());
      refusals.add(
          new Wiring.Refusal(
              it.words(),
              it.needs().stream().map(this::pin).toList(),
              it.reason(),
              Splitting.of(
                  traits,
                  List.of(builds.possible().minus(concerned), concerned),
                  Settling::classesOnly)));
    }
    return refusals;
  }

  // The name of a pin, where the need is one of the order.
  private String pin(String need) {
    for (Equipment equipment : order.equipment()) {
      for (Plug plug : equipment.plugs()) {
        for (Pin pin : plug.pins()) {
          if (need.equals(equipment.id() + "/" + plug.id() + "/" + pin.cavity())) {
            return pin.name();
          }
        }
      }
    }
    return need;
  }

  private FitTrait trait(String id) {
    Trait trait = builds.traits().get(id);
    if (trait == null) {
      throw new IllegalStateException("no trait " + id);
    }
    List<String> openings = Reach.inOrder(vehicle, trait.tell().openings());
    double minutes = trait.tell().effort().seconds() / 60;
    List<String> names = new ArrayList<>();
    for (String opening : openings) {
      minutes += vehicle.opening(opening).map(it -> it.open().seconds() / 60).orElse(0.0);
      names.add(vehicle.opening(opening).map(Opening::name).orElse(opening));
    }
    return new FitTrait(
        id,
        trait.name(),
        trait.tell().how(),
        trait.tell().question(),
        vehicle.place(trait.tell().place()).map(it -> it.name()).orElse(trait.tell().place()),
        names,
        minutes);
  }

  // Keeps only the traits that some set speaks of.
  private static FitCheck compact(FitCheck check) {
    TreeSet<Integer> used = new TreeSet<>();
    Stream.of(
            check.wiring().whole(),
            check.modules().whole(),
            check.coding().whole(),
            check.numbers().whole())
        .flatMap(it -> it.ends().stream())
        .flatMap(it -> it.sets().stream())
        .forEach(used::addAll);
    List<Integer> kept = List.copyOf(used);
    Function<Left, Left> renumber =
        left ->
            new Left(
                left.classes(),
                left.sets().stream().map(set -> set.stream().map(kept::indexOf).toList()).toList(),
                left.kind());
    return new FitCheck(
        check.questions(),
        kept.stream().map(check.traits()::get).toList(),
        new Wiring(
            check.wiring().whole().mapped(renumber),
            check.wiring().refusals(),
            check.wiring().held()),
        new Demands(check.modules().whole().mapped(renumber), check.modules().each()),
        new Demands(check.coding().whole().mapped(renumber), check.coding().each()),
        new Numbers(check.numbers().ids(), check.numbers().whole().mapped(renumber)),
        check.work());
  }
}
