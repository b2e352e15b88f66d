package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.physics.network.Load;
import org.loomwright.physics.network.Solved;
import org.loomwright.physics.network.Source;
import org.loomwright.planner.electrics.CaseFigures;
import org.loomwright.planner.electrics.NeedFigures;
import org.loomwright.planner.electrics.PathPart;
import org.loomwright.planner.electrics.Returns;
import org.loomwright.planner.electrics.Verified;
import org.loomwright.planner.need.NeedAt;

/**
 * What the networks of all cases say: drop on feed and ground of each need, voltage at its pin, and
 * that no current runs where it should not.
 */
final class NetworkChecks {
  private static final String KIRCHHOFF = "Kirchhoff's voltage law";

  private static final String OPEN = "open voltage of the source";
  private static final String FEED_DROP = "drop from bus bar to pin";
  private static final String GROUND_DROP = "drop from pin to battery negative";

  private final KitOrder order;
  private final Evaluation evaluation;
  private final DropLimits limits;
  private final Checklist list;

  NetworkChecks(KitOrder order, Evaluation evaluation, Checklist list) {
    this.order = order;
    this.evaluation = evaluation;
    this.limits = new DropLimits(order);
    this.list = list;
  }

  void check(boolean complete) {
    List<DropLimits.Judged> drops = limits.drops(evaluation);
    Set<NeedAt> needs = new LinkedHashSet<>();
    evaluation.cases().forEach(it -> needs.addAll(it.tuple().ways().keySet()));
    for (NeedAt need : needs) {
      drops.stream()
          .filter(it -> it.need().equals(need))
          .max(Comparator.comparingDouble(DropLimits.Judged::share))
          .ifPresent(this::drop);
      voltage(need);
    }
    none(
        "network/findings",
        "back-feeds, nets fed twice, lifted sensor grounds",
        CaseFigures::findings);
    none("network/unsolved", "load states without an operating point", CaseFigures::unsolved);
    none("network/check", "faults found by the independent check", CaseFigures::faults);
    if (!complete) {
      list.add(
          "network/cases",
          "combinations of cases solved",
          "whole kit",
          List.of(),
          evaluation.cases().size(),
          evaluation.cases().size() + 1.0,
          false,
          "",
          "more than " + JointCases.MOST + " combinations; the rest was not looked at",
          List.of());
    }
  }

  /** The check that a second look at all networks found no fault. */
  static Check verified(Verified verified) {
    return Check.of(
        "network/verify",
        "faults found when all networks were solved and checked again",
        "whole kit",
        List.of(),
        verified.faults().size(),
        0,
        true,
        "",
        0,
        verified.faults().isEmpty()
            ? "node balance, law of each element, energy"
            : String.join("; ", verified.faults()),
        List.of(
            line("states solved again", "count", verified.states(), "", "the plan"),
            line("worst figures compared", "count", verified.figures(), "", "the plan"),
            line(
                "largest imbalance at a node",
                "sum of currents",
                verified.worstBalanceA(),
                "A",
                "Kirchhoff's current law"),
            line(
                "largest miss of an element's law",
                "U - R * I",
                verified.worstLawV(),
                "V",
                "Ohm's law"),
            line(
                "largest gap of energy",
                "power brought - power used",
                verified.worstGapW(),
                "W",
                "conservation of energy")));
  }

  private void drop(DropLimits.Judged judged) {
    NeedAt need = judged.need();
    boolean ground = need.need().kind() == NeedKind.GROUND;
    List<TraceLine> trace = new ArrayList<>();
    Optional<Solved> state =
        evaluation.cases().stream()
            .filter(it -> it.tuple().equals(judged.at()))
            .findFirst()
            .flatMap(it -> it.figures().states().stream().findFirst());
    String formula =
        ground
            ? ground(judged.figures(), state, trace, PathPart::currentA)
            : feed(judged.figures(), state, trace, PathPart::currentA);
    trace.add(
        new TraceLine(
            ground ? GROUND_DROP : FEED_DROP, formula, judged.figures().dropV(), "V", KIRCHHOFF));
    list.add(
        "drop/" + need.id(),
        "voltage drop on the " + (ground ? "ground" : "feed"),
        need.equipment().name() + ", " + need.topic(),
        cases(need, judged.at()),
        judged.figures().dropV(),
        judged.limitV(),
        true,
        "V",
        judged.limit().source(),
        trace);
  }

  private static String feed(
      NeedFigures figures,
      Optional<Solved> state,
      List<TraceLine> trace,
      ToDoubleFunction<PathPart> currents) {
    return new PathTrace(state, trace).add(figures.path(), "R", "I", currents);
  }

  private static String ground(
      NeedFigures figures,
      Optional<Solved> state,
      List<TraceLine> trace,
      ToDoubleFunction<PathPart> currents) {
    return new PathTrace(state, trace).add(figures.path(), "G", "K", currents);
  }

