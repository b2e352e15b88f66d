package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.CurrentLimit;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.parts.Seal;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.WireSize;
import org.loomwright.planner.plan.Demo;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.plan.With;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Ends that fit in the demo, and ends with one fault each, which fail by name. */
class EndChecksTest {
  private static final KitOrder ORDER = Demo.order(Demo.COMFORT);
  private static final List<Lead> LEADS = Demo.plan(Demo.COMFORT).design().leads();

  @ParameterizedTest
  @ValueSource(strings = {Demo.COMFORT, Demo.TRAILER})
  void everyEndOfTheDemoIsJudgedAndFits(String kit) {
    List<Lead> leads = Demo.plan(kit).design().leads();
    List<Check> checks = checks(Demo.order(kit), leads);
    assertThat(checks).allMatch(it -> it.verdict() == Verdict.HOLDS);
    assertThat(checks).allSatisfy(it -> assertThat(it.trace()).isNotEmpty());
    for (Lead lead : leads) {
      for (LeadEnd end : List.of(lead.a(), lead.b())) {
        String side = end == lead.a() ? "a" : "b";
        for (EndUse use : end.uses()) {
          if (use.landing() instanceof Landing.InCavity in) {
            String at = lead.id() + side + "/" + in.connector() + "/" + in.cavity();
            assertThat(ids(checks))
                .contains(
                    "terminal/" + at,
                    "fit/" + at + "/conductor",
                    "fit/" + at + "/insulation",
                    "fit/" + at + "/plating");
            assertThat(ids(checks).contains("fit/" + at + "/seal"))
                .isEqualTo(in.seal().isPresent());
          } else if (use.landing() instanceof Landing.OnGround on) {
            String at = lead.id() + side + "/" + on.ground();
            assertThat(ids(checks))
                .contains("terminal/" + at, "fit/" + at + "/thread", "stud/" + on.ground());
          } else if (use.landing() instanceof Landing.InJoint in) {
            assertThat(ids(checks)).contains("splice/joint/" + in.joint() + "/balance");
          }
        }
      }
    }
  }

  @Test
  void aGoldTerminalAgainstATinMateIsNamedInThePlan() {
    KitOrder gold =
        Demo.copy()
            .item(Demo.PARTS, "terminals", "OV-63-C", it -> it.put("plating", "gold"))
            .kit(Demo.COMFORT);
    Plan plan = Planner.plan(gold);
    List<Check> failing = failing(plan.checks());
    assertThat(failing)
        .isNotEmpty()
        .allSatisfy(
            it -> {
              assertThat(it.name()).isEqualTo("plating of terminal OV-63-C and of the other half");
              assertThat(it.subject()).startsWith("lead L");
              assertThat(it.trace()).extracting(TraceLine::what).contains("gold against tin");
            });
    assertThat(plan.releasable()).isFalse();
  }

  @Test
  void ofTwoTerminalsTheOnePlatedLikeTheOtherHalfIsTaken() {
    KitOrder both =
        Demo.copy()
            .edit(
                Demo.PARTS,
                parts -> {
                  ArrayNode terminals = (ArrayNode) parts.path("terminals");
                  ObjectNode gold = Demo.find(terminals, "id", "OV-63-C").deepCopy();
                  terminals.add(gold.put("id", "OV-63-G").put("plating", "gold"));
                  ObjectNode housing = Demo.find(parts.path("housings"), "id", "OV-6S");
                  ObjectNode cavity = Demo.find(housing.path("cavities"), "number", "1");
                  cavity.withArray("terminals").insert(0, "OV-63-G");
                })
            .kit(Demo.COMFORT);
    Plan plan = Planner.plan(both);
    assertThat(failing(plan.checks())).isEmpty();
    assertThat(plan.design().leads().toString()).contains("OV-63-C").doesNotContain("OV-63-G");
  }

