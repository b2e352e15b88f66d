package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Step;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.rules.ElectricDefaults;
import org.loomwright.model.rules.Rules;
import org.loomwright.physics.SumException;
import org.loomwright.physics.network.HotNetworkSolver;
import org.loomwright.physics.network.HotOutcome;
import org.loomwright.physics.network.Network;
import org.loomwright.physics.network.NetworkCheck;
import org.loomwright.physics.network.NetworkFinding;
import org.loomwright.physics.network.NetworkFindings;
import org.loomwright.physics.network.Solved;

/**
 * What the networks say: each need with added leads loses no more voltage on its way than the rules
 * allow, each load gets the voltage it needs at the lowest supply, the lines can bring what loads
 * of constant power ask for, and no current runs backwards.
 *
 * <p>Solved with all loads on, at the lowest and at the highest supply: a load of constant power
 * draws most at the one, a resistor at the other. Each solution is checked without the solver.
 */
final class NetworkLimits {
  private static final double SLACK = 1e-6;

  private final Subject subject;
  private final Map<PinNeed, PinNeed> returns = new LinkedHashMap<>();
  private final LeadHeat heat;
  private final Map<Network, HotOutcome> known = new HashMap<>();

  NetworkLimits(Subject subject, List<PinNeed> needs) {
    this.subject = subject;
    this.heat = new LeadHeat(subject);
    for (PinNeed need : needs) {
      need.returnsBy(needs).ifPresent(ground -> returns.put(need, ground));
    }
  }

  /** A group's network, solved at the lowest and, where that is another, the highest supply. */
  private record State(Group group, GroupModel.Modelled model, List<Solved> solved) {
    Solved lowest() {
      return solved.get(0);
    }
  }

  /**
   * @param nets all nets at this end of the guide
   * @throws UnprovableException when too many facts around common loads are left open
   */
  void check(Step step, List<NetAt> nets, Findings findings) {
    Elsewhere elsewhere = new Elsewhere(subject, nets, returns);
    for (Group group : Groups.of(nets, returns)) {
      try {
        GroupModel.Modelled model = GroupModel.of(subject, group, returns, elsewhere.of(group));
        solve(step, group, model, findings)
            .ifPresent(
                state -> {
                  currents(step, state, findings);
                  for (Traced traced : group.traced()) {
                    judge(step, state, traced, findings);
                  }
                });
      } catch (SumException outsideTheSums) {
        findings.failOn(
            group.builds(),
            Claim.LIMITS,
            Optional.of(step),
            "the network can't be solved: " + outsideTheSums.getMessage());
      }
    }
  }

  private Optional<State> solve(
      Step step, Group group, GroupModel.Modelled model, Findings findings) {
    List<Solved> solved = new ArrayList<>();
    for (double supplyV : supplies()) {
      HotOutcome outcome = at(model, supplyV);
      boolean settled = outcome instanceof HotOutcome.Settled;
      findings.require(
          settled,
          group.builds(),
          Claim.LIMITS,
          Optional.of(step),
          "no steady state at a supply of " + Figures.of(supplyV) + " V: " + outcome.message());
      if (outcome instanceof HotOutcome.Settled it) {
        List<String> faults = NetworkCheck.check(it.solved()).faults();
        findings.require(
            faults.isEmpty(),
            group.builds(),
            Claim.LIMITS,
            Optional.of(step),
            "the solved network is not sound: " + String.join("; ", faults));
        solved.add(it.solved());
      }
    }
    return solved.size() == supplies().size()
        ? Optional.of(new State(group, model, solved))
        : Optional.empty();
  }

  private HotOutcome at(GroupModel.Modelled model, double supplyV) {
    org.loomwright.physics.network.Source battery =
        model.network().find(org.loomwright.physics.network.Source.class, GroupModel.BATTERY);
    Network network = model.network().with(Map.of(battery.name(), battery.withEmf(supplyV)));
    HotOutcome before = known.get(network);
    if (before != null) {
      return before;
    }
    HotOutcome outcome = HotNetworkSolver.solve(network, heat.of(model.leads()));
    known.put(network, outcome);
    return outcome;
  }

  private List<Double> supplies() {
    double lowestV = subject.vehicle().supplyLowest().volts();
    double highestV =
        ElectricDefaults.supplyHighest(subject.order().rules(), subject.vehicle()).value().volts();
    return highestV > lowestV ? List.of(lowestV, highestV) : List.of(lowestV);
  }

