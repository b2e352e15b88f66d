package org.loomwright.planner.difference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.plan.With;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Plants changes into the demo and reads what is said of them. */
class PlanDifferenceTest {
  private static final String KIT = "crew-comfort.kit.json";
  private static final String RULES = "rules.rules.json";

  /** Changes of the demo's documents, each planned once. */
  enum Planted {
    LONGER_RUN(
        demo -> demo.item(Demo.VAN, "runs", "floor-to-cross", it -> it.put("length", "6 m"))),
    SLOT_FORBIDDEN(demo -> demo.edit(KIT, it -> forbid(it, "heater/main/1 > slot rear-block F7"))),
    SMALLER_SLOT(demo -> slot(demo, "F7", it -> it.put("maxRating", "15 A"))),
    SLOT_REMOVED(
        demo ->
            demo.item(
                Demo.VAN,
                "fuseBlocks",
                "seat-block",
                it -> Demo.remove(it.path("slots"), "id", List.of("S5")))),
    MORE_CURRENT(demo -> heaterSupply(demo, "continuous", "15 A")),
    HIGHER_VOLTAGE(demo -> heaterSupply(demo, "minimumVoltage", "11.1 V")),
    NEW_VALUE(demo -> demo.item(Demo.VAN, "traits", "floor-ground", it -> value(it))),
    MORE_SLACK(
        demo ->
            demo.edit(RULES, it -> ((ObjectNode) it.path("slackPerEnd")).put("value", "100 mm"))),
    NO_GROUND(
        demo ->
            demo.edit(
                KIT,
                it ->
                    forbid(
                        it,
                        "heater/main/2 > stud cross-ground",
                        "heater/main/2 > stud quarter-ground",
                        "heater/main/2 > stud rear-ground"))),
    WEAK_BATTERY(
        demo -> demo.edit(Demo.VAN, it -> ((ObjectNode) it.path("source")).put("weak", "40 mΩ")));

    private static final Map<Planted, Plan> PLANS = new HashMap<>();
    private final Consumer<Demo> change;

    Planted(Consumer<Demo> change) {
      this.change = change;
    }

    synchronized Plan plan() {
      return PLANS.computeIfAbsent(
          this,
          it -> {
            Demo demo = Demo.copy();
            it.change.accept(demo);
            return Planner.plan(demo.kit(Demo.COMFORT));
          });
    }

    List<Change> changes() {
      return PlanDifference.between(Demo.plan(Demo.COMFORT), plan());
    }

    List<String> words() {
      return changes().stream().map(Change::words).toList();
    }

    private static void forbid(ObjectNode kit, String... ways) {
      ArrayNode wishes = kit.putArray("wishes");
      for (String way : ways) {
        wishes.addObject().put("wish", "forbid").put("way", way).put("reason", "too hot there");
      }
    }

    private static void slot(Demo demo, String id, Consumer<ObjectNode> change) {
      demo.item(
          Demo.VAN,
          "fuseBlocks",
          "rear-block",
          it -> change.accept(Demo.find(it.path("slots"), "id", id)));
    }

    private static void heaterSupply(Demo demo, String key, String value) {
      demo.edit(
          Demo.HEATER,
          it ->
              ((ObjectNode) it.path("plugs").path(0).path("pins").path(0).path("need"))
                  .put(key, value));
    }

