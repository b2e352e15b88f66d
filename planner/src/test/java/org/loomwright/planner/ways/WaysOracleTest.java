package org.loomwright.planner.ways;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.WayKind;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.SplicePolicy;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.fixture.CarDraw;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.Facts;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.route.Routes;

/** The ways and where they hold, against the documents read build by build. */
class WaysOracleTest {
  @Property(tries = 150, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void waysHoldWhereTheDocumentsAllowThem(@ForAll long seed) {
    KitOrder order = CarDraw.of(seed).order();
    Vehicle vehicle = order.vehicle();
    Builds builds = Builds.of(vehicle);
    Set<Map<String, String>> all = AllBuilds.of(vehicle);
    Map<Map<String, String>, Region> points = AllBuilds.points(builds, all);
    boolean some = false;
    for (List<Way> ways : find(order, builds).values()) {
      for (Way way : ways) {
        Set<Map<String, String>> inside = AllBuilds.of(way.when(), points);
        for (Map<String, String> build : all) {
          boolean allowed =
              way.kind() == WayKind.ALREADY_WIRED
                  ? wiredAndAlive(vehicle, way, build)
                  : way.leads().stream()
                      .allMatch(
                          lead ->
                              free(vehicle, way.need(), lead.a(), build)
                                  && free(vehicle, way.need(), lead.b(), build));
          assertThat(inside.contains(build)).as("%s on %s", way.id(), build).isEqualTo(allowed);
        }
        some |= !inside.isEmpty() && inside.size() < all.size();
      }
    }
    Statistics.label("a way holds on some builds only")
        .collect(some)
        .coverage(c -> c.check(true).percentage(p -> p > 60));
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void everyWayThatTheDocumentsOfferIsFoundOnce(@ForAll long seed) {
    KitOrder order = CarDraw.of(seed).order();
    Vehicle vehicle = order.vehicle();
    find(order, Builds.of(vehicle))
        .forEach(
            (need, ways) -> {
              List<String> expected = new ArrayList<>();
              for (String pin : pinKeys(order, need)) {
                if (need.need().kind() == NeedKind.GROUND) {
                  vehicle.grounds().forEach(it -> expected.add(pin + " > ground " + it.id()));
                } else {
                  for (FuseBlock block : vehicle.fuseBlocks()) {
                    for (Slot slot : block.slots()) {
                      if (need.need()
                          .feed()
                          .equals(block.section(slot.section()).map(it -> it.feed()))) {
                        expected.add("slot " + block.id() + " " + slot.id() + " > " + pin);
                      }
                    }
                  }
                }
                for (Circuit circuit : vehicle.circuits()) {
                  if (need.need().kind() != NeedKind.GROUND
                      && circuit.kind().name().equals(need.need().kind().name())
                      && circuit.feed().equals(need.need().feed())) {
                    circuit
                        .reachedAt()
                        .forEach(
                            place ->
                                expected.add(
                                    "circuit " + circuit.id() + " at " + place + " > " + pin));
                  }
                }
              }
              assertThat(
                      ways.stream().flatMap(it -> it.leads().stream()).map(LeadDraft::key).toList())
                  .containsExactlyInAnyOrderElementsOf(expected);
              assertThat(ways.stream().map(Way::id).toList()).doesNotHaveDuplicates();
            });
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void flaggedWaysAreForbiddenAndNoOthers(@ForAll long seed) {
    KitOrder order = CarDraw.of(seed).order();
    boolean flaggedSome = false;
    for (List<Way> ways : find(order, Builds.of(order.vehicle())).values()) {
      for (Way way : ways) {
        boolean flagged = way.leads().stream().anyMatch(lead -> flagged(order, way, lead));
        if (flagged) {
          assertThat(way.forbidden()).as(way.id()).isPresent();
        } else {
          way.forbidden()
              .ifPresent(
                  why -> assertThat(why).as(way.id()).startsWith("no allowed run leads from"));
          boolean island =
              way.leads().stream()
                  .anyMatch(
                      it -> it.a().place().equals("island") != it.b().place().equals("island"));
          assertThat(way.forbidden().isPresent()).as(way.id()).isEqualTo(island);
        }
        flaggedSome |= flagged;
      }
    }
    Statistics.label("some way is forbidden by a flag")
        .collect(flaggedSome)
        .coverage(c -> c.check(true).percentage(p -> p > 30));
  }

  private static Map<NeedAt, List<Way>> find(KitOrder order, Builds builds) {
    return new WayFinder(
            order,
            new Facts(order.vehicle(), builds),
            new LeadCosts(order, new Routes(order.vehicle(), order.rules())))
        .find(Needs.of(order));
  }

  private static List<String> pinKeys(KitOrder order, NeedAt need) {
    String own = "housing " + need.equipment().id() + "/" + need.plug().id();
    String cavity = need.pin().cavity();
    Optional<Connector> connector = need.mount().connector().flatMap(order.vehicle()::connector);
    if (connector.isEmpty()) {
      return List.of(own + " " + cavity);
    }
    String there = "cavity " + connector.get().id() + " " + cavity;
    boolean everywhere =
        AllBuilds.of(order.vehicle()).stream().allMatch(it -> present(connector.get(), it));
    return everywhere ? List.of(there) : List.of(there, own + " " + cavity);
  }

  private static boolean present(Connector connector, Map<String, String> build) {
    return holds(connector.presentWhen(), build, true);
  }

  private static boolean holds(
      Optional<Condition> condition, Map<String, String> build, boolean otherwise) {
    return condition.map(it -> it.holds(build)).orElse(otherwise);
  }

  private static boolean wiredAndAlive(Vehicle vehicle, Way way, Map<String, String> build) {
    Circuit circuit = way.host().orElseThrow();
    Connector connector = way.need().mount().connector().flatMap(vehicle::connector).orElseThrow();
    return circuit.presentWhen().holds(build)
        && present(connector, build)
        && alive(vehicle, circuit, build)
        && circuit.to().stream()
            .map(Spot::text)
            .anyMatch(("cavity " + connector.id() + " " + way.need().pin().cavity())::equals);
  }

  // Whether a lead may end there on a build.
  private static boolean free(
      Vehicle vehicle, NeedAt need, Touch touch, Map<String, String> build) {
    if (touch instanceof Touch.AtCavity at) {
      Connector connector = vehicle.connector(at.connector()).orElseThrow();
      String cavity = "cavity " + at.connector() + " " + at.cavity();
      return present(connector, build)
          && connector.cavities().stream()
              .filter(it -> it.cavity().equals(at.cavity()))
              .noneMatch(it -> holds(it.blockedWhen(), build, false))
          && vehicle.circuits().stream()
              .filter(it -> it.presentWhen().holds(build))
              .flatMap(it -> it.to().stream())
              .map(Spot::text)
              .noneMatch(cavity::equals);
    } else if (touch instanceof Touch.AtHousing) {
      return need.mount()
          .connector()
          .flatMap(vehicle::connector)
          .map(it -> !present(it, build))
          .orElse(true);
    } else if (touch instanceof Touch.AtSlot at) {
      String slot = "slot " + at.block() + " " + at.slot();
      return fed(vehicle, at.block(), at.slot(), build)
          && vehicle.circuits().stream()
              .filter(it -> it.presentWhen().holds(build))
              .noneMatch(it -> it.from().text().equals(slot));
    } else if (touch instanceof Touch.AtCircuit at) {
      Circuit circuit = vehicle.circuit(at.circuit()).orElseThrow();
      return circuit.presentWhen().holds(build) && alive(vehicle, circuit, build);
    }
    return true;
  }

  private static boolean alive(Vehicle vehicle, Circuit circuit, Map<String, String> build) {
    if (circuit.from() instanceof Spot.OfSlot slot) {
      return fed(vehicle, slot.block(), slot.slot(), build);
    }
    return !(circuit.from() instanceof Spot.Loose);
  }

  private static boolean fed(
      Vehicle vehicle, String blockId, String slotId, Map<String, String> build) {
    FuseBlock block = vehicle.fuseBlock(blockId).orElseThrow();
    Slot slot = block.slot(slotId).orElseThrow();
    return slot.metalWhen().holds(build)
        && block.section(slot.section()).orElseThrow().fedWhen().holds(build);
  }

  private static boolean flagged(KitOrder order, Way way, LeadDraft lead) {
    return flagged(order, way, lead.a()) || flagged(order, way, lead.b());
  }

  private static boolean flagged(KitOrder order, Way way, Touch touch) {
    Vehicle vehicle = order.vehicle();
    if (touch instanceof Touch.AtCavity at) {
      return vehicle.connector(at.connector()).orElseThrow().restraint();
    } else if (touch instanceof Touch.AtGround at) {
      return vehicle.ground(at.ground()).orElseThrow().sensor();
    } else if (touch instanceof Touch.AtCircuit at) {
      Circuit circuit = vehicle.circuit(at.circuit()).orElseThrow();
      double fuseA = circuit.fuse().map(it -> it.amperes()).orElse(0.0);
      double loadA = circuit.load().map(it -> it.amperes()).orElse(0.0);
      double most = circuit.from() instanceof Spot.OfSlot ? 0.6 : 0.8;
      return vehicle.splicePolicy() == SplicePolicy.NONE
          || circuit.restraint()
          || way.need().need().ownFuse()
          || circuit.fuse().isEmpty()
          || circuit.load().isEmpty()
          || loadA + way.need().currentA() > most * fuseA + 1e-6
          || way.need().need().fuseAtMost().map(it -> fuseA > it.amperes()).orElse(false);
    }
    return false;
  }
}