  @Test
  void whatIsNotKnownOfAPlatingIsSaidAndNotJudged() {
    KitOrder unknown =
        Demo.copy()
            .edit(Demo.VAN, van -> van.path("connectors").forEach(it -> remove(it, "matePlating")))
            .edit(Demo.HEATER, heater -> heater.path("plugs").forEach(it -> remove(it, "plating")))
            .kit(Demo.COMFORT);
    List<Check> checks = checks(unknown, LEADS);
    assertThat(checks)
        .filteredOn(it -> it.id().contains("/floor/"))
        .isNotEmpty()
        .noneMatch(it -> it.id().endsWith("/plating"));
    assertThat(checks)
        .filteredOn(it -> it.id().startsWith("terminal/") && it.id().contains("/floor/"))
        .isNotEmpty()
        .allMatch(it -> it.source().endsWith("the plating of the other half is not on file"));
  }

  @Test
  void aSealTooSmallForItsWire() {
    Check fault =
        only(
            parts("seals", Seal::id, "OV-S63C", "insulationMost", Length.of("3.6 mm")),
            "fit/L1b/floor/1/seal");
    assertThat(fault.name()).isEqualTo("insulation in wire seal OV-S63C");
    assertThat(fault.figure()).isEqualTo(3.7);
    assertThat(fault.limit()).isEqualTo(3.6);
    assertThat(fault.margin()).isNegative();
    assertThat(fault.source()).startsWith("from 3.4 to 3.6 mm; ");
  }

  @Test
  void aSealThatIsLeftOut() {
    List<Lead> bare = leads("L1", lead -> With.changed(lead, "b", withoutSeal(lead.b())));
    assertThat(failing(checks(ORDER, bare)))
        .extracting(Check::name)
        .containsExactly("wire seal on terminal OV-63-C");
  }

  @Test
  void aRingOfAnotherThread() {
    Check fault =
        only(parts("rings", Ring::id, "RG-M6-6", "thread", "M8"), "fit/L3b/cross-ground/thread");
    assertThat(fault.name()).isEqualTo("thread of ring RG-M6-6 and of the stud");
    assertThat(fault.trace().get(0).what()).isEqualTo("ring for M8 on a stud M6");
  }

  @Test
  void aRingWithTooMuchCurrent() {
    Check fault =
        only(
            parts("rings", Ring::id, "RG-M6-6", "currentLimit", Optional.of(Current.of("5 A"))),
            "terminal/L3b/cross-ground");
    assertThat(fault.name()).isEqualTo("current through ring RG-M6-6");
    assertThat(fault.limit()).isEqualTo(5);
  }