    private static void value(ObjectNode trait) {
      ((ArrayNode) trait.path("values"))
          .addObject()
          .put("id", "thin")
          .put("words", "with a thin ground wire at the floor connector")
          .put("share", "0 %");
      ((ObjectNode) trait.path("tell").path("expect")).put("thin", "a thin wire");
      ((ObjectNode) trait.path("tell").path("bands")).put("thin", "2 Ω to 5 Ω");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void theSamePlanHasNoChange(String kit) {
    assertThat(PlanDifference.between(Demo.plan(kit), Planner.plan(Demo.order(kit)))).isEmpty();
  }

  @Test
  void aLongerRunSaysWhatFailsWhereAndByHowMuch() {
    List<String> words = Planted.LONGER_RUN.words();
    assertThat(words.get(0))
        .startsWith("the kit can no longer be released: ")
        .contains("checks fail", "the proof fails");
    assertThat(words.get(1)).startsWith("the proof fails: the voltage drop is ");
    assertThat(words)
        .anyMatch(
            it ->
                it.matches(
                    "fails: voltage drop on the feed, left step supply: [\\d.]+ V, was [\\d.]+ V,"
                        + " at most 0.36 V"))
        .anyMatch(
            it ->
                it.startsWith(
                    "heater ground on case B1: now ground on the ground stud on the left frame"
                        + " rail, was ground on the ground stud on the middle cross member"))
        .anyMatch(it -> it.matches("\\d part numbers to carry, was 2"));
  }

  @Test
  void aForbiddenWaySaysWhyItIsGoneAndWhereItsBuildsWent() {
    assertThat(Planted.SLOT_FORBIDDEN.words())
        .startsWith(
            "heater and blower supply: way no longer used: factory slot F7 of the rear fuse block"
                + " (now ruled out: not wanted: too hot there)")
        .anyMatch(
            it ->
                it.equals(
                    "case A1 (not prepared for towing and with section B of the rear fuse block"
                        + " fed) is gone, part of cases A1 and A2 now"))
        .noneMatch(it -> it.contains("release"));
  }

  @Test
  void aSmallerSlotSaysWhichLimitIsInTheWay() {
    assertThat(Planted.SMALLER_SLOT.words().get(0))
        .startsWith("heater and blower supply: way no longer used: factory slot F7")
        .contains("now ruled out: no wire on file passes every check");
  }

  @Test
  void aRemovedSlotLeavesACaseUnserved() {
    List<Change> changes = Planted.SLOT_REMOVED.changes();
    assertThat(changes.get(0).words())
        .isEqualTo("the kit can no longer be released: some builds are not served");
    assertThat(changes.get(1).words())
        .startsWith("case A2 (with section B of the rear fuse block dead")
        .contains(
            "is no longer served (56 of 200 builds): heater and blower supply has no way there");
    assertThat(changes.get(1).weight()).isEqualTo(Weight.WORSE);
    assertThat(changes)
        .extracting(Change::words)
        .contains(
            "heater and blower supply: way no longer used: slot S5 of the seat fuse block (no"
                + " longer there)")
        .noneMatch(it -> it.startsWith("the proof fails"));
  }

  @Test
  void moreCurrentSaysWhatIsAskedForAndWhatIsMadeThickerForIt() {
    assertThat(Planted.MORE_CURRENT.words())
        .contains(
            "heater and blower supply asks for supply 30, 15 A, was supply 30, 12.5 A",
            "L1 heater and blower supply: fuse 25 A, was fuse 20 A",
            "L3 heater ground: 6 mm², was 4 mm²")
        .startsWith("the kit can now be released only with a named reason: 1 check is marginal");
  }

  @Test
  void aHigherLeastVoltageSaysNothingElse() {
    assertThat(Planted.HIGHER_VOLTAGE.words())
        .hasSize(3)
        .anyMatch(
            it ->
                it.equals(
                    "fails: voltage across the load at lowest supply, heater and blower supply:"
                        + " 10.8 V, at least 11.1 V (was 10.5 V)"));
  }

  @Test
  void aNewValueOfATraitSaysWhichCaseItFellTo() {
    assertThat(Planted.NEW_VALUE.words())
        .contains(
            "case B1 is now without a ground wire at the floor connector or with a thin ground"
                + " wire at the floor connector; was without a ground wire at the floor connector",
            "312 builds are possible, was 200");
  }

  @Test
  void manyLengthsAreOneLine() {
    assertThat(Planted.MORE_SLACK.words()).contains("9 leads are longer by 50 mm");
  }

  @Test
  void anAttemptWithoutGroundsSaysWhoIsLeftOut() {
    assertThat(Planted.NO_GROUND.words().get(1))
        .startsWith(
            "case B1 (without a ground wire at the floor connector) is no longer served (112 of"
                + " 200 builds): heater ground has no way there");
  }

  @ParameterizedTest
  @EnumSource(Planted.class)
  void theOtherWayRoundWorseIsBetter(Planted planted) {
    Plan demo = Demo.plan(Demo.COMFORT);
    List<Change> back = PlanDifference.between(planted.plan(), demo);
    for (Topic topic : Topic.values()) {
      assertThat(count(planted.changes(), topic, Weight.WORSE))
          .as("worse in %s", topic)
          .isEqualTo(count(back, topic, Weight.BETTER));
      assertThat(count(planted.changes(), topic, Weight.BETTER))
          .as("better in %s", topic)
          .isEqualTo(count(back, topic, Weight.WORSE));
    }
  }

  private static long count(List<Change> changes, Topic topic, Weight weight) {
    return changes.stream().filter(it -> it.topic() == topic && it.weight() == weight).count();
  }

  /** By the names of checks and what they are on, which no matching of ids is needed for. */
  @ParameterizedTest
  @EnumSource(Planted.class)
  void everyChangedVerdictIsTold(Planted planted) {
    Plan before = Demo.plan(Demo.COMFORT);
    Plan after = planted.plan();
    Map<String, List<Verdict>> was = verdicts(before);
    Map<String, List<Verdict>> is = verdicts(after);
    for (int detail = 1; detail < 4; detail++) {
      List<String> sums =
          PlanDifference.between(before, after, detail).stream()
              .filter(it -> it.topic() == Topic.SUMS)
              .map(Change::words)
              .toList();
      is.forEach(
          (name, verdicts) -> {
            if (!verdicts.equals(was.getOrDefault(name, List.of()))) {
              for (Verdict verdict : verdicts) {
                String word = verdict == Verdict.FAILS ? "fails" : verdict.word();
                assertThat(sums)
                    .anyMatch(it -> it.startsWith(word) && it.contains(": " + name + ", "));
              }
            }
          });
      assertThat(sums).doesNotHaveDuplicates();
    }
  }

  /** Verdicts that are not "holds", by the name of the check. */
  private static Map<String, List<Verdict>> verdicts(Plan plan) {
    Map<String, List<Verdict>> verdicts = new HashMap<>();
    for (Check check : plan.checks()) {
      if (check.verdict() != Verdict.HOLDS) {
        verdicts.computeIfAbsent(check.name(), it -> new ArrayList<>()).add(check.verdict());
      }
    }
    return verdicts;
  }

  @ParameterizedTest
  @EnumSource(Planted.class)
  void allIsFitToRead(Planted planted) {
    assertThat(planted.words()).doesNotHaveDuplicates();
    assertThat(planted.words())
        .allSatisfy(
            it -> {
              assertThat(it).doesNotContain("\n", "  ", "null", "NaN", "[", "]");
              assertThat(it.length()).isLessThan(500);
            });
  }

  /** One check after another is turned, and is told by its name and subject. */
  @Test
  void eachCheckThatIsTurnedIsTold() {
    Plan plan = Demo.plan(Demo.COMFORT);
    for (int i = 0; i < plan.checks().size(); i++) {
      Check check = plan.checks().get(i);
      List<Check> checks = new ArrayList<>(plan.checks());
      checks.set(i, With.changed(check, "verdict", Verdict.FAILS));
      List<Change> changes =
          PlanDifference.between(plan, With.changed(plan, "checks", List.copyOf(checks)));
      assertThat(changes).as(check.id()).hasSize(2);
      assertThat(changes.get(0).words())
          .isEqualTo("the kit can no longer be released: 1 check fails");
      assertThat(changes.get(1).words()).startsWith("fails: " + check.name() + ", ");
    }
  }

  @Test
  void otherLettersAreOneLine() {
    Plan plan = Demo.plan(Demo.COMFORT);
    List<Case> cases = new ArrayList<>();
    for (Case one : plan.cases()) {
      cases.add(With.changed(one, "id", one.id().replace('B', 'X')));
    }
    assertThat(PlanDifference.between(plan, With.changed(plan, "cases", cases)))
        .containsExactly(
            Change.neutral(Topic.WAYS, "cases with another name: B1 is now X1 and B2 is now X2"));
  }

  @Test
  void twoCasesMergedIntoOneAreTold() {
    Plan plan = Demo.plan(Demo.COMFORT);
    List<Case> cases = new ArrayList<>(plan.cases());
    cases.removeIf(it -> it.id().equals("B2"));
    cases.replaceAll(
        it ->
            it.id().equals("B1")
                ? With.changed(
                    With.changed(
                        With.changed(it, "when", Condition.of("always")), "words", "every build"),
                    "ways",
                    Map.of("heater/main/2", "heater/main/2 > stud quarter-ground"))
                : it);
    Plan merged = With.changed(plan, "cases", cases);
    assertThat(PlanDifference.between(plan, merged))
        .extracting(Change::words)
        .contains(
            "cases B1 (without a ground wire at the floor connector) and B2 (with a ground wire at"
                + " the floor connector) are now one, case B1 (every build)");
    assertThat(PlanDifference.between(merged, plan))
        .extracting(Change::words)
        .contains(
            "case B1 (every build) is split into cases B1 (without a ground wire at the floor"
                + " connector) and B2 (with a ground wire at the floor connector)");
  }
}