  private void voltage(NeedAt need) {
    record Lowest(Evaluation.Solved at, NeedFigures figures, double volts) {}
    Lowest worst = null;
    for (Evaluation.Solved solved : evaluation.cases()) {
      NeedFigures figures = solved.figures().needs().get(need);
      if (figures != null && figures.lowestV().isPresent()) {
        double volts = figures.lowestV().getAsDouble();
        worst = worst == null || volts < worst.volts() ? new Lowest(solved, figures, volts) : worst;
      }
    }
    if (worst == null || need.need().minimumVoltage().isEmpty()) {
      return;
    }
    list.add(
        "voltage/" + need.id(),
        "voltage across the load at lowest supply",
        need.equipment().name() + ", " + need.topic(),
        cases(need, worst.at().tuple()),
        worst.volts(),
        need.need().minimumVoltage().get().volts(),
        false,
        "V",
        "the equipment's document",
        voltageTrace(need, worst.at(), worst.figures()));
  }

  /**
   * The sum in the state with all loads on at the lowest supply. Where another state leaves the
   * load less, its figure is given as found, with the state in words.
   */
  private static List<TraceLine> voltageTrace(
      NeedAt need, Evaluation.Solved at, NeedFigures figures) {
    List<TraceLine> trace = new ArrayList<>();
    List<String> terms = new ArrayList<>();
    double leftV = Double.NaN;
    Optional<Solved> solved = at.figures().states().stream().findFirst();
    if (solved.isPresent()) {
      Solved state = solved.get();
      Source battery = state.network().find(Source.class, "battery");
      double sourceA = state.flow(battery.name()).currentA();
      double insideV = battery.internalOhm() * sourceA;
      PathTrace paths = new PathTrace(solved, trace);
      Map<String, Double> loads = new LinkedHashMap<>();
      state
          .network()
          .all(Load.class)
          .forEach(it -> loads.put(it.name(), state.flow(it.name()).currentA()));
      String sum = paths.loads(loads);
      double sumA = loads.values().stream().mapToDouble(it -> it).sum();
      trace.add(line(OPEN, "given", battery.emfV(), "V", "vehicle document"));
      trace.add(
          line("internal resistance", "given", battery.internalOhm(), "ohm", "vehicle or default"));
      trace.add(
          line(
              "current of the source",
              LoadsBehind.same(sumA, sourceA) ? sum : "as the network is solved",
              sourceA,
              "A",
              "all added loads on"));
      trace.add(
          line(
              "drop inside the source",
              "internal resistance * current of the source",
              insideV,
              "V",
              "Ohm's law"));
      terms.add(OPEN);
      terms.add("drop inside the source");
      ToDoubleFunction<PathPart> there = it -> Math.abs(state.flow(it.name()).currentA());
      leftV = battery.emfV() - insideV;
      if (!figures.supply().isEmpty()) {
        leftV -=
            dropLine(
                "drop from battery to bus bar",
                paths.add(figures.supply(), "S", "J", there),
                figures.supply(),
                there,
                trace);
        terms.add("drop from battery to bus bar");
      }
      leftV -=
          dropLine(FEED_DROP, feed(figures, solved, trace, there), figures.path(), there, trace);
      terms.add(FEED_DROP);
      Optional<NeedFigures> back =
          Returns.of(need, at.tuple().ways().keySet())
              .flatMap(it -> Optional.ofNullable(at.figures().needs().get(it)));
      if (back.isPresent()) {
        NeedFigures it = back.get();
        leftV -= dropLine(GROUND_DROP, ground(it, solved, trace, there), it.path(), there, trace);
        terms.add(GROUND_DROP);
      }
    }
    double lowestV = figures.lowestV().orElse(0);
    boolean redone = Math.abs(leftV - lowestV) <= 1e-6;
    trace.add(
        line(
            "voltage across the load",
            redone ? String.join(" - ", terms) : "found in another state than the one above",
            lowestV,
            "V",
            "lowest of all load states: " + figures.lowestState()));
    return trace;
  }

  private static double dropLine(
      String what,
      String formula,
      List<PathPart> path,
      ToDoubleFunction<PathPart> currents,
      List<TraceLine> trace) {
    double dropV = path.stream().mapToDouble(it -> it.ohm() * currents.applyAsDouble(it)).sum();
    trace.add(line(what, formula, dropV, "V", KIRCHHOFF));
    return dropV;
  }

  private static TraceLine line(
      String what, String formula, double value, String unit, String source) {
    return new TraceLine(what, formula, value, unit, source);
  }

  // The case of the need's own component; others are named only where they belong to it.
  private static List<String> cases(NeedAt need, JointCases.Tuple tuple) {
    return tuple.members().stream()
        .filter(member -> member.ways().containsKey(need))
        .map(CaseSet.Member::id)
        .toList();
  }

  private void none(
      String id, String name, java.util.function.Function<CaseFigures, List<String>> found) {
    Set<String> all = new LinkedHashSet<>();
    List<String> cases = new ArrayList<>();
    for (Evaluation.Solved solved : evaluation.cases()) {
      List<String> here = found.apply(solved.figures());
      all.addAll(here);
      if (!here.isEmpty()) {
        cases.addAll(solved.tuple().ids());
      }
    }
    int tried = evaluation.cases().stream().mapToInt(it -> it.figures().tried()).sum();
    list.addRating(
        id,
        name,
        "whole kit",
        cases.stream().distinct().toList(),
        all.size(),
        0,
        true,
        "",
        all.isEmpty()
            ? "Kirchhoff's laws in " + evaluation.cases().size() + " joint cases"
            : String.join("; ", all),
        List.of(
            line("joint cases solved", "count", evaluation.cases().size(), "", "the plan"),
            line("load states solved for their worst figures", "count", tried, "", "the plan")));
  }
}
