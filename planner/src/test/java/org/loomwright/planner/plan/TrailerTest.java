package org.loomwright.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Circuit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The published recommendations of ISO 11446 for the 13-pin socket: 1.5 mm², and 2.5 mm² at
 * contacts 3, 9, 10, 11 and 13; contact 10 behind 20 A at most; returns 3, 11 and 13 not joined.
 */
class TrailerTest {
  private static final String NEED = "trailer-socket/socket/";
  private static final Set<String> RETURNS = Set.of("3", "11", "13");

  private final Plan plan = Demo.plan(Demo.TRAILER);

  @ParameterizedTest
  @CsvSource({
    "1, 1.5", "2, 1.5", "3, 2.5", "4, 1.5", "5, 1.5", "6, 1.5", "7, 1.5", "8, 1.5", "9, 2.5",
    "10, 2.5", "11, 2.5", "13, 2.5"
  })
  void noConductorIsThinnerThanPublished(String contact, double leastMm2) {
    List<Lead> leads = leads(plan, contact);
    assertThat(leads).isNotEmpty();
    assertThat(leads).allSatisfy(it -> assertThat(it.areaMm2()).isGreaterThanOrEqualTo(leastMm2));
    assertThat(checks(plan, "least area/", NEED + contact))
        .hasSameSizeAs(leads)
        .allSatisfy(
            it -> {
              assertThat(it.verdict()).isEqualTo(Verdict.HOLDS);
              assertThat(it.limit()).isEqualTo(leastMm2);
              assertThat(it.source()).contains("ISO 11446");
            });
    // Where the factory wired the contact, its own wire has to do.
    for (Circuit circuit : Demo.order(Demo.TRAILER).vehicle().circuits()) {
      boolean counts =
          plan.ways().stream()
              .anyMatch(
                  way ->
                      way.id().equals(NEED + contact + " > already wired by " + circuit.id())
                          && !way.cases().isEmpty());
      if (counts) {
        assertThat(circuit.wire().areaMm2()).as(circuit.id()).isGreaterThanOrEqualTo(leastMm2);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"9", "10"})
  void theFuseOfThePowerContactsIsAtMostTwentyAmpereInEveryCase(String contact) {
    Set<String> own = new HashSet<>();
    leads(plan, contact).forEach(lead -> own.add(lead.id()));
    for (Case one : plan.cases()) {
      String way = one.ways().getOrDefault(NEED + contact, "");
      if (way.contains("> slot")) {
        List<FuseFit> fuses =
            plan.design().fuses().stream()
                .filter(it -> it.cases().contains(one.id()))
                .filter(it -> it.leads().stream().anyMatch(own::contains))
                .toList();
        assertThat(fuses).as("fuses in case %s", one.id()).hasSize(1);
        assertThat(fuses.get(0).ratingA()).isLessThanOrEqualTo(20);
        // Nothing else hangs on it.
        assertThat(own).containsAll(fuses.get(0).leads());
      }
    }
    assertThat(checks(plan, "fuse limit/", NEED + contact))
        .singleElement()
        .satisfies(
            it -> {
              assertThat(it.figure()).isBetween(9.0, 20.0);
              assertThat(it.limit()).isEqualTo(20);
              assertThat(it.verdict()).isEqualTo(Verdict.HOLDS);
              assertThat(it.source()).contains("ISO 11446");
            });
  }

  @Test
  void theReturnsHaveLeadsOfTheirOwnThatMeetNowhere() {
    for (String contact : RETURNS) {
      for (Lead lead : leads(plan, contact)) {
        assertThat(lead.needs()).containsExactly(NEED + contact);
        for (LeadEnd end : List.of(lead.a(), lead.b())) {
          assertThat(end.uses().stream().map(EndUse::landing))
              .noneMatch(it -> it instanceof Landing.InJoint || it instanceof Landing.IntoCircuit);
        }
        // Two rings on one stud are two ends: the stud itself is where they may meet.
        assertThat(lead.b().asMade()).isInstanceOf(Landing.OnGround.class);
      }
      assertThat(checks(plan, "apart/", NEED + contact))
          .singleElement()
          .satisfies(
              it -> {
                assertThat(it.figure()).isZero();
                assertThat(it.verdict()).isEqualTo(Verdict.HOLDS);
                assertThat(it.source()).contains("ISO 11446");
              });
    }
    assertThat(plan.design().joints()).isEmpty();
    for (Case one : plan.cases()) {
      Set<String> ways = new HashSet<>();
      int returns = 0;
      for (Map.Entry<String, String> way : one.ways().entrySet()) {
        String contact = way.getKey().substring(NEED.length());
        if (RETURNS.contains(contact) && way.getValue().contains("already wired by")) {
          returns++;
          ways.add(way.getValue().substring(way.getValue().indexOf("already")));
        }
      }
      assertThat(ways).as("factory returns in case %s", one.id()).hasSize(returns);
    }
  }

  @Test
  void aCatalogueOfThinWireHasNoWayAndSaysWhy() {
    Plan thin = Planner.plan(thinWire(false));
    assertThat(thin.unserved()).isNotEmpty();
    assertThat(thin.unserved().toString()).contains("no wire on file fits both ends");
    assertThat(thin.releasable()).isFalse();
  }

  @Test
  void thinWireThatFitsItsTerminalsFailsTheLeastArea() {
    Plan thin = Planner.plan(thinWire(true));
    assertThat(thin.releasable()).isFalse();
    List<Check> failing =
        thin.checks().stream()
            .filter(it -> it.id().startsWith("least area/") && it.verdict() == Verdict.FAILS)
            .toList();
    assertThat(failing)
        .isNotEmpty()
        .allSatisfy(
            it -> {
              assertThat(it.figure()).isEqualTo(1);
              assertThat(it.limit()).isIn(1.5, 2.5);
              assertThat(it.source()).contains("ISO 11446");
            });
    assertThat(thin.proof().proven()).isFalse();
  }

  // Only wires of 1 mm² and thinner are on file.
  private static KitOrder thinWire(boolean fits) {
    return Demo.copy()
        .edit(
            Demo.PARTS,
            parts -> {
              ArrayNode wires = (ArrayNode) parts.path("wires");
              for (int i = wires.size() - 1; i >= 0; i--) {
                String size = wires.get(i).path("size").stringValue();
                if (!Set.of("0.5 mm²", "0.75 mm²", "1 mm²").contains(size)) {
                  wires.remove(i);
                }
              }
              for (JsonNode terminal : fits ? parts.path("terminals") : parts.path("none")) {
                ((ObjectNode) terminal).put("wireLeast", "0.5 mm²").put("insulationLeast", "1 mm");
              }
              for (JsonNode ring : fits ? parts.path("rings") : parts.path("none")) {
                ((ObjectNode) ring).put("wireLeast", "0.5 mm²");
              }
            })
        .kit(Demo.TRAILER);
  }

  private static List<Lead> leads(Plan plan, String contact) {
    return plan.design().leads().stream()
        .filter(it -> it.needs().contains(NEED + contact))
        .toList();
  }

  private static List<Check> checks(Plan plan, String sort, String need) {
    return plan.checks().stream()
        .filter(it -> it.id().startsWith(sort) && it.id().endsWith(need))
        .toList();
  }
}
