package org.loomwright.planner.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.LoadForm;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.equipment.Plug;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.physics.network.BranchFlow;
import org.loomwright.physics.network.ConstantPower;
import org.loomwright.physics.network.ConstantResistance;
import org.loomwright.physics.network.Link;
import org.loomwright.physics.network.NetworkOutcome;
import org.loomwright.physics.network.NetworkSolver;
import org.loomwright.physics.network.Solved;
import org.loomwright.physics.network.Source;
import org.loomwright.planner.guide.EasyCar;
import org.loomwright.planner.kit.SolvedKit;
import org.loomwright.planner.plan.With;

/** Figures of joint cases against every load state, solved one by one at both supply ends. */
class LoadStatesOracleTest {
  private static final double WITHIN = 1e-7;
  private static final int KITS = 15;
  private static final List<Optional<LoadForm>> FORMS =
      List.of(
          Optional.empty(),
          Optional.of(LoadForm.RESISTANCE),
          Optional.of(LoadForm.POWER),
          Optional.of(LoadForm.CURRENT));

  private int turn;
  private int several;
  private final Set<LoadForm> seen = EnumSet.noneOf(LoadForm.class);

  @Test
  void figuresAreTheWorstOfAllStates() {
    long seed = new Random().nextLong();
    for (int i = 0; i < KITS || several < 10 || seen.size() < 3; i++) {
      // Drawn until enough was seen; every other kit has a case with several loads.
      assertThat(i).as("kits drawn from seed %s", seed).isLessThan(1000);
      KitOrder order = withForms(EasyCar.of(seed + i));
      for (SolvedKit.Case one : SolvedKit.of(order).cases()) {
        compare("seed " + (seed + i) + ", turn " + turn, order, one);
      }
    }
  }

  /** What every state gives. */
  private record All(
      Map<String, Double> mostA,
      Map<String, Double> mostV,
      Map<String, Double> leastV,
      int unsolved) {}

  private void compare(String seed, KitOrder order, SolvedKit.Case one) {
    CaseNetwork made = NetworkMaker.of(order, one.joint());
    note(made);
    All all = everyState(made);
    CaseFigures figures = one.figures();
    assertThat(figures.unsolved().isEmpty()).as(seed).isEqualTo(all.unsolved() == 0);
    if (all.unsolved() > 0) {
      return;
    }
    SoftAssertions soft = new SoftAssertions();
    figures
        .leadsA()
        .forEach(
            (lead, mostA) ->
                soft.assertThat(mostA)
                    .as("%s: %s", seed, lead)
                    .isCloseTo(all.mostA().getOrDefault("lead " + lead, -1.0), within(WITHIN)));
    soft.assertThat(figures.leadsA()).hasSize(one.joint().leads().size());
    soft.assertThat(figures.needs().keySet()).isEqualTo(one.joint().ways().keySet());
    figures
        .needs()
        .forEach(
            (need, its) -> {
              List<PathPart> parts = new ArrayList<>(its.path());
              parts.addAll(its.supply());
              soft.assertThat(its.path()).as("%s: path of %s", seed, need.id()).isNotEmpty();
              for (PathPart part : parts) {
                soft.assertThat(part.currentA())
                    .as("%s: %s", seed, part.name())
                    .isCloseTo(all.mostA().getOrDefault(part.name(), -1.0), within(WITHIN));
                soft.assertThat(part.dropV())
                    .as("%s: drop over %s", seed, part.name())
                    .isCloseTo(all.mostV().getOrDefault(part.name(), -1.0), within(WITHIN));
              }
              String load = made.loads().get(need);
              soft.assertThat(its.lowestV().isPresent()).isEqualTo(load != null);
              if (load != null) {
                soft.assertThat(its.lowestV().orElseThrow())
                    .as("%s: voltage of %s", seed, need.id())
                    .isCloseTo(all.leastV().getOrDefault(load, -1.0), within(WITHIN));
              }
            });
    soft.assertThat(figures.possible())
        .isEqualTo(BigInteger.ONE.shiftLeft(made.loads().size() + 1));
    soft.assertThat(figures.faults()).isEmpty();
    soft.assertAll();
  }

  private void note(CaseNetwork made) {
    several += made.loads().size() > 1 ? 1 : 0;
    for (String load : made.loads().values()) {
      boolean power =
          made.network().all(ConstantPower.class).stream().anyMatch(it -> it.name().equals(load));
      boolean resistance =
          made.network().all(ConstantResistance.class).stream()
              .anyMatch(it -> it.name().equals(load));
      seen.add(power ? LoadForm.POWER : resistance ? LoadForm.RESISTANCE : LoadForm.CURRENT);
    }
  }

  private static All everyState(CaseNetwork made) {
    List<String> loads = List.copyOf(new LinkedHashSet<>(made.loads().values()));
    Map<String, Double> mostA = new LinkedHashMap<>();
    Map<String, Double> mostV = new LinkedHashMap<>();
    Map<String, Double> leastV = new LinkedHashMap<>();
    int unsolved = 0;
    for (double emfV : List.of(made.lowestV(), made.highestV())) {
      Source battery = made.network().find(Source.class, CaseNetwork.BATTERY).withEmf(emfV);
      for (int code = 0; code < 1 << loads.size(); code++) {
        List<String> off = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
          if ((code >> i & 1) == 0) {
            off.add(loads.get(i));
          }
        }
        NetworkOutcome outcome =
            NetworkSolver.solve(
                made.network().without(off).with(Map.of(CaseNetwork.BATTERY, battery)));
        if (!(outcome instanceof Solved solved)) {
          unsolved++;
          continue;
        }
        for (Link link : solved.network().all(Link.class)) {
          BranchFlow flow = solved.flow(link.name());
          mostA.merge(link.name(), Math.abs(flow.currentA()), Math::max);
          mostV.merge(link.name(), Math.abs(flow.voltageV()), Math::max);
        }
        for (String load : loads) {
          if (!off.contains(load)) {
            leastV.merge(load, solved.flow(load).voltageV(), Math::min);
          }
        }
      }
    }
    return new All(mostA, mostV, leastV, unsolved);
  }

  private KitOrder withForms(KitOrder order) {
    List<Equipment> all = new ArrayList<>();
    for (Equipment equipment : order.equipment()) {
      List<Plug> plugs = new ArrayList<>();
      for (Plug plug : equipment.plugs()) {
        List<Pin> pins = new ArrayList<>();
        for (Pin pin : plug.pins()) {
          pins.add(With.changed(pin, "need", pin.need().map(this::withForm)));
        }
        plugs.add(With.changed(plug, "pins", pins));
      }
      all.add(With.changed(equipment, "plugs", plugs));
    }
    return With.changed(order, "equipment", all);
  }

  private Need withForm(Need need) {
    return need.kind() == NeedKind.GROUND
        ? need
        : With.changed(need, "draws", FORMS.get(turn++ % FORMS.size()));
  }
}