  private void currents(Step step, State state, Findings findings) {
    List<NetworkFinding> found = new ArrayList<>(NetworkFindings.ofWiring(state.model().network()));
    for (Solved solved : state.solved()) {
      found.addAll(NetworkFindings.ofState(solved, List.of()));
    }
    if (found.isEmpty()) {
      findings.require(true, state.group().builds(), Claim.NO_BACK_FEED, Optional.of(step), "");
    }
    for (NetworkFinding finding : found) {
      findings.failOn(
          state.group().builds(), Claim.NO_BACK_FEED, Optional.of(step), finding.message());
    }
  }

  private void judge(Step step, State state, Traced traced, Findings findings) {
    if (traced.source().kind() == Source.Kind.SIGNAL) {
      return;
    }
    if (!traced.leads().isEmpty()) {
      drop(step, state, traced, findings);
    }
    boolean added =
        !traced.leads().isEmpty()
            || ground(state, traced).filter(it -> !it.leads().isEmpty()).isPresent();
    if (traced.need().need().kind() == NeedKind.SUPPLY && added) {
      voltage(step, state, traced, findings);
    }
  }

  private Optional<Traced> ground(State state, Traced traced) {
    return Optional.ofNullable(returns.get(traced.need())).flatMap(state.group()::traced);
  }

  private void drop(Step step, State state, Traced traced, Findings findings) {
    boolean ground = traced.source().kind() == Source.Kind.GROUND;
    double limitV = limit(subject, traced, ground) * subject.vehicle().supply().volts();
    Solved worst =
        state.solved().stream()
            .max(Comparator.comparingDouble(it -> dropV(state, it, traced)))
            .orElseThrow();
    double dropV = dropV(state, worst, traced);
    String figure =
        Figures.of(dropV)
            + " V of "
            + Figures.of(limitV)
            + " V on the "
            + (ground ? "ground" : "feed")
            + " of "
            + traced.need().words();
    findings.figure(Claim.LIMITS, dropV / limitV, "drop " + figure);
    findings.require(
        dropV <= limitV + SLACK,
        state.group().builds(),
        Claim.LIMITS,
        Optional.of(step),
        "the voltage drop is " + figure + most(state, worst, traced));
  }

  /** Most a need may lose, as a share of the supply. */
  static double limit(Subject subject, Traced traced, boolean ground) {
    Rules rules = subject.order().rules();
    boolean spliced = traced.path().stream().anyMatch(link -> link.source().isPresent());
    return (ground ? rules.groundDrop() : spliced ? rules.splicedFeedDrop() : rules.feedDrop())
        .value()
        .fraction();
  }

  /** Between bus bar and pin, or pin and battery. */
  private static double dropV(State state, Solved solved, Traced traced) {
    String begin = state.model().begins().getOrDefault(traced.source(), GroupModel.NEGATIVE);
    return Math.abs(solved.voltageV(begin) - solved.voltageV(traced.need().node()));
  }

  /** What loses most, in words; the way is a chain, so its parts add up to the drop. */
  private static String most(State state, Solved solved, Traced traced) {
    List<String> parts =
        new ArrayList<>(state.model().ofSource().getOrDefault(traced.source(), List.of()));
    traced.path().forEach(it -> parts.addAll(state.model().ofLink().getOrDefault(it, List.of())));
    return parts.stream()
        .max(Comparator.comparingDouble(it -> Math.abs(solved.flow(it).voltageV())))
        .map(
            it ->
                "; most of it over "
                    + it
                    + ", "
                    + Figures.of(Math.abs(solved.flow(it).voltageV()))
                    + " V")
        .orElse("");
  }

  private void voltage(Step step, State state, Traced traced, Findings findings) {
    String load = state.model().loads().get(traced.need());
    Optional<Double> wantedV = traced.need().need().minimumVoltage().map(it -> it.volts());
    if (load == null || wantedV.isEmpty()) {
      return;
    }
    double gotV = state.lowest().flow(load).voltageV();
    String figure =
        Figures.of(gotV)
            + " V of at least "
            + Figures.of(wantedV.get())
            + " V across "
            + traced.need().words()
            + " at the lowest supply";
    findings.require(
        gotV >= wantedV.get() - SLACK,
        state.group().builds(),
        Claim.LIMITS,
        Optional.of(step),
        "there are only " + figure);
  }
}
