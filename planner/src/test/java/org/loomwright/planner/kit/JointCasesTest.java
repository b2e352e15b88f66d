package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.electrics.Returns;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.fixture.Bits;
import org.loomwright.planner.fixture.CarDraw;
import org.loomwright.planner.fixture.SmallCar;
import org.loomwright.planner.fixture.VehicleBuilder;
import org.loomwright.planner.guide.EasyCar;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.ways.Use;
import org.loomwright.planner.ways.Way;

/** Joint cases against all builds, one by one. */
class JointCasesTest {
  private static final int KITS = 20;

  private int joined;
  private int apart;

  @Test
  void theCombinationsAreThoseOfTheBuilds() {
    long seed = new Random().nextLong();
    for (int i = 0; i < KITS || joined < 5 || apart < 5; i++) {
      // Drawn until enough was seen.
      assertThat(i).as("kits drawn from seed %s", seed).isLessThan(2000);
      check("seed " + (seed + i), i % 2 == 0 ? EasyCar.of(seed + i) : CarDraw.of(seed + i).order());
    }
  }

  /** Of cases that draw unequally, or not all from the same, each resource counts at its most. */
  @Test
  void othersAreTakenAtTheirWorst() {
    VehicleBuilder car = SmallCar.car(2).trait("t", "x", "y");
    KitOrder order =
        Bits.order(
            car.build(),
            List.of(
                Bits.equipment("e", SmallCar.plug(Bits.supply("30", 4), 4)),
                Bits.equipment("d", SmallCar.plug(Bits.supply("30", 2), 2))),
            List.of(Bits.on("e", "p", "k"), Bits.at("d", "p", "rear")));
    Builds builds = Builds.of(order.vehicle());
    List<NeedAt> needs = Needs.of(order);
    Region x = builds.where("t", List.of("x"));
    Region y = builds.where("t", List.of("y"));
    CaseSet first =
        new CaseSet(
            "A",
            needs.subList(0, 2),
            List.of(
                member("A1", needs.get(0), x, Map.of("section b s", 4.0, "stud g1 current", 5.0)),
                member("A2", needs.get(0), y, Map.of("section b s", 7.0, "stud g1 lugs", 1.0))));
    CaseSet second =
        new CaseSet(
            "B",
            needs.subList(2, 4),
            List.of(member("B1", needs.get(2), x.or(y), Map.of("section b s", 2.0))));
    Map<List<String>, Map<String, Double>> others = new LinkedHashMap<>();
    new JointCases(List.of(first, second)).all().forEach(it -> others.put(it.ids(), it.others()));
    assertThat(others)
        .isEqualTo(
            Map.of(
                List.of("A1"), Map.of("section b s", 2.0),
                List.of("A2"), Map.of("section b s", 2.0),
                List.of("B1"), Map.of("section b s", 7.0, "stud g1 current", 5.0)));
  }

