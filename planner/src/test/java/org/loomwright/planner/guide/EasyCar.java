package org.loomwright.planner.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.kit.Mount;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Opening;
import org.loomwright.model.vehicle.Section;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.fixture.Bits;
import org.loomwright.planner.fixture.Draw;
import org.loomwright.planner.fixture.VehicleBuilder;
import org.loomwright.planner.plan.With;

/**
 * Draws small orders that mostly can be served: the factory's wires are those the equipment needs,
 * and a second fuse block always has a slot left.
 */
public final class EasyCar {
  private final Draw draw;
  private final VehicleBuilder builder = new VehicleBuilder();
  private final List<Trait> traits;
  private int unknown = 2;

  private EasyCar(long seed) {
    draw = new Draw(seed);
    draw.traits(builder, draw.number(2, 4));
    draw.rules(builder);
    traits = builder.traits();
  }

  /** An order of at most 2^6 builds. */
  public static KitOrder of(long seed) {
    return new EasyCar(seed).order();
  }

  private KitOrder order() {
    connector("k1", "middle");
    connector("k2", "rear");
    builder.add(block("b", "front", this::maybe));
    builder.add(block("c", "middle", Condition::always));
    builder.add(Bits.stud("g1", 1, 12, 200, false));
    for (String connector : List.of("k1", "k2")) {
      for (String cavity : List.of("1", "2", "3")) {
        if (draw.chance(40)) {
          circuit(connector, cavity);
        }
      }
    }
    Vehicle vehicle =
        With.changed(
            builder.build(),
            "openings",
            List.of(
                opening("flap", List.of()),
                opening("cover", List.of("flap")),
                opening("lid", List.of())));
    List<Mount> mounts =
        List.of(
            Bits.on("e", "p", "k1"),
            draw.chance(70) ? Bits.on("e", "q", "k2") : Bits.at("e", "q", "rear"));
    Equipment equipment = Bits.equipment("e", Bits.plug("p", pins("q")), Bits.plug("q", pins("p")));
    return Bits.order(vehicle, List.of(equipment), mounts);
  }

  private Pin[] pins(String partner) {
    List<Pin> pins = new ArrayList<>();
    pins.add(
        Bits.pin(
            "1",
            draw.chance(40)
                ? Bits.supply("30", 2, partner + " 1")
                : Bits.supply("30", draw.number(1, 5))));
    pins.add(Bits.pin("2", Bits.ground(draw.number(1, 5))));
    if (draw.chance(50)) {
      pins.add(Bits.pin("3", Bits.supply("15", 1)));
    }
    return pins.toArray(Pin[]::new);
  }

  private void connector(String id, String place) {
    List<CavityFact> facts = new ArrayList<>();
    for (String cavity : List.of("1", "2", "3")) {
      if (draw.chance(10)) {
        facts.add(Bits.blocked(cavity, condition()));
      } else if (draw.chance(40)) {
        facts.add(
            new CavityFact(
                cavity,
                Optional.of(Condition.always()),
                Optional.empty(),
                Optional.of(Bits.tell()),
                Optional.empty()));
      }
    }
    builder.add(
        With.changed(
            Bits.connector(
                id,
                place,
                draw.chance(50) ? Optional.of(condition()) : Optional.empty(),
                facts.toArray(CavityFact[]::new)),
            "openings",
            draw.chance(60) ? List.of(draw.one(List.of("lid", "cover"))) : List.of()));
  }

  private FuseBlock block(String id, String place, java.util.function.Supplier<Condition> fact) {
    List<Section> sections = new ArrayList<>();
    List<Slot> slots = new ArrayList<>();
    for (String feed : List.of("30", "15")) {
      Section section = Bits.section("s" + feed, feed, fact.get(), 60, 10);
      Tell live =
          new Tell(
              TellHow.MEASURE_LIVE,
              place,
              draw.chance(50) ? List.of("flap") : List.of(),
              TimeSpan.of("2 min"),
              "What does the meter read?",
              Map.of(),
              List.of("multimeter"));
      sections.add(draw.chance(60) ? With.changed(section, "tell", Optional.of(live)) : section);
      for (int i = 1; i <= 4; i++) {
        slots.add(
            Bits.slot("f" + feed + "-" + i, "s" + feed, i == 1 ? fact.get() : Condition.always()));
      }
    }
    FuseBlock block = With.changed(Bits.block(id, sections, slots), "place", place);
    block =
        With.changed(
            block,
            "openings",
            draw.chance(60) ? List.of(draw.one(List.of("lid", "cover"))) : List.of());
    return draw.chance(60)
        ? With.changed(block, "recipe", With.changed(block.recipe(), "fillUndo", Undo.SPECIAL_TOOL))
        : block;
  }

  private void circuit(String connector, String cavity) {
    boolean ground = cavity.equals("2");
    String feed = ground ? "31" : cavity.equals("1") ? "30" : "15";
    List<String> to = new ArrayList<>(List.of("cavity " + connector + " " + cavity));
    if (!ground && draw.chance(40)) {
      to.add("unit lamp");
    }
    builder.add(
        Bits.circuit(
            "w" + connector + cavity,
            ground ? CircuitKind.GROUND : CircuitKind.SUPPLY,
            Optional.of(feed),
            ground ? "ground g1" : draw.one(List.of("slot b f" + feed + "-1", "unit computer")),
            to,
            "2.5 mm²",
            maybe(),
            ground ? Optional.empty() : Optional.of(Bits.amps(20)),
            ground ? Optional.empty() : Optional.of(Bits.amps(draw.number(0, 3))),
            draw.chance(50) ? List.of(draw.one(List.of("middle", "rear"))) : List.of(),
            false));
  }

  private static Opening opening(String id, List<String> behind) {
    return new Opening(
        id,
        "the " + id,
        "middle",
        TimeSpan.of("1 min"),
        TimeSpan.of("1 min"),
        behind,
        List.of(),
        Optional.empty(),
        false);
  }

  private Condition condition() {
    return draw.condition(traits);
  }

  private Condition maybe() {
    if (unknown > 0 && draw.chance(15)) {
      unknown--;
      return Condition.unknown();
    }
    return condition();
  }
}
