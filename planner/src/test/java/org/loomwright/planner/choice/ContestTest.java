package org.loomwright.planner.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.fixture.Bits;
import org.loomwright.planner.fixture.VehicleBuilder;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.route.Routes;
import org.loomwright.planner.ways.LeadCosts;
import org.loomwright.planner.ways.LeadDraft;
import org.loomwright.planner.ways.Use;
import org.loomwright.planner.ways.Way;
import org.loomwright.planner.ways.WayFinder;

/** Needs that want the same thing, one contest at a time. */
class ContestTest {
  private static final List<Use> FREE = List.of();

  @Test
  void twoNeedsThatPreferOneSlotShareOutTheSlotsAtLeastCost() {
    Setting it = new Setting(Bits.supply("30", 1), Bits.supply("30", 1));
    it.slot(0, "1", it.always(), 1, FREE);
    it.slot(0, "2", it.always(), 3, FREE);
    it.slot(1, "1", it.always(), 1, FREE);
    it.slot(1, "2", it.always(), 10, FREE);
    Choice choice = it.choose();
    assertThat(choice.unserved()).isEmpty();
    assertThat(choice.components()).hasSize(1);
    assertThat(it.told(choice)).containsExactly("every: e/p/1 > slot 2, e/p/2 > slot 1");
  }

  @Test
  void aContestOnSomeBuildsChangesThoseBuildsOnly() {
    Setting it = new Setting(Bits.supply("30", 1), Bits.supply("30", 1));
    it.slot(0, "1", it.always(), 1, FREE);
    it.slot(0, "2", it.always(), 3, FREE);
    it.slot(1, "1", it.where("a = x"), 1, FREE);
    it.slot(1, "3", it.always(), 10, FREE);
    Choice choice = it.choose();
    assertThat(choice.unserved()).isEmpty();
    assertThat(it.told(choice))
        .containsExactlyInAnyOrder(
            "a = x: e/p/1 > slot 2, e/p/2 > slot 1", "a = y: e/p/1 > slot 1, e/p/2 > slot 3");
  }

  @Test
  void needsThatOverloadASectionTogetherAreSharedOut() {
    Setting it = new Setting(Bits.supply("30", 6), Bits.supply("30", 6));
    List<Use> full = List.of(new Use("section A", 6, 10, "section A"));
    List<Use> other = List.of(new Use("section B", 6, 10, "section B"));
    it.slot(0, "1", it.always(), 1, full);
    it.slot(0, "3", it.always(), 5, other);
    it.slot(1, "2", it.always(), 1, full);
    it.slot(1, "4", it.always(), 3, other);
    Choice choice = it.choose();
    assertThat(choice.unserved()).isEmpty();
    assertThat(it.told(choice)).containsExactly("every: e/p/1 > slot 1, e/p/2 > slot 4");
  }

  // 16.1 has no exact binary fraction: 16.1 × 1000 comes out a hair above 16100.
  @ParameterizedTest
  @ValueSource(doubles = {16.1, 8.2, 4.1, 9.95})
  void aNeedMayUseTheLastOfACapacity(double amount) {
    Setting it = new Setting(Bits.supply("30", 1));
    it.slot(0, "1", it.always(), 1, List.of(new Use("section A", amount, amount, "section A")));
    assertThat(it.choose().unserved()).isEmpty();
  }

  @Test
  void aJointIsNeverFedFromTwoSlots() {
    Setting it = new Setting(Bits.supply("30", 6, "p 2"), Bits.supply("30", 6));
    List<Use> first = List.of(new Use("section A", 6, 10, "section A"));
    List<Use> second = List.of(new Use("section B", 6, 10, "section B"));
    for (int need = 0; need < 2; need++) {
      it.overJoint(need, "1", first);
      it.overJoint(need, "2", second);
    }
    // Each section bears one of the two, so only two feeds into the joint could serve both.
    assertThat(it.choose().unserved()).hasSize(1);
    it.slot(1, "2", it.always(), 50, second);
    Choice choice = it.choose();
    assertThat(choice.unserved()).isEmpty();
    assertThat(it.told(choice)).containsExactly("every: e/p/1 > joint 1, e/p/2 > slot 2");
  }

