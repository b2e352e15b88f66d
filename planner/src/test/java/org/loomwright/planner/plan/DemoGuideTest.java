package org.loomwright.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.ReadingKind;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.guide.Counted;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;

/** The guides of the demo, walked by every build. */
class DemoGuideTest {
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void asksAsManyQuestionsAsItSays(String kit) {
    KitOrder order = Demo.order(kit);
    Plan plan = Demo.plan(kit);
    assertThat(plan.guide().expectedQuestions())
        .isCloseTo(
            Counted.questions(order.vehicle(), plan.guide(), AllBuilds.of(order.vehicle())),
            within(1e-9))
        .isGreaterThan(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void saysEachCautionOnceAndRightBeforeAStep(String kit) {
    Plan plan = Demo.plan(kit);
    Set<String> said = new TreeSet<>();
    for (Map<String, String> build : AllBuilds.of(Demo.order(kit).vehicle())) {
      Set<String> here = new HashSet<>();
      for (Step step : Walker.walk(plan.guide(), build)) {
        if (step.kind() == StepKind.CAUTION) {
          String id = step.id().replaceFirst("/\\d+$", "");
          assertThat(here.add(id)).as("%s said twice to %s", id, build).isTrue();
        }
      }
      said.addAll(here);
    }
    assertThat(said)
        .contains(
            "caution/general",
            "caution/battery",
            "caution/engine-bay",
            "caution/underneath",
            "caution/chafing",
            "caution/restraint",
            "caution/wet",
            "caution/fuses",
            "caution/for-good",
            "caution/splice",
            "caution/crimp",
            "caution/parked",
            "caution/power-on")
        .doesNotContain("caution/high-voltage", "caution/moving");
    assertThat(said.contains("caution/pipes")).isEqualTo(kit.equals(Demo.COMFORT));
    assertThat(said.contains("caution/heat")).isEqualTo(kit.equals(Demo.COMFORT));
  }

  /**
   * What the design does on a build, read off case by case, against what the guide has measured.
   */
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void measuresAndTriesWhatTheKitWires(String kit) {
    KitOrder order = Demo.order(kit);
    Plan plan = Demo.plan(kit);
    List<NeedAt> needs = Needs.of(order);
    Set<String> everTaken = new TreeSet<>();
    for (Map<String, String> build : AllBuilds.of(order.vehicle())) {
      Set<String> wired = wired(plan, build);
      Set<String> wanted = new TreeSet<>();
      for (NeedAt need : needs) {
        if (wired.contains(need.id())) {
          wanted.add(
              (need.need().kind() == NeedKind.GROUND ? "drop-ground/" : "drop-feed/") + need.id());
        }
        boolean added =
            wired.contains(need.id()) || grounds(need, needs).stream().anyMatch(wired::contains);
        if (need.need().kind() != NeedKind.GROUND && added) {
          wanted.add("works/" + need.id());
          wanted.add("voltage/" + need.id());
          wanted.add("works-together");
        }
      }
      Set<String> taken = new TreeSet<>();
      for (Step step : Walker.walk(plan.guide(), build)) {
        for (Reading reading : step.readings()) {
          if (reading.when().holds(build)) {
            String id = reading.id();
            boolean further = id.startsWith("drop-") && id.split("/").length == 5;
            assertThat(taken.add(further ? id.replaceFirst("/\\d+$", "") : id)).isTrue();
          }
        }
      }
      everTaken.addAll(taken);
      assertThat(taken.stream().filter(it -> it.matches("(drop-feed|drop-ground|voltage|works).*")))
          .as("%s", build)
          .containsExactlyInAnyOrderElementsOf(wanted);
      assertThat(taken)
          .contains(
              "rest-voltage",
              "key-off-before",
              "key-off-after",
              "faults-before",
              "faults-after",
              "no-new-faults",
              "others-work");
    }
    assertThat(everTaken).anyMatch(it -> it.startsWith("short/"));
  }

  /** Nobody needs to know more than was asked to tell which values to take. */
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void answersTellWhichValuesToTake(String kit) {
    Plan plan = Demo.plan(kit);
    Map<String, Boolean> told = new HashMap<>();
    for (Map<String, String> build : AllBuilds.of(Demo.order(kit).vehicle())) {
      Map<String, String> answers = new TreeMap<>();
      for (Step step : Walker.walk(plan.guide(), build)) {
        step.ask().ifPresent(ask -> answers.put(ask.trait(), build.getOrDefault(ask.trait(), "")));
        for (Reading reading : step.readings()) {
          boolean take = reading.when().holds(build);
          Boolean before = told.putIfAbsent(reading.id() + answers, take);
          assertThat(before == null || before == take).as("%s of %s", reading.id(), build).isTrue();
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void everyBandSaysWhereItComesFrom(String kit) {
    Set<String> ids = new HashSet<>();
    List<Reading> all =
        Demo.plan(kit).guide().steps().stream().flatMap(it -> it.readings().stream()).toList();
    for (Reading reading : all) {
      assertThat(ids.add(reading.id())).as("%s", reading.id()).isTrue();
      assertThat(reading.outside()).as("%s", reading.id()).isNotBlank();
      assertThat(reading.source().isBlank())
          .as("%s", reading.id())
          .isEqualTo(reading.kind() != ReadingKind.NUMBER);
      if (reading.id().startsWith("drop-")) {
        assertThat(reading.source()).contains("limit ").contains("; reckoned at worst ");
        double worstV =
            Double.parseDouble(reading.source().replaceAll(".*at worst ([0-9.]+) V", "$1"));
        assertThat(worstV)
            .isPositive()
            .isLessThanOrEqualTo(reading.band().orElseThrow().high().orElseThrow());
      }
    }
  }

  /**
   * Restraint parts are covered and wire sides shut before power is on again; pins stay in reach.
   */
  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void powerComesOnWithDangerousOpeningsClosed(String kit) {
    KitOrder order = Demo.order(kit);
    boolean stillOpen = false;
    for (Map<String, String> build : AllBuilds.of(order.vehicle())) {
      Set<String> open = new TreeSet<>();
      for (Step step : Walker.walk(Demo.plan(kit).guide(), build)) {
        Act act = step.act().orElse(null);
        if (act instanceof Act.Open it) {
          open.add(it.opening());
        } else if (act instanceof Act.Close it) {
          open.remove(it.opening());
        } else if (act instanceof Act.Reconnect) {
          assertThat(open)
              .doesNotContain(
                  "left-seat",
                  "seat-block-cover",
                  "b-pillar-trim",
                  "rear-trim",
                  "rear-block-bracket");
          stillOpen |= open.contains("floor-cover") || open.contains("bumper-step");
        }
      }
      assertThat(open).isEmpty();
    }
    assertThat(stillOpen).isTrue();
  }

  private static Set<String> wired(Plan plan, Map<String, String> build) {
    Set<String> cases =
        plan.cases().stream()
            .filter(it -> it.when().holds(build))
            .map(Case::id)
            .collect(Collectors.toSet());
    Set<String> wired = new TreeSet<>();
    for (Lead lead : plan.design().leads()) {
      for (LeadEnd end : List.of(lead.a(), lead.b())) {
        for (EndUse use : end.uses()) {
          boolean used =
              !(use.landing() instanceof Landing.Parked)
                  && use.cases().stream().anyMatch(cases::contains);
          if (used) {
            wired.addAll(needs(plan, lead, cases));
          }
        }
      }
    }
    return wired;
  }

  // A lead that feeds a joint serves only the pins whose own leads are in use.
  private static List<String> needs(Plan plan, Lead lead, Set<String> cases) {
    List<String> needs = new ArrayList<>();
    for (String need : lead.needs()) {
      boolean own =
          plan.design().leads().stream()
              .filter(it -> it.needs().equals(List.of(need)))
              .allMatch(
                  it ->
                      List.of(it.a(), it.b()).stream()
                          .flatMap(end -> end.uses().stream())
                          .anyMatch(
                              use ->
                                  !(use.landing() instanceof Landing.Parked)
                                      && use.cases().stream().anyMatch(cases::contains)));
      if (own || lead.needs().size() == 1) {
        needs.add(need);
      }
    }
    return needs;
  }

  // The demo's equipment: by the pin named, else the one ground of the plug.
  private static List<String> grounds(NeedAt need, List<NeedAt> needs) {
    return needs.stream()
        .filter(it -> it.need().kind() == NeedKind.GROUND)
        .filter(it -> it.equipment().equals(need.equipment()) && it.plug().equals(need.plug()))
        .filter(
            it ->
                need.need()
                    .returnsBy()
                    .map(pin -> pin.equals(it.plug().id() + " " + it.pin().cavity()))
                    .orElse(
                        need.equipment().id().startsWith("trailer")
                            ? it.pin().cavity().equals("3")
                            : true))
        .map(NeedAt::id)
        .toList();
  }
}