  private static CaseSet.Member member(
      String id, NeedAt need, Region builds, Map<String, Double> uses) {
    Way way =
        new Way(
            id + " way",
            need,
            WayKind.OTHER_SLOT,
            "invented",
            List.of(),
            builds,
            List.of(),
            uses.entrySet().stream()
                .map(it -> new Use(it.getKey(), it.getValue(), 100, it.getKey()))
                .toList(),
            List.of(),
            0,
            Undo.EASILY,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Case info =
        new Case(
            id,
            id.substring(0, 1),
            "topic",
            "words",
            Condition.always(),
            builds.count(),
            builds.share(),
            Map.of(need.id(), way.id()));
    return new CaseSet.Member(info, builds, Map.of(need, way));
  }

  private void check(String seed, KitOrder order) {
    Builds builds = Builds.of(order.vehicle());
    if (builds.possible().isEmpty()) {
      return;
    }
    List<CaseSet> sets = SolvedKit.sets(order, builds);
    JointCases joint = new JointCases(sets);
    assertThat(joint.complete()).isTrue();
    Map<Set<String>, List<JointCases.Tuple>> groups = new LinkedHashMap<>();
    for (JointCases.Tuple tuple : joint.all()) {
      groups.computeIfAbsent(letters(tuple), l -> new ArrayList<>()).add(tuple);
    }
    theGroupsAreWholeAndApart(seed, sets, groups.keySet());
    Set<List<String>> had = new LinkedHashSet<>();
    for (Region build : AllBuilds.points(builds, AllBuilds.of(order.vehicle())).values()) {
      List<CaseSet.Member> here = here(seed, sets, build);
      List<List<CaseSet.Member>> combinations = new ArrayList<>();
      for (Set<String> letters : groups.keySet()) {
        List<CaseSet.Member> own =
            here.stream().filter(it -> letters.contains(it.info().component())).toList();
        // Where one of them has no case, no kit is sold.
        if (own.size() == letters.size()) {
          combinations.add(own);
        }
      }
      for (List<CaseSet.Member> own : combinations) {
        List<String> ids = own.stream().map(CaseSet.Member::id).toList();
        had.add(ids);
        Set<String> letters = new LinkedHashSet<>();
        own.forEach(it -> letters.add(it.info().component()));
        List<JointCases.Tuple> tuples = groups.getOrDefault(letters, List.of());
        assertThat(tuples)
            .as("%s: %s", seed, ids)
            .filteredOn(it -> it.ids().equals(ids))
            .hasSize(1);
        Map<String, Double> drawn = new LinkedHashMap<>();
        combinations.stream().filter(it -> !it.equals(own)).forEach(it -> draw(it, drawn));
        for (JointCases.Tuple tuple : tuples) {
          drawn.forEach(
              (resource, a) ->
                  assertThat(tuple.others().getOrDefault(resource, 0.0))
                      .as("%s: %s beside %s", seed, resource, ids)
                      .isGreaterThanOrEqualTo(a - 1e-9));
        }
        apart += drawn.isEmpty() ? 0 : 1;
        joined += ids.size() > 1 ? 1 : 0;
      }
    }
    joint.all().forEach(it -> assertThat(had).as("%s: some build has", seed).contains(it.ids()));
  }

  /** Each component in one group; a load and its ground never in two. */
  private static void theGroupsAreWholeAndApart(
      String seed, List<CaseSet> sets, Set<Set<String>> groups) {
    List<String> all = groups.stream().flatMap(Set::stream).toList();
    assertThat(all).as(seed).doesNotHaveDuplicates();
    List<NeedAt> needs = sets.stream().flatMap(it -> it.needs().stream()).toList();
    Map<NeedAt, String> letters = new LinkedHashMap<>();
    sets.forEach(set -> set.needs().forEach(need -> letters.put(need, set.letter())));
    for (NeedAt need : needs) {
      Returns.of(need, needs)
          .ifPresent(
              ground -> {
                String one = letters.getOrDefault(need, "");
                String other = letters.getOrDefault(ground, "");
                for (Set<String> group : groups) {
                  assertThat(group.contains(one)).as(seed).isEqualTo(group.contains(other));
                }
              });
    }
  }

  private static Set<String> letters(JointCases.Tuple tuple) {
    Set<String> letters = new LinkedHashSet<>();
    tuple.members().forEach(it -> letters.add(it.info().component()));
    return letters;
  }

  /** The cases of one build, at most one of each component. */
  private static List<CaseSet.Member> here(String seed, List<CaseSet> sets, Region build) {
    List<CaseSet.Member> here = new ArrayList<>();
    for (CaseSet set : sets) {
      List<CaseSet.Member> own =
          set.members().stream().filter(it -> build.meets(it.region())).toList();
      assertThat(own).as(seed).hasSizeLessThanOrEqualTo(1);
      here.addAll(own);
    }
    return here;
  }

  private static void draw(List<CaseSet.Member> members, Map<String, Double> drawn) {
    for (CaseSet.Member member : members) {
      member.ways().values().stream()
          .flatMap(way -> way.uses().stream())
          .filter(use -> use.resource().matches("section \\S+ \\S+|stud \\S+ current"))
          .forEach((Use use) -> drawn.merge(use.resource(), use.amount(), Double::sum));
    }
  }
}
