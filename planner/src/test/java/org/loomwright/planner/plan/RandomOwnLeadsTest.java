package org.loomwright.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.PartLine;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.OwnLead;
import org.loomwright.planner.fixture.AllBuilds;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Random leads of the user's own in the demo kits: planned, proven or told, and counted right. */
class RandomOwnLeadsTest {
  private static final List<String> CONDITIONS =
      List.of(
          "tow-prep = yes",
          "tow-prep = no",
          "step-before = left",
          "body = panel and rear-feed = yes",
          "floor-ground = no or cool-box = yes");
  private static final List<String> COLOURS = List.of("red", "violet", "brown", "white/blue");
  private static final List<String> SIZES = List.of("0.5 mm²", "1.5 mm²", "2.5 mm²", "10 mm²");
  private static final List<String> CURRENTS = List.of("0.1 A", "1 A", "5 A", "12 A", "60 A");
  private static final List<String> PLACES =
      List.of("left-seat-box", "rear-quarter", "cabin-floor", "left-step", "rear-bumper");

  @Property(tries = 16, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void arePlannedAndProvenOrTold(@ForAll long seed) {
    Random random = new Random(seed);
    String kit = random.nextBoolean() ? Demo.COMFORT : Demo.TRAILER;
    Optional<KitOrder> order = Optional.empty();
    for (int refused = 0; order.isEmpty(); refused++) {
      assertThat(refused).isLessThan(100);
      order = order(kit, random);
    }
    Plan plan = Planner.plan(order.get());
    boolean told =
        plan.checks().stream()
            .anyMatch(it -> it.id().startsWith("own/") && it.verdict() == Verdict.FAILS);
    Statistics.label("told").collect(told);
    // Beside what can't be made or landed, a lead may be too hot in its bundle, or leave a need no
    // room on its stud.
    boolean sound = plan.worst() != Verdict.FAILS && plan.unserved().isEmpty();
    assertThat(plan.proof().proven() ? !told : !sound)
        .as("%s %s", order.get().kit().ownLeads(), plan.proof().counterexamples())
        .isTrue();
    for (OwnLead own : order.get().kit().ownLeads()) {
      boolean made = plan.design().leads().stream().anyMatch(it -> is(it, own));
      assertThat(made || told).as("%s is made or told of", own).isTrue();
    }
    totals(plan);
    if (plan.proof().proven()) {
      eachBuild(order.get(), plan);
    }
  }

  private static boolean is(Lead lead, OwnLead own) {
    return lead.own().equals(Optional.of(own.id()));
  }

  // What is cut is what is bought: metres of each wire are those of the leads.
  private static void totals(Plan plan) {
    for (PartNumber number : plan.design().partNumbers()) {
      for (PartLine line : number.parts()) {
        double cutM =
            plan.design().leads().stream()
                .filter(it -> number.leads().contains(it.id()) && it.wire().equals(line.part()))
                .mapToDouble(it -> it.cutMm() / 1000)
                .sum();
        if (line.part().startsWith("W-")) {
          assertThat(line.quantity()).as(line.part()).isCloseTo(cutM, within(1e-9));
        }
      }
    }
  }

  private static void eachBuild(KitOrder order, Plan plan) {
    for (Map<String, String> build : AllBuilds.of(order.vehicle())) {
      Set<String> taken = new HashSet<>();
      List<Step> steps = Walker.walk(plan.guide(), build);
      for (OwnLead own : order.kit().ownLeads()) {
        Lead lead = plan.design().leads().stream().filter(it -> is(it, own)).findFirst().get();
        boolean laid =
            steps.stream().anyMatch(it -> it.act().equals(Optional.of(new Act.Lay(lead.id()))));
        assertThat(laid)
            .as("%s on %s", own, build)
            .isEqualTo(own.when().map(it -> it.holds(build)).orElse(true));
      }
      for (Step step : steps) {
        if (step.act().isPresent()
            && step.act().get() instanceof Act.Land land
            && land.landing() instanceof Landing.InCavity in) {
          assertThat(taken.add(in.connector() + " " + in.cavity())).as("%s", step).isTrue();
        }
      }
    }
  }

  private static Optional<KitOrder> order(String kit, Random random) {
    int count = 1 + random.nextInt(3);
    try {
      return Optional.of(
          Demo.copy()
              .edit(
                  kit + ".kit.json",
                  tree -> {
                    ArrayNode leads = tree.putArray("ownLeads");
                    for (int i = 0; i < count; i++) {
                      draw(leads.addObject(), kit, i, random);
                    }
                  })
              .kit(kit));
    } catch (IllegalStateException refused) {
      assertThat(refused.getMessage()).contains("ownLeads").doesNotContain("Exception");
      return Optional.empty();
    }
  }

  private static void draw(ObjectNode lead, String kit, int number, Random random) {
    String from = end(kit, random);
    String to = end(kit, random);
    lead.put("id", "own-" + number).put("name", "own " + number).put("reason", "drawn by lot");
    lead.put("from", from).put("to", to).put("current", any(CURRENTS, random));
    boolean loose = from.startsWith("loose") && to.startsWith("loose");
    if (from.contains("tow-socket") || to.contains("tow-socket")) {
      lead.put("when", "tow-prep = yes");
    } else if (!loose && random.nextBoolean()) {
      lead.put("when", any(CONDITIONS, random));
    }
    if (random.nextInt(4) == 0) {
      lead.put("size", any(SIZES, random));
    }
    if (random.nextInt(3) == 0) {
      lead.put("colour", any(COLOURS, random));
    }
  }

  private static String end(String kit, Random random) {
    List<String> ends = new ArrayList<>();
    PLACES.forEach(it -> ends.add("loose " + it));
    ends.addAll(List.of("ground cross-ground", "ground quarter-ground", "ground rear-ground"));
    if (kit.equals(Demo.COMFORT)) {
      ends.addAll(
          List.of(
              "pin heater main 5",
              "pin heater main 6",
              "cavity floor 5",
              "cavity floor 6",
              "cavity tow-socket 11",
              "cavity tow-socket 12",
              "pin heater main 1"));
    } else {
      ends.addAll(
          List.of(
              "pin trailer-socket socket 12",
              "cavity floor 3",
              "cavity floor 5",
              "cavity tow-socket 12"));
    }
    return any(ends, random);
  }

  private static String any(List<String> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }
}
