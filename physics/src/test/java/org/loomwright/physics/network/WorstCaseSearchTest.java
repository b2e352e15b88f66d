package org.loomwright.physics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class WorstCaseSearchTest {
  private static final long FIRST_SEED = 31_000;
  private static final int NETWORKS = 40;
  private static final int MOST_SWITCHED = 6;

  /** Every load state over a grid of supplies, one after the other. */
  private static final class EveryState {
    final Map<String, Double> voltages = new LinkedHashMap<>();
    final Map<String, Double> currents = new LinkedHashMap<>();
    int unsolved;

    EveryState(WorstCaseRequest r) {
      List<String> loads = List.copyOf(r.switched());
      for (int code = 0; code < 1 << loads.size(); code++) {
        Set<String> on = new LinkedHashSet<>();
        for (int i = 0; i < loads.size(); i++) {
          if ((code >> i & 1) == 1) {
            on.add(loads.get(i));
          }
        }
        for (Map<String, Double> supply : supplies(r)) {
          if (NetworkAssert.outcome(r.in(new LoadState(on, supply))) instanceof Solved s) {
            add(s);
          } else {
            unsolved++;
          }
        }
      }
    }

    /** A grid over the ranges, ends and points between. */
    private static List<Map<String, Double>> supplies(WorstCaseRequest r) {
      List<Map<String, Double>> grid = List.of(Map.of());
      for (Map.Entry<String, WorstCaseRequest.EmfRange> range : r.ranges().entrySet()) {
        List<Map<String, Double>> finer = new ArrayList<>();
        for (Map<String, Double> point : grid) {
          for (int step = 0; step <= 3; step++) {
            double low = range.getValue().lowV();
            Map<String, Double> more = new LinkedHashMap<>(point);
            more.put(range.getKey(), low + step * (range.getValue().highV() - low) / 3);
            finer.add(more);
          }
        }
        grid = finer;
      }
      return grid;
    }

    private void add(Solved s) {
      for (BranchFlow f : s.flows().values()) {
        currents.merge(f.name(), Math.abs(f.currentA()), Math::max);
      }
      for (Load l : s.network().all(Load.class)) {
        voltages.merge(l.name(), s.flow(l.name()).voltageV(), Math::min);
      }
    }
  }

  private static WorstCaseRequest request(Network n, long seed, int mostStates) {
    Random random = new Random(seed);
    List<Load> loads = new ArrayList<>(n.all(Load.class));
    Set<String> switched = new LinkedHashSet<>();
    for (int i = 0; i < MOST_SWITCHED; i++) {
      switched.add(loads.get(random.nextInt(loads.size())).name());
    }
    Map<String, WorstCaseRequest.EmfRange> ranges = new LinkedHashMap<>();
    for (Source source : n.all(Source.class)) {
      ranges.put(
          source.name(), new WorstCaseRequest.EmfRange(source.emfV() - 1, source.emfV() + 1));
    }
    return new WorstCaseRequest(n, switched, ranges, mostStates);
  }

  @ParameterizedTest
  @EnumSource(RandomNetworks.Loads.class)
  void provenFiguresAreTheWorstOfEveryState(RandomNetworks.Loads kinds) {
    System.out.println("worst-case seeds from " + FIRST_SEED);
    Map<WorstCases.Basis, Integer> seen = new EnumMap<>(WorstCases.Basis.class);
    int compared = 0;
    for (long seed = FIRST_SEED; seed < FIRST_SEED + NETWORKS; seed++) {
      Network n = seed % 3 == 0 ? RandomNetworks.of(seed, kinds) : RandomNetworks.tree(seed, kinds);
      WorstCaseRequest r = request(n, seed, seed % 2 == 0 ? 60 : 4096);
      WorstCases found = WorstCaseSearch.search(r);
      EveryState every = new EveryState(r);
      assertThat(found.tried()).isLessThanOrEqualTo(r.mostStates());
      if (every.unsolved > 0) {
        assertThat(found.unsolved()).isNotEmpty();
        continue;
      }
      assertThat(found.unsolved()).isEmpty();
      for (Load l : n.all(Load.class)) {
        WorstCases.Worst w = found.lowestVoltageAt(l.name());
        compare("voltage of " + l.name(), seed, w, of(every.voltages, l), -1);
        seen.merge(w.basis(), 1, Integer::sum);
      }
      for (Element e : n.elements()) {
        WorstCases.Worst w = found.highestCurrentIn(e.name());
        compare("current of " + e.name(), seed, w, of(every.currents, e), 1);
        seen.merge(w.basis(), 1, Integer::sum);
      }
      compared++;
    }
    System.out.println(kinds + ": " + seen);
    assertThat(compared).isGreaterThan(NETWORKS / 2);
    assertThat(seen)
        .containsKey(
            kinds == RandomNetworks.Loads.CURRENTS
                ? WorstCases.Basis.SUPERPOSITION
                : WorstCases.Basis.MONOTONE);
  }

  private static double of(Map<String, Double> figures, Element e) {
    return figures.getOrDefault(e.name(), Double.NaN);
  }

  private static void compare(
      String what, long seed, WorstCases.Worst found, double worst, int sign) {
    double value = sign > 0 ? Math.abs(found.value()) : found.value();
    String as = what + ", seed " + seed + ", " + found;
    if (found.basis().proven()) {
      assertThat(value).as(as).isCloseTo(worst, within(1e-6));
    } else {
      assertThat(sign * value).as(as).isLessThanOrEqualTo(sign * worst + 1e-6);
    }
  }

  /** The state named gives the figure named. */
  @Test
  void theStateGivesTheFigure() {
    WorstCaseRequest r = request(RandomNetworks.of(5, RandomNetworks.Loads.CURRENTS), 5, 4096);
    WorstCases found = WorstCaseSearch.search(r);
    found
        .lowestVoltage()
        .forEach(
            (load, w) ->
                assertThat(NetworkAssert.solved(r.in(w.state())).flow(load).voltageV())
                    .isCloseTo(w.value(), within(NetworkAssert.EXACT_V)));
    found
        .highestCurrent()
        .forEach(
            (name, w) ->
                assertThat(NetworkAssert.solved(r.in(w.state())).flow(name).currentA())
                    .isCloseTo(w.value(), within(NetworkAssert.EXACT_A)));
    assertThat(found.message()).endsWith("all figures proven");
  }

  /** Sixty loads have 2^61 states with the range; a linear network needs a handful. */
  @Test
  void manyLoadsNeedFewStates() {
    List<Element> all = new ArrayList<>();
    all.add(new Source("battery", "0", "bus", 12, 0.001));
    Set<String> names = new LinkedHashSet<>();
    for (int i = 0; i < 60; i++) {
      all.add(new Joint("way" + i, "bus", "pin" + i, Joint.Kind.RESISTOR, 0.02, "made up"));
      all.add(
          i % 2 == 0
              ? new ConstantCurrent("load" + i, "pin" + i, "0", 1)
              : new ConstantPower("load" + i, "pin" + i, "0", 12, 8));
      names.add("load" + i);
    }
    WorstCases found =
        WorstCaseSearch.search(
            new WorstCaseRequest(
                new Network("0", all),
                names,
                Map.of("battery", new WorstCaseRequest.EmfRange(11, 13)),
                200));
    assertThat(found.possible().bitLength()).isEqualTo(62);
    assertThat(found.tried()).isLessThanOrEqualTo(200);
    assertThat(found.lowestVoltage()).hasSize(60);
    assertThat(found.lowestVoltage().values()).allMatch(w -> w.basis().proven());
    assertThat(found.highestCurrent().values()).allMatch(w -> w.basis().proven());
    assertThat(found.highestCurrentIn("battery").state().on()).hasSize(60);
  }

  @Test
  void statesWithoutAnOperatingPointAreNamed() {
    Network n =
        new Network(
            "0",
            List.of(
                new Source("battery", "0", "bus", 12, 0.1),
                new ConstantPower("heater", "bus", "0", 250, 6),
                new ConstantPower("winch", "bus", "0", 250, 6)));
    WorstCases found =
        WorstCaseSearch.search(new WorstCaseRequest(n, Set.of("heater", "winch"), Map.of(), 100));
    assertThat(found.unsolved()).hasSize(1);
    assertThat(found.unsolved().get(0).outcome()).isInstanceOf(NoOperatingPoint.class);
    assertThat(found.unsolved().get(0).state().on()).containsExactlyInAnyOrder("heater", "winch");
    assertThat(found.message()).contains("1 states have no operating point");
    assertThatThrownBy(() -> new WorstCaseRequest(n, Set.of("lamp"), Map.of(), 1))
        .hasMessageContaining("no Load named \"lamp\"; it has heater, winch");
    assertThatThrownBy(() -> new WorstCaseRequest.EmfRange(12, 11))
        .hasMessageContaining("at least the lowest, 12 V");
  }
}
