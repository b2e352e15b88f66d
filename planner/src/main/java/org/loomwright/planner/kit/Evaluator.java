package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Wire;
import org.loomwright.planner.electrics.CaseFigures;
import org.loomwright.planner.electrics.CaseSolver;
import org.loomwright.planner.electrics.FittedFuse;
import org.loomwright.planner.electrics.JointCase;
import org.loomwright.planner.electrics.PlacedLead;
import org.loomwright.planner.electrics.Verified;
import org.loomwright.planner.sizing.Conductors;
import org.loomwright.planner.watch.PlanningStopped;
import org.loomwright.planner.ways.LeadDraft;

/**
 * Solves the whole kit for given wires: temperature and resistance together. The conductors start
 * at the temperature their insulation is rated for; the currents found heat the bundles, and the
 * networks are solved again at those temperatures, rounded up to whole kelvins, until none changes.
 */
final class Evaluator {
  private static final int MOST_ROUNDS = 20;

  /** Hotter than this is not looked at more closely: the lead fails. */
  private static final double HOTTEST_C = 250;

  private final List<Strand> strands;
  private final List<JointCases.Tuple> tuples;
  private final Map<String, FittedFuse> fuses;
  private final EndOhms ends;
  private final Lengths lengths;
  private final CaseSolver solver;
  private final BundleHeats heats;
  private final Map<List<Object>, CaseFigures> known = new HashMap<>();

  Evaluator(
      KitOrder order,
      List<Strand> strands,
      List<JointCases.Tuple> tuples,
      Map<String, FittedFuse> fuses) {
    this.strands = List.copyOf(strands);
    this.tuples = List.copyOf(tuples);
    this.fuses = Map.copyOf(fuses);
    this.ends = new EndOhms(order);
    this.lengths = new Lengths(order, strands);
    this.solver = new CaseSolver(order);
    this.heats = new BundleHeats(order, strands);
  }

  /** Bundles and what is known of their heat. */
  BundleHeats heats() {
    return heats;
  }

  /** A second look at all networks of a kit. */
  Verified verify(Evaluation evaluation) {
    Verified all = Verified.none();
    for (Evaluation.Solved one : evaluation.cases()) {
      all = all.and(solver.verify(one.joint()));
    }
    return all;
  }

  /** Solves the kit. */
  Evaluation of(Map<Strand, Wire> wires) {
    Map<Strand, Double> conductorC = new LinkedHashMap<>();
    wires.forEach((strand, wire) -> conductorC.put(strand, wire.rating().celsius()));
    List<Evaluation.Solved> cases = solve(wires, conductorC);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Map<Strand, Map<String, Double>> currents = currents(cases);
      Map<Strand, List<BundleHeats.Hottest>> heat = heats.at(wires, currents);
      Evaluation evaluation = new Evaluation(wires, cases, currents, heat);
      boolean settled = true;
      for (Strand strand : strands) {
        double nowC = Math.min(HOTTEST_C, Math.ceil(evaluation.conductorC(strand) - 1e-6));
        Double beforeC = conductorC.put(strand, nowC);
        settled &= beforeC != null && beforeC == nowC;
      }
      if (settled) {
        return evaluation;
      }
      cases = solve(wires, conductorC);
    }
    throw new IllegalStateException("temperatures and currents do not settle");
  }

  private List<Evaluation.Solved> solve(Map<Strand, Wire> wires, Map<Strand, Double> conductorC) {
    List<Evaluation.Solved> solved = new ArrayList<>();
    for (int i = 0; i < tuples.size(); i++) {
      PlanningStopped.ifAsked();
      JointCases.Tuple tuple = tuples.get(i);
      List<PlacedLead> leads = leads(tuple, wires, conductorC);
      JointCase joint = new JointCase(tuple.ids(), tuple.ways(), leads, fuses, tuple.others());
      CaseFigures figures = known.computeIfAbsent(List.of(i, leads), key -> solver.solve(joint));
      solved.add(new Evaluation.Solved(tuple, joint, figures));
    }
    return solved;
  }

  private List<PlacedLead> leads(
      JointCases.Tuple tuple, Map<Strand, Wire> wires, Map<Strand, Double> conductorC) {
    List<PlacedLead> leads = new ArrayList<>();
    for (int i = 0; i < strands.size(); i++) {
      Strand strand = strands.get(i);
      Wire wire = wires.get(strand);
      Optional<LeadDraft> draft =
          tuple.ids().stream().flatMap(id -> strand.in(id).stream()).findFirst();
      if (draft.isPresent() && wire != null) {
        leads.add(
            new PlacedLead(
                name(i),
                draft.get(),
                Conductors.of(wire),
                lengths.finishedMm(strand) / 1000,
                conductorC.getOrDefault(strand, wire.rating().celsius()),
                ends.of(draft.get().a(), wire),
                ends.of(draft.get().b(), wire)));
      }
    }
    return leads;
  }

  /** Id of the lead a strand becomes, by its place among the strands. */
  static String name(int index) {
    return "L" + (index + 1);
  }

  private Map<Strand, Map<String, Double>> currents(List<Evaluation.Solved> cases) {
    Map<Strand, Map<String, Double>> currents = new LinkedHashMap<>();
    for (int i = 0; i < strands.size(); i++) {
      Strand strand = strands.get(i);
      Map<String, Double> byCase = new LinkedHashMap<>();
      for (Evaluation.Solved solved : cases) {
        Double currentA = solved.figures().leadsA().get(name(i));
        if (currentA != null) {
          solved.tuple().ids().stream()
              .filter(id -> strand.in(id).isPresent())
              .forEach(id -> byCase.merge(id, currentA, Math::max));
        }
      }
      strand
          .own()
          .ifPresent(own -> strand.cases().forEach(id -> byCase.put(id, own.current().amperes())));
      currents.put(strand, byCase);
    }
    return currents;
  }
}
