package org.loomwright.planner.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.fixture.Bits;
import org.loomwright.planner.fixture.Draw;
import org.loomwright.planner.fixture.VehicleBuilder;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.ways.LeadDraft;
import org.loomwright.planner.ways.Use;
import org.loomwright.planner.ways.Way;

/**
 * A small choice at random: two to four needs, three slots on two sections, two circuits, two
 * studs, little room. Some needs share a joint; some pins want the same cavity.
 */
final class Puzzle {
  final Vehicle vehicle;
  final Builds builds;
  final Map<NeedAt, List<Way>> ways = new LinkedHashMap<>();
  private final Draw draw;
  private final Map<String, Double> leadCosts = new HashMap<>();
  private final Map<String, Double> limits = new TreeMap<>();

  Puzzle(long seed) {
    draw = new Draw(seed);
    VehicleBuilder builder = draw.traits(new VehicleBuilder(), draw.number(1, 6));
    draw.rules(builder);
    builder.add(Bits.connector("k1", "rear", Optional.empty()));
    builder.add(Bits.connector("k2", "middle", Optional.empty()));
    vehicle = builder.build();
    builds = Builds.of(vehicle);
    limits.put("section A", draw.number(50, 200) / 10.0);
    limits.put("section B", draw.number(50, 200) / 10.0);
    limits.put("circuit c1", draw.number(40, 120) / 10.0);
    limits.put("stud g1 lugs", (double) draw.number(1, 2));
    limits.put("stud g1 current", draw.number(50, 200) / 10.0);
    List<NeedAt> needs = needs();
    List<List<NeedAt>> shared = Needs.shared(needs);
    for (NeedAt need : needs) {
      List<Way> found = new ArrayList<>();
      Optional<List<NeedAt>> group = shared.stream().filter(it -> it.contains(need)).findFirst();
      own(need, found);
      group.ifPresent(it -> overJoint(need, it.get(0).id(), found));
      ways.put(need, found);
    }
  }

  double leadCost(LeadDraft lead) {
    return leadCosts.computeIfAbsent(
        lead.key(), key -> draw.number(1, 12) * 0.5 + draw.number(0, 3) * 0.0617);
  }

  static double openingCost(String opening) {
    return opening.equals("trim") ? 2.5 : 1.25;
  }

  private List<NeedAt> needs() {
    boolean share = draw.chance(40);
    Plug first =
        Bits.plug(
            "p",
            Bits.pin("1", share ? Bits.supply("30", amps(), "p 2") : Bits.supply("30", amps())),
            Bits.pin("2", Bits.supply("30", amps())));
    List<Pin> more = new ArrayList<>();
    for (int i = draw.number(0, 2); i > 0; i--) {
      more.add(Bits.pin(String.valueOf(i), Bits.supply("30", amps())));
    }
    Equipment equipment = Bits.equipment("e", first, Bits.plug("q", more.toArray(Pin[]::new)));
    return Needs.of(
        Bits.order(
            vehicle,
            List.of(equipment),
            List.of(Bits.on("e", "p", "k1"), Bits.on("e", "q", draw.chance(25) ? "k1" : "k2"))));
  }

  private double amps() {
    return draw.number(10, 90) / 10.0;
  }

  private void own(NeedAt need, List<Way> found) {
    Touch pin = pin(need);
    if (draw.chance(20)) {
      found.add(way(need, WayKind.ALREADY_WIRED, "wired", List.of(), List.of()));
    }
    for (int slot = 1; slot <= 3; slot++) {
      if (draw.chance(60)) {
        found.add(
            way(
                need,
                WayKind.OTHER_SLOT,
                "slot " + slot,
                List.of(new LeadDraft(CircuitKind.SUPPLY, slot(slot), pin)),
                List.of(use(section(slot), need.currentA()))));
      }
    }
    if (draw.chance(30)) {
      found.add(
          way(
              need,
              WayKind.SPLICE,
              "splice c1",
              List.of(new LeadDraft(CircuitKind.SUPPLY, new Touch.AtCircuit("c1", "middle"), pin)),
              List.of(use("circuit c1", need.currentA()), use("section A", need.currentA()))));
    }
    if (draw.chance(30)) {
      found.add(
          way(
              need,
              WayKind.GROUND_STUD,
              "stud g1",
              List.of(new LeadDraft(CircuitKind.GROUND, pin, new Touch.AtGround("g1", "rear"))),
              List.of(use("stud g1 lugs", 1), use("stud g1 current", need.currentA()))));
    }
  }

  private void overJoint(NeedAt need, String joint, List<Way> found) {
    Touch at = new Touch.AtJoint(joint, "middle");
    for (int slot = 1; slot <= 3; slot++) {
      if (draw.chance(70)) {
        found.add(
            way(
                need,
                WayKind.OTHER_SLOT,
                "shared slot " + slot,
                List.of(
                    new LeadDraft(CircuitKind.SUPPLY, slot(slot), at),
                    new LeadDraft(CircuitKind.SUPPLY, at, pin(need))),
                List.of(use(section(slot), need.currentA()))));
      }
    }
  }

  private Way way(NeedAt need, WayKind kind, String name, List<LeadDraft> leads, List<Use> uses) {
    Region when =
        draw.chance(45) ? builds.possible() : builds.where(draw.condition(vehicle.traits()));
    return new Way(
        need.id() + " > " + name,
        need,
        kind,
        name,
        List.of(),
        when,
        leads,
        uses,
        leads.isEmpty() ? List.of() : openings(),
        draw.number(0, 12) * 0.25,
        Undo.EASILY,
        Optional.empty(),
        Optional.empty(),
        draw.chance(8) ? Optional.of("not wanted") : Optional.empty());
  }

  private List<String> openings() {
    return Stream.of("trim", "cover").filter(it -> draw.chance(30)).toList();
  }

  private Use use(String resource, double amount) {
    return new Use(resource, amount, limits.getOrDefault(resource, 0.0), resource);
  }

  private static Touch pin(NeedAt need) {
    return new Touch.AtCavity(
        need.mount().connector().orElseThrow(), need.pin().cavity(), need.place());
  }

  private static Touch slot(int number) {
    return new Touch.AtSlot("b", String.valueOf(number), "front");
  }

  private static String section(int slot) {
    return slot < 3 ? "section A" : "section B";
  }
}
