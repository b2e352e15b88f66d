package org.loomwright.planner.electrics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.physics.Require;
import org.loomwright.physics.network.Link;
import org.loomwright.physics.network.LoadState;
import org.loomwright.physics.network.NetworkCheck;
import org.loomwright.physics.network.NetworkFinding;
import org.loomwright.physics.network.NetworkFindings;
import org.loomwright.physics.network.NetworkOutcome;
import org.loomwright.physics.network.NetworkSolver;
import org.loomwright.physics.network.Solved;
import org.loomwright.physics.network.Source;
import org.loomwright.physics.network.Wire;
import org.loomwright.physics.network.WorstCaseSearch;
import org.loomwright.physics.network.WorstCases;
import org.loomwright.planner.need.NeedAt;

/** Solves joint cases over all their load states and the supply range. */
public final class CaseSolver {
  private final KitOrder order;

  /** Solves cases of an order. */
  public CaseSolver(KitOrder order) {
    this.order = order;
  }

  /** Currents, drops, voltages and findings of a joint case. */
  public CaseFigures solve(JointCase joint) {
    CaseNetwork made = NetworkMaker.of(order, joint);
    WorstCases worst = WorstCaseSearch.search(made.request());
    List<String> unsolved = new ArrayList<>();
    worst.unsolved().forEach(it -> unsolved.add(it.outcome().message()));
    List<Solved> states = allOn(made, unsolved);
    List<String> faults = new ArrayList<>();
    states.forEach(state -> faults.addAll(NetworkCheck.check(state).faults()));
    Map<String, Double> leadsA = new LinkedHashMap<>();
    joint.leads().forEach(lead -> leadsA.put(lead.name(), currentA(worst, "lead " + lead.name())));
    return new CaseFigures(
        made.cases(),
        needs(made, worst),
        leadsA,
        findings(made, states),
        unsolved,
        worst.tried(),
        worst.possible(),
        proven(worst),
        faults,
        states.size(),
        states);
  }

  /**
   * Looks at a solved joint case once more: every state that gives a worst figure is solved node by
   * node, checked by the independent checker, and its figure compared with the one found.
   */
  public Verified verify(JointCase joint) {
    CaseNetwork made = NetworkMaker.of(order, joint);
    WorstCases worst = WorstCaseSearch.search(made.request());
    return Verified.of(made.request(), worst);
  }

  /** All loads on, at the lowest and at the highest supply. */
  private static List<Solved> allOn(CaseNetwork made, List<String> unsolved) {
    List<Solved> states = new ArrayList<>();
    for (double emfV : List.of(made.lowestV(), made.highestV())) {
      Source battery = made.network().find(Source.class, CaseNetwork.BATTERY).withEmf(emfV);
      NetworkOutcome outcome =
          NetworkSolver.solve(made.network().with(Map.of(CaseNetwork.BATTERY, battery)));
      if (outcome instanceof Solved solved) {
        states.add(solved);
      } else if (!unsolved.contains(outcome.message())) {
        unsolved.add(outcome.message());
      }
    }
    return states;
  }

  private static Map<NeedAt, NeedFigures> needs(CaseNetwork made, WorstCases worst) {
    Map<NeedAt, NeedFigures> needs = new LinkedHashMap<>();
    made.pins()
        .forEach(
            (need, pin) -> {
              boolean ground = need.need().kind() == NeedKind.GROUND;
              List<Link> found =
                  Paths.toNearest(
                      made.network(),
                      pin,
                      ground ? CaseNetwork.NEGATIVE::equals : made.feeds()::contains);
              List<Link> path = ground ? found : Paths.reversed(found);
              String load = made.loads().get(need);
              WorstCases.Worst lowest = load == null ? null : worst.lowestVoltage().get(load);
              List<Link> supply =
                  ground || path.isEmpty()
                      ? List.of()
                      : Paths.toNearest(
                          made.network(), path.get(0).from(), CaseNetwork.POSITIVE::equals);
              needs.put(
                  need,
                  new NeedFigures(
                      path.stream().map(link -> part(made, worst, link)).toList(),
                      supply.stream().map(link -> part(made, worst, link)).toList(),
                      lowest == null ? OptionalDouble.empty() : OptionalDouble.of(lowest.value()),
                      lowest == null ? "" : words(made, lowest.state())));
            });
    return needs;
  }

  private static PathPart part(CaseNetwork made, WorstCases worst, Link link) {
    return new PathPart(
        link.name(),
        link instanceof Wire wire ? Optional.of(wire) : Optional.empty(),
        link.ohm(),
        currentA(worst, link.name()),
        made.sources().getOrDefault(link.name(), ""));
  }

  private static double currentA(WorstCases worst, String element) {
    WorstCases.Worst highest = worst.highestCurrent().get(element);
    return highest == null ? 0 : Math.abs(highest.value());
  }

  private static String words(CaseNetwork made, LoadState state) {
    int all = made.loads().size();
    String on =
        state.on().size() == all ? "all loads on" : state.on().size() + " of " + all + " loads on";
    return on + ", source at " + volts(state.emfV().getOrDefault(CaseNetwork.BATTERY, 0.0)) + " V";
  }

  private static String volts(double volts) {
    return Require.text(Math.round(volts * 1e6) / 1e6);
  }

  private static boolean proven(WorstCases worst) {
    return worst.unsolved().isEmpty()
        && worst.lowestVoltage().values().stream().allMatch(it -> it.basis().proven())
        && worst.highestCurrent().values().stream().allMatch(it -> it.basis().proven());
  }

  private static List<String> findings(CaseNetwork made, List<Solved> states) {
    Set<String> found = new LinkedHashSet<>();
    NetworkFindings.ofWiring(made.network()).forEach(it -> found.add(it.message()));
    for (Solved state : states) {
      for (NetworkFinding finding : NetworkFindings.ofState(state, made.sensors())) {
        found.add(finding.message());
      }
    }
    return List.copyOf(found);
  }
}