  @Test
  void aThinWireAgainstAThickOneInASplice() {
    List<Lead> uneven = new ArrayList<>();
    for (Lead lead : LEADS) {
      // The shared feed is made thick, one of its branches thin, and the other is left out.
      if (lead.id().equals("L4")) {
        uneven.add(With.changed(lead, "areaMm2", 6.0));
      } else if (lead.id().equals("L5")) {
        uneven.add(With.changed(lead, "areaMm2", 0.5));
      }
    }
    KitOrder order = parts("splices", Splice::id, "SP-4", "areaMost", WireSize.of("8 mm²"));
    List<Check> faults = failing(checks(order, uneven));
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).id()).isEqualTo("splice/joint/J1/balance");
    assertThat(faults.get(0).name()).isEqualTo("share of the thinner side in the splice");
    assertThat(faults.get(0).figure()).isCloseTo(0.5 / 6.5, within(1e-12));
    assertThat(faults.get(0).limit()).isEqualTo(0.15);
    assertThat(faults.get(0).source()).contains("common practice");
  }

  @Test
  void aTerminalInAPlaceTooHotForItsWire() {
    List<CurrentLimit> table = List.of(point("20 °C", "30 A"), point("60 °C", "6 A"));
    KitOrder hot = parts("terminals", Terminal::id, "OV-63-C", "currentLimits", table);
    List<Check> faults = failing(checks(hot, LEADS));
    assertThat(faults)
        .isNotEmpty()
        .allSatisfy(
            it -> {
              assertThat(it.name()).isEqualTo("current through terminal OV-63-C");
              assertThat(it.trace())
                  .extracting(TraceLine::what)
                  .contains("limit at 20 °C", "limit at 60 °C");
            });
  }

  @Test
  void aTableThatSaysNothingOfThePlaceFails() {
    KitOrder cool =
        parts(
            "terminals", Terminal::id, "OV-63-C", "currentLimits", List.of(point("20 °C", "30 A")));
    assertThat(failing(checks(cool, LEADS)))
        .isNotEmpty()
        .allSatisfy(it -> assertThat(it.source()).contains("says nothing of"));
    // The planner does not choose it either.
    assertThat(Planner.plan(cool).unserved()).isNotEmpty();
  }

  @Test
  void oneLugTooManyOnAStud() {
    KitOrder full =
        Demo.copy()
            .item(Demo.VAN, "grounds", "cross-ground", it -> it.put("lugsMost", 3))
            .kit(Demo.COMFORT);
    Check fault = only(full, "stud/cross-ground");
    assertThat(fault.figure()).isEqualTo(4);
    assertThat(fault.limit()).isEqualTo(3);
    // The heater's ground carries most and lies next to the lug that is there already.
    assertThat(fault.trace().get(1).what())
        .isEqualTo("position of lead L3, counted from the metal");
    assertThat(fault.trace().get(1).value()).isEqualTo(2);
  }

  private static CurrentLimit point(String ambient, String current) {
    return new CurrentLimit(WireSize.of("4 mm²"), Temperature.of(ambient), Current.of(current));
  }

  private static Check only(KitOrder order, String id) {
    List<Check> faults = failing(checks(order, LEADS));
    assertThat(ids(faults)).contains(id);
    Check fault = faults.stream().filter(it -> it.id().equals(id)).findFirst().orElseThrow();
    assertThat(faults).allMatch(it -> it.name().equals(fault.name()));
    return fault;
  }

  private static List<Check> checks(KitOrder order, List<Lead> leads) {
    Checklist list = new Checklist(order.rules().marginalBand().value().fraction());
    new EndChecks(order, leads, list).check();
    return list.checks();
  }

  private static List<Check> failing(List<Check> checks) {
    return checks.stream().filter(it -> it.verdict() == Verdict.FAILS).toList();
  }

  private static List<String> ids(List<Check> checks) {
    return checks.stream().map(Check::id).toList();
  }

  private static <T extends Record> KitOrder parts(
      String list, Function<T, String> id, String part, String component, Object value) {
    KitOrder order = ORDER;
    List<T> changed = new ArrayList<>();
    @SuppressWarnings("unchecked")
    List<T> all =
        (List<T>)
            switch (list) {
              case "seals" -> order.parts().seals();
              case "rings" -> order.parts().rings();
              case "splices" -> order.parts().splices();
              default -> order.parts().terminals();
            };
    for (T it : all) {
      changed.add(id.apply(it).equals(part) ? With.changed(it, component, value) : it);
    }
    return With.changed(order, "parts", With.changed(order.parts(), list, changed));
  }

  private static List<Lead> leads(String id, UnaryOperator<Lead> change) {
    return LEADS.stream().map(it -> it.id().equals(id) ? change.apply(it) : it).toList();
  }

  private static LeadEnd withoutSeal(LeadEnd end) {
    return new LeadEnd(
        end.place(),
        end.uses().stream()
            .map(
                use ->
                    use.landing() instanceof Landing.InCavity in
                        ? With.changed(use, "landing", With.changed(in, "seal", Optional.empty()))
                        : use)
            .toList());
  }

  private static void remove(tools.jackson.databind.JsonNode node, String key) {
    ((ObjectNode) node).remove(key);
  }
}
