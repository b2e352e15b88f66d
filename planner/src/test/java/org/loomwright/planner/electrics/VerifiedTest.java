package org.loomwright.planner.electrics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.physics.network.LoadState;
import org.loomwright.physics.network.WorstCaseRequest;
import org.loomwright.physics.network.WorstCaseSearch;
import org.loomwright.physics.network.WorstCases;
import org.loomwright.planner.fixture.Bits;
import org.loomwright.planner.fixture.SmallCar;
import org.loomwright.planner.kit.SolvedKit;

/** The second look at solved networks agrees with sound figures and finds falsified ones. */
class VerifiedTest {
  private static final String LOAD = "load pin 1 (e/p/1)";

  private final KitOrder order =
      SmallCar.order(SmallCar.car(1), SmallCar.plug(Bits.supply("30", 6), 9));
  private final JointCase joint = SolvedKit.of(order).cases().get(0).joint();
  private final WorstCaseRequest request = NetworkMaker.of(order, joint).request();
  private final WorstCases worst = WorstCaseSearch.search(request);

  @Test
  void soundFiguresHaveNoFault() {
    Verified verified = Verified.of(request, worst);
    assertThat(verified.faults()).isEmpty();
    assertThat(verified.figures())
        .isEqualTo(worst.lowestVoltage().size() + worst.highestCurrent().size())
        .isGreaterThan(10);
    assertThat(verified.states()).isPositive();
    assertThat(verified.worstBalanceA()).isLessThan(1e-6);
    assertThat(verified.words())
        .startsWith("Networks verified: " + verified.states() + " states solved again, ")
        .endsWith("; no fault found.");
    assertThat(new CaseSolver(order).verify(joint)).isEqualTo(verified);
  }

  @Test
  void everyFalsifiedFigureIsFoundByName() {
    worst
        .lowestVoltage()
        .forEach(
            (name, it) ->
                found(name, with(worst, Map.of(name, value(it, it.value() + 0.01)), Map.of())));
    worst
        .highestCurrent()
        .forEach(
            (name, it) ->
                found(
                    name,
                    with(worst, Map.of(), Map.of(name, value(it, it.value() * 1.01 + 1e-3)))));
  }

  private void found(String name, WorstCases falsified) {
    Verified verified = Verified.of(request, falsified);
    assertThat(verified.faults())
        .singleElement()
        .asString()
        .startsWith(name + ": found ")
        .contains(", its state gives ");
    assertThat(verified.words()).endsWith("; 1 fault found.");
  }

  @Test
  void aFigureOfAnotherStateIsFound() {
    WorstCases.Worst lowest = worst.lowestVoltageAt(LOAD);
    LoadState high =
        new LoadState(
            lowest.state().on(),
            Map.of(CaseNetwork.BATTERY, NetworkMaker.of(order, joint).highestV()));
    found(LOAD, with(worst, Map.of(LOAD, state(lowest, high)), Map.of()));
    LoadState off = new LoadState(Set.of(), lowest.state().emfV());
    String lead = "lead " + joint.leads().get(0).name();
    found(lead, with(worst, Map.of(), Map.of(lead, state(worst.highestCurrentIn(lead), off))));
  }

  /** A load that is off in the state named for it has no voltage there. */
  @Test
  void aFigureOfAStateWithoutItsLoadIsFound() {
    WorstCases.Worst lowest = worst.lowestVoltageAt(LOAD);
    LoadState off = new LoadState(Set.of(), lowest.state().emfV());
    Verified verified =
        Verified.of(request, with(worst, Map.of(LOAD, state(lowest, off)), Map.of()));
    assertThat(verified.faults())
        .singleElement()
        .asString()
        .isEqualTo(LOAD + ": it is switched off in the state its figure is of");
  }

  @Test
  void aStateWithoutAnOperatingPointIsFound() {
    WorstCases.Worst lowest = worst.lowestVoltageAt(LOAD);
    LoadState dead = new LoadState(lowest.state().on(), Map.of(CaseNetwork.BATTERY, 0.0));
    Verified verified =
        Verified.of(request, with(worst, Map.of(LOAD, state(lowest, dead)), Map.of()));
    assertThat(verified.faults()).singleElement().asString().startsWith(LOAD + ": ");
  }

  private static WorstCases.Worst value(WorstCases.Worst it, double value) {
    return new WorstCases.Worst(value, it.state(), it.basis());
  }

  private static WorstCases.Worst state(WorstCases.Worst it, LoadState state) {
    return new WorstCases.Worst(it.value(), state, it.basis());
  }

  private static WorstCases with(
      WorstCases worst,
      Map<String, WorstCases.Worst> voltages,
      Map<String, WorstCases.Worst> currents) {
    Map<String, WorstCases.Worst> lowest = new LinkedHashMap<>(worst.lowestVoltage());
    lowest.putAll(voltages);
    Map<String, WorstCases.Worst> highest = new LinkedHashMap<>(worst.highestCurrent());
    highest.putAll(currents);
    return new WorstCases(lowest, highest, worst.tried(), worst.possible(), worst.unsolved());
  }
}
