package org.loomwright.planner.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Wire;
import org.loomwright.physics.Check;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.FuseFamily;
import org.loomwright.physics.protection.FusePlace;
import org.loomwright.planner.fixture.Draw;
import org.loomwright.planner.plan.Demo;

/** A thicker wire of the same insulation never fails what a thinner one passes. */
class ThickerWireTest {
  private static final String END_OF_LINE = "fault at the end of the line";

  /**
   * Overload ends and short circuit begins at the fault at the end of the line, which is larger
   * with a thicker wire: a current may change from one to the other, so both count as one.
   */
  private static final Map<String, String> ONE_RANGE =
      Map.of("overload", "any fault", "short circuit", "any fault");

  private final KitOrder order = Demo.order(Demo.COMFORT);
  private final WireSizer sizer = new WireSizer(order.parts(), order.rules());

  @Property(tries = 60, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void passesWhatAThinnerOnePasses(@ForAll long seed) {
    Draw draw = new Draw(seed);
    WireNeed need = need(draw);
    String insulation = draw.one(List.of("PVC", "XLPE"));
    boolean before = false;
    Map<String, Verdict> last = new HashMap<>();
    for (Wire wire : sizer.wires()) {
      if (!wire.insulation().equals(insulation)) {
        continue;
      }
      boolean passes = sizer.passes(wire, need);
      assertThat(passes || !before).as("seed %s: %s, %s", seed, wire.id(), need).isTrue();
      before = passes;
      Map<String, Verdict> now = verdicts(wire, need);
      // Where a fault at the far end opens nothing there is no range of overload to judge.
      if (last.getOrDefault(END_OF_LINE, Verdict.FAILS) != Verdict.FAILS) {
        now.forEach(
            (name, verdict) ->
                assertThat(verdict == Verdict.FAILS && last.get(name) != Verdict.FAILS)
                    .as("seed %s: %s fails %s, %s", seed, wire.id(), name, need)
                    .isFalse());
      }
      last.clear();
      last.putAll(now);
      Statistics.label("passes").collect(passes);
    }
    Statistics.label("passes")
        .coverage(
            coverage -> {
              coverage.check(true).percentage(it -> it > 5);
              coverage.check(false).percentage(it -> it > 5);
            });
  }

  private Map<String, Verdict> verdicts(Wire wire, WireNeed need) {
    Map<String, Verdict> verdicts = new HashMap<>();
    try {
      for (Check check : sizer.protection(wire, need).checks()) {
        verdicts.merge(
            ONE_RANGE.getOrDefault(check.name(), check.name()), check.verdict(), Verdict::worse);
      }
    } catch (SumException outsideTheSums) {
      // The insulation bears no more than the air round it, whatever the size.
      assertThat(wire.rating().celsius()).isLessThanOrEqualTo(need.ambientC() + 1);
    }
    return verdicts;
  }

  private static WireNeed need(Draw draw) {
    List<FuseBefore> fuses = new ArrayList<>();
    int count = draw.number(1, 2);
    for (int i = 0; i < count; i++) {
      FuseFamily family =
          draw.one(
              List.of(
                  FuseFamily.REGULAR_BLADE,
                  FuseFamily.REGULAR_BLADE,
                  FuseFamily.SMALL_BLADE,
                  FuseFamily.LARGE_BLADE,
                  FuseFamily.CARTRIDGE));
      double ratingA = draw.one(family.ratingsA());
      double strongOhm = draw.number(3, 20) / 1000.0;
      fuses.add(
          new FuseBefore(
              new Fuse(family, ratingA),
              draw.chance(30),
              draw.chance(70),
              new FuseSpot(draw.one(List.of(FusePlace.values())), draw.number(-20, 110)),
              new FaultLoop(
                  draw.number(9, 12),
                  draw.number(13, 16),
                  strongOhm,
                  strongOhm + draw.number(0, 40) / 1000.0,
                  draw.number(5, 40) / 1000.0),
              List.of()));
    }
    double leastA = fuses.stream().mapToDouble(it -> it.fuse().ratingA()).min().orElseThrow();
    double continuousA = leastA * draw.number(0, draw.chance(70) ? 50 : 110) / 100;
    boolean peak = draw.chance(50);
    int metres = draw.chance(70) ? draw.number(1, 8) : draw.number(1, 60);
    return new WireNeed(
        draw.chance(30),
        new Load(
            continuousA,
            peak ? continuousA * draw.number(100, 300) / 100 : 0,
            peak ? draw.number(1, 300) / 10.0 : 0),
        fuses,
        1000.0 * metres,
        draw.number(0, 2) * 500.0 * metres,
        draw.number(-20, 110),
        draw.number(1, 12),
        0,
        draw.chance(30) ? draw.number(1, 20) / 10.0 : Double.POSITIVE_INFINITY,
        12);
  }
}
