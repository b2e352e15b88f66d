package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.equipment.NeedKind;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.physics.network.Source;
import org.loomwright.planner.electrics.CaseFigures;
import org.loomwright.planner.electrics.NeedFigures;
import org.loomwright.planner.electrics.PathPart;
import org.loomwright.planner.electrics.Returns;
import org.loomwright.planner.need.NeedAt;

/**
 * What the networks of all cases say: drop on feed and ground of each need, voltage at its pin, and
 * that no current runs where it should not.
 */
final class NetworkChecks {
  private static final String KIRCHHOFF = "Kirchhoff's voltage law";

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

  private void drop(DropLimits.Judged judged) {
    NeedAt need = judged.need();
    boolean ground = need.need().kind() == NeedKind.GROUND;
    List<TraceLine> trace = new ArrayList<>();
    judged.figures().path().forEach(part -> part(part, trace));
    trace.add(
        new TraceLine(
            ground ? "drop from pin to battery negative" : "drop from bus bar to pin",
            "sum of the drops",
            judged.figures().dropV(),
            "V",
            KIRCHHOFF));
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

  private static void part(PathPart part, List<TraceLine> trace) {
    part.wire()
        .ifPresentOrElse(
            wire -> {
              trace.add(
                  new TraceLine(
                      "r20 of " + wire.conductor().label(),
                      "given",
                      wire.conductor().ohmPerM20C(),
                      "ohm/m",
                      part.source()));
              trace.add(
                  new TraceLine("length of " + part.name(), "given", wire.lengthM(), "m", "plan"));
              trace.add(
                  new TraceLine(
                      "temperature of " + part.name(),
                      "given",
                      wire.temperatureC(),
                      "°C",
                      "bundle heat, rounded up; factory wires as loaded, common practice"));
              trace.add(
                  new TraceLine(
                      "resistance of " + part.name(),
                      "r20 * L * (234.5 + T) / 254.5",
                      part.ohm(),
                      "ohm",
                      "copper: IEC 60228"));
            },
            () ->
                trace.add(
                    new TraceLine(
                        "resistance of " + part.name(),
                        "given",
                        part.ohm(),
                        "ohm",
                        part.source())));
    trace.add(
        new TraceLine(
            "current through " + part.name(),
            "highest of all load states",
            part.currentA(),
            "A",
            "network solution"));
    trace.add(new TraceLine("drop over " + part.name(), "R * I", part.dropV(), "V", "Ohm's law"));
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

  private List<TraceLine> voltageTrace(NeedAt need, Evaluation.Solved at, NeedFigures figures) {
    List<TraceLine> trace = new ArrayList<>();
    at.figures().states().stream()
        .findFirst()
        .ifPresent(
            state -> {
              Source battery = state.network().find(Source.class, "battery");
              double totalA = state.flow(battery.name()).currentA();
              trace.add(line("source, open", "given", battery.emfV(), "V", "vehicle document"));
              trace.add(
                  line(
                      "internal resistance",
                      "given",
                      battery.internalOhm(),
                      "ohm",
                      "vehicle, rules or default"));
              trace.add(
                  line("current of all added loads", "network", totalA, "A", "network solution"));
              trace.add(
                  line(
                      "drop inside the source",
                      "R * I",
                      battery.internalOhm() * totalA,
                      "V",
                      "Ohm's law"));
            });
    figures.supply().forEach(part -> part(part, trace));
    trace.add(line("drop from bus bar to pin", "see there", figures.dropV(), "V", KIRCHHOFF));
    Optional<NeedFigures> ground =
        Returns.of(need, at.tuple().ways().keySet())
            .flatMap(it -> Optional.ofNullable(at.figures().needs().get(it)));
    ground.ifPresent(
        it ->
            trace.add(
                line(
                    "drop from ground pin to battery negative",
                    "see there",
                    it.dropV(),
                    "V",
                    KIRCHHOFF)));
    trace.add(
        line(
            "voltage across the load",
            "lowest of all load states: " + figures.lowestState(),
            figures.lowestV().orElse(0),
            "V",
            "network solution: source less all drops, where all carry their most at once"));
    return trace;
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
