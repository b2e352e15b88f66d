package org.loomwright.planner.need;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.loomwright.model.design.GapPart;
import org.loomwright.model.design.GapStatus;
import org.loomwright.model.design.NeedGap;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.planner.builds.Builds;
import org.loomwright.planner.fixture.AllBuilds;
import org.loomwright.planner.fixture.CarDraw;

/** The gap of each need against the documents read build by build. */
class GapOracleTest {
  @Property(tries = 250, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void everyBuildHasTheStatusReadFromTheDocuments(@ForAll long seed) {
    CarDraw.Drawn drawn = CarDraw.of(seed);
    Vehicle vehicle = drawn.order().vehicle();
    Set<Map<String, String>> all = AllBuilds.of(vehicle);
    Facts facts = new Facts(vehicle, Builds.of(vehicle));
    GapFinder finder = new GapFinder(facts, drawn.unknown());
    Set<GapStatus> seen = new HashSet<>();
    boolean mixed = false;
    for (NeedAt need : Needs.of(drawn.order())) {
      NeedGap gap = finder.of(need, Already.of(need, facts, drawn.order().rules()));
      Map<Map<String, String>, GapStatus> expected =
          statuses(new Documents(vehicle, need), all, drawn.unknown());
      Map<GapStatus, Integer> counts = new HashMap<>();
      for (Map<String, String> build : all) {
        List<GapStatus> told =
            gap.parts().stream()
                .filter(part -> part.when().holds(build))
                .map(GapPart::status)
                .toList();
        assertThat(told).as("%s on %s", need.words(), build).containsExactly(expected.get(build));
        told.forEach(status -> counts.merge(status, 1, Integer::sum));
      }
      for (GapPart part : gap.parts()) {
        assertThat(part.builds())
            .isEqualTo(BigInteger.valueOf(counts.getOrDefault(part.status(), 0)));
        assertThat(part.reason()).isNotBlank();
      }
      seen.addAll(counts.keySet());
      mixed |= counts.size() > 1;
    }
    for (GapStatus status : GapStatus.values()) {
      Statistics.label(status.words())
          .collect(seen.contains(status))
          .coverage(c -> c.check(true).percentage(p -> p > 4));
    }
    Statistics.label("a need differs between builds")
        .collect(mixed)
        .coverage(c -> c.check(true).percentage(p -> p > 20));
  }

  private static Map<Map<String, String>, GapStatus> statuses(
      Documents documents, Set<Map<String, String>> all, Set<String> unknown) {
    Map<Map<String, String>, Set<Boolean>> outcomes = new HashMap<>();
    for (Map<String, String> build : all) {
      outcomes
          .computeIfAbsent(known(build, unknown), key -> new HashSet<>())
          .add(documents.met(build));
    }
    Map<Map<String, String>, GapStatus> statuses = new LinkedHashMap<>();
    for (Map<String, String> build : all) {
      Set<Boolean> either = outcomes.getOrDefault(known(build, unknown), Set.of());
      statuses.put(
          build,
          either.size() > 1
              ? GapStatus.NOT_KNOWN
              : either.contains(true)
                  ? GapStatus.ALREADY_THERE
                  : documents.wireThere(build) ? GapStatus.PARTLY_THERE : GapStatus.MISSING);
    }
    return statuses;
  }

  private static Map<String, String> known(Map<String, String> build, Set<String> unknown) {
    Map<String, String> known = new HashMap<>(build);
    known.keySet().removeAll(unknown);
    return known;
  }

  /** One build at a time, with a person's reading of the documents. */
  private record Documents(Vehicle vehicle, NeedAt at) {
    boolean wireThere(Map<String, String> build) {
      return vehicle.circuits().stream().anyMatch(it -> reachesPin(it, build));
    }

    boolean met(Map<String, String> build) {
      return vehicle.circuits().stream()
          .anyMatch(it -> reachesPin(it, build) && alive(it, build) && strongEnough(it));
    }

    private boolean reachesPin(Circuit circuit, Map<String, String> build) {
      Optional<Connector> connector = at.mount().connector().flatMap(vehicle::connector);
      if (connector.isEmpty()
          || !connector.get().presentWhen().map(it -> it.holds(build)).orElse(true)
          || !circuit.presentWhen().holds(build)
          || !circuit.kind().name().equals(at.need().kind().name())) {
        return false;
      }
      boolean sameFeed =
          at.need().kind() == NeedKind.GROUND || circuit.feed().equals(at.need().feed());
      String pin = "cavity " + connector.get().id() + " " + at.pin().cavity();
      return sameFeed && circuit.to().stream().map(Spot::text).anyMatch(pin::equals);
    }

    private boolean alive(Circuit circuit, Map<String, String> build) {
      String[] from = circuit.from().text().split(" ");
      return switch (from[0]) {
        case "slot" -> {
          FuseBlock block = vehicle.fuseBlock(from[1]).orElseThrow();
          Slot slot = block.slot(from[2]).orElseThrow();
          yield slot.metalWhen().holds(build)
              && block.section(slot.section()).orElseThrow().fedWhen().holds(build);
        }
        case "unit", "ground" -> true;
        default -> false;
      };
    }

    private boolean strongEnough(Circuit circuit) {
      Need need = at.need();
      if (need.leastArea().map(it -> it.areaMm2() > circuit.wire().areaMm2()).orElse(false)) {
        return false;
      }
      if (circuit.fuse().isEmpty() || need.kind() == NeedKind.GROUND) {
        return true;
      }
      double fuseA = circuit.fuse().get().amperes();
      double others =
          circuit.to().size() == 1 ? 0 : circuit.load().map(it -> it.amperes()).orElse(0.0);
      // The only block stands in the engine bay; 60 % there and 80 % elsewhere are the shop's.
      double most = circuit.from() instanceof Spot.OfSlot ? 0.6 : 0.8;
      return others + need.continuous().amperes() <= most * fuseA + 1e-6
          && need.fuseAtMost().map(it -> fuseA <= it.amperes()).orElse(true);
    }
  }
}