  @Test
  void aSharedLeadIsPaidOnce() {
    Setting it = new Setting(Bits.supply("30", 1, "p 2"), Bits.supply("30", 1));
    for (int need = 0; need < 2; need++) {
      it.overJoint(need, "1", FREE);
      // A trunk and two branches cost 3 together, two leads of their own 4.
      it.slot(need, String.valueOf(need + 2), it.always(), 1, FREE);
    }
    assertThat(it.told(it.choose())).containsExactly("every: e/p/1 > joint 1, e/p/2 > joint 1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"30", "15"})
  void twoPlugsOnOneConnectorWantOneCavity(String otherFeed) {
    KitOrder order =
        Bits.order(
            new VehicleBuilder()
                .trait("a", "x", "y")
                .add(Bits.connector("k1", "rear", Optional.empty()))
                .add(
                    Bits.block(
                        "b",
                        List.of(
                            Bits.section("s30", "30", Condition.always(), 40, 0),
                            Bits.section("s15", "15", Condition.always(), 40, 0)),
                        List.of(
                            Bits.slot("1", "s30", Condition.always()),
                            Bits.slot("2", "s30", Condition.always()),
                            Bits.slot("3", "s15", Condition.always()))))
                .build(),
            List.of(
                Bits.equipment("lamp", Bits.plug("p", Bits.pin("4", Bits.supply("30", 2)))),
                Bits.equipment("fan", Bits.plug("p", Bits.pin("4", Bits.supply(otherFeed, 2))))),
            List.of(Bits.on("lamp", "p", "k1"), Bits.on("fan", "p", "k1")));
    Choice choice = choose(order);
    assertThat(choice.unserved()).hasSize(1);
    Unserved unserved = choice.unserved().get(0);
    assertThat(unserved.reason()).startsWith("two leads want cavity k1 4");
    assertThat(unserved.needs()).containsExactly("lamp/p/4", "fan/p/4");
    assertThat(unserved.words()).isEqualTo("every build");
    assertThat(unserved.builds()).isEqualTo(2);
  }

  @Test
  void independentNeedsAddTheirGroups() {
    int many = 24;
    VehicleBuilder vehicle = new VehicleBuilder();
    List<Equipment> equipment = new ArrayList<>();
    List<Mount> mounts = new ArrayList<>();
    List<Section> sections = new ArrayList<>();
    List<Slot> slots = new ArrayList<>();
    for (int i = 1; i <= many; i++) {
      vehicle.trait("t" + i, "x", "y");
      vehicle.add(Bits.connector("k" + i, "rear", Optional.empty()));
      vehicle.add(
          Bits.circuit(
              "c" + i,
              CircuitKind.SUPPLY,
              Optional.of("f" + i),
              "unit computer",
              "cavity k" + i + " 1",
              Condition.of("t" + i + " = x")));
      sections.add(Bits.section("s" + i, "f" + i, Condition.always(), 20, 0));
      slots.add(Bits.slot("n" + i, "s" + i, Condition.always()));
      equipment.add(
          Bits.equipment("e" + i, Bits.plug("p", Bits.pin("1", Bits.supply("f" + i, 1)))));
      mounts.add(Bits.on("e" + i, "p", "k" + i));
    }
    vehicle.add(Bits.block("b", sections, slots));
    Choice choice = choose(Bits.order(vehicle.build(), equipment, mounts));
    assertThat(choice.unserved()).isEmpty();
    assertThat(choice.components()).hasSize(many);
    assertThat(choice.groups()).isLessThanOrEqualTo(2 * many);
    assertThat(choice.components()).allMatch(it -> it.picks().size() == 2);
  }

  @Test
  void needsWithEqualSlotsToChooseFromStayApart() {
    int many = 24;
    VehicleBuilder vehicle = new VehicleBuilder();
    List<Equipment> equipment = new ArrayList<>();
    List<Mount> mounts = new ArrayList<>();
    List<Slot> slots = new ArrayList<>();
    for (int i = 1; i <= many; i++) {
      vehicle.trait("t" + i, "x", "y");
      vehicle.add(Bits.connector("k" + i, "rear", Optional.empty()));
      vehicle.add(
          Bits.circuit(
              "c" + i,
              CircuitKind.SUPPLY,
              Optional.of("30"),
              "unit computer",
              "cavity k" + i + " 1",
              Condition.of("t" + i + " = x")));
      slots.add(Bits.slot("n" + i, "s", Condition.always()));
      equipment.add(Bits.equipment("e" + i, Bits.plug("p", Bits.pin("1", Bits.supply("30", 1)))));
      mounts.add(Bits.on("e" + i, "p", "k" + i));
    }
    vehicle.add(
        Bits.block("b", List.of(Bits.section("s", "30", Condition.always(), 40, 0)), slots));
    Choice choice = choose(Bits.order(vehicle.build(), equipment, mounts));
    assertThat(choice.unserved()).isEmpty();
    assertThat(choice.groups()).isLessThanOrEqualTo(2 * many);
    List<Way> landed =
        choice.components().stream()
            .flatMap(it -> it.picks().stream())
            .flatMap(it -> it.ways().values().stream())
            .filter(it -> it.kind() != WayKind.ALREADY_WIRED)
            .toList();
    assertThat(landed).hasSize(many);
    assertThat(Trial.fits(landed)).isTrue();
  }

  // Behind 10 A in the cabin 8 A may flow: 3 A of the lamp, and 3 A of one of the two fans, not of
  // both.
  @Test
  void aNeedWiredAlreadyTakesItsRoomOnTheWire() {
    KitOrder order =
        Bits.order(
            new VehicleBuilder()
                .trait("a", "x", "y")
                .add(Bits.connector("k1", "rear", Optional.empty()))
                .add(Bits.connector("k2", "rear", Optional.empty()))
                .add(
                    Bits.circuit(
                        "c",
                        CircuitKind.SUPPLY,
                        Optional.of("30"),
                        "unit computer",
                        List.of("cavity k1 1", "unit lamp"),
                        "2.5 mm²",
                        Condition.of("a = x"),
                        Optional.of(Bits.amps(10)),
                        Optional.of(Bits.amps(3)),
                        List.of("rear"),
                        false))
                .build(),
            List.of(
                Bits.equipment("left", Bits.plug("p", Bits.pin("1", Bits.supply("30", 3)))),
                Bits.equipment("right", Bits.plug("p", Bits.pin("1", Bits.supply("30", 3))))),
            List.of(Bits.on("left", "p", "k1"), Bits.on("right", "p", "k2")));
    List<Unserved> unserved = choose(order).unserved();
    assertThat(unserved)
        .filteredOn(it -> it.when().equals(Condition.of("a = x")))
        .singleElement()
        .satisfies(
            it -> {
              assertThat(it.needs()).containsExactly("left/p/1", "right/p/1");
              assertThat(it.reason()).contains("more of wire c than there is");
            });
  }

  private static Choice choose(KitOrder order) {
    Builds builds = Builds.of(order.vehicle());
    LeadCosts costs = new LeadCosts(order, new Routes(order.vehicle(), order.rules()));
    Map<NeedAt, List<Way>> ways =
        new WayFinder(order, new Facts(order.vehicle(), builds), costs).find(Needs.of(order));
    return new ChoiceFinder(ways, builds.possible(), lead -> 1, opening -> 1).find();
  }

  /** Needs of one plug with ways made by hand; every lead costs 1. */
  private static final class Setting {
    private final Builds builds;
    private final List<NeedAt> needs;
    private final Map<NeedAt, List<Way>> ways = new LinkedHashMap<>();

    Setting(Need... wants) {
      VehicleBuilder vehicle =
          new VehicleBuilder()
              .trait("a", "x", "y")
              .add(Bits.connector("k", "rear", Optional.empty()));
      List<Pin> pins = new ArrayList<>();
      for (int i = 0; i < wants.length; i++) {
        pins.add(Bits.pin(String.valueOf(i + 1), wants[i]));
      }
      Equipment equipment = Bits.equipment("e", Bits.plug("p", pins.toArray(Pin[]::new)));
      KitOrder order =
          Bits.order(vehicle.build(), List.of(equipment), List.of(Bits.on("e", "p", "k")));
      builds = Builds.of(order.vehicle());
      needs = Needs.of(order);
      needs.forEach(need -> ways.put(need, new ArrayList<>()));
    }

    Region always() {
      return builds.possible();
    }

    Region where(String condition) {
      return builds.where(Condition.of(condition));
    }

    void slot(int need, String slot, Region when, double cost, List<Use> uses) {
      Touch from = new Touch.AtSlot("b", slot, "front");
      add(need, "slot " + slot, when, cost, uses, List.of(lead(from, pin(need))));
    }

    void overJoint(int need, String slot, List<Use> uses) {
      Touch joint = new Touch.AtJoint("j", "middle");
      Touch from = new Touch.AtSlot("b", slot, "front");
      add(
          need,
          "joint " + slot,
          always(),
          0,
          uses,
          List.of(lead(from, joint), lead(joint, pin(need))));
    }

    Choice choose() {
      return new ChoiceFinder(ways, builds.possible(), lead -> 1, opening -> 1).find();
    }

    List<String> told(Choice choice) {
      List<String> told = new ArrayList<>();
      for (Choice.Component component : choice.components()) {
        for (Choice.Pick pick : component.picks()) {
          String when =
              pick.region().equals(always())
                  ? "every"
                  : pick.region().equals(where("a = x")) ? "a = x" : "a = y";
          told.add(
              when
                  + ": "
                  + String.join(
                      ", ", pick.ways().values().stream().map(Way::id).sorted().toList()));
        }
      }
      return told;
    }

    private Touch pin(int need) {
      return new Touch.AtCavity("k", needs.get(need).pin().cavity(), "rear");
    }

    private static LeadDraft lead(Touch from, Touch to) {
      return new LeadDraft(CircuitKind.SUPPLY, from, to);
    }

    private void add(
        int need, String name, Region when, double cost, List<Use> uses, List<LeadDraft> leads) {
      NeedAt at = needs.get(need);
      ways.getOrDefault(at, new ArrayList<>())
          .add(
              new Way(
                  at.id() + " > " + name,
                  at,
                  WayKind.OTHER_SLOT,
                  name,
                  List.of(),
                  when,
                  leads,
                  uses,
                  List.of(),
                  cost,
                  Undo.EASILY,
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty()));
    }
  }
}
