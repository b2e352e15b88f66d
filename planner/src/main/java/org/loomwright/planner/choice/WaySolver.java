package org.loomwright.planner.choice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Settings;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.watch.PlanningStopped;
import org.loomwright.planner.ways.LeadDraft;
import org.loomwright.planner.ways.Use;
import org.loomwright.planner.ways.Way;

/**
 * The cheapest set of ways for one group: one way per need, no spot held twice, no capacity
 * exceeded; a lead or an opening that several ways need is paid once. Exact, by constraint solver
 * with a fixed search order, so that the same input gives the same choice.
 */
final class WaySolver {
  // Costs are compared in tenths of a cent, capacities in milliampere or thousandths.
  private static final double COST_UNIT = 1_000;
  private static final double USE_UNIT = 1_000;
  // So that 16.1 A, a hair more as a binary fraction, still fits into 16.1 A.
  private static final double ROUNDING = 1e-6;

  private final ToDoubleFunction<LeadDraft> leadCost;
  private final ToDoubleFunction<String> openingCost;

  WaySolver(ToDoubleFunction<LeadDraft> leadCost, ToDoubleFunction<String> openingCost) {
    this.leadCost = leadCost;
    this.openingCost = openingCost;
  }

  /**
   * Solves one group.
   *
   * @param needs needs to meet
   * @param liked leads already used for other groups; on equal cost they are preferred, which keeps
   *     the number of cases low
   * @param avoid spots to leave to others on equal cost
   * @return a way per need, empty when no set meets all needs
   */
  Optional<Map<NeedAt, Way>> solve(
      Group group, Collection<NeedAt> needs, Set<String> liked, Set<String> avoid) {
    // Tables of value pairs would cost more to set up than they ever save here.
    Model model = new Model("ways", Settings.init().setEnableTableSubstitution(false));
    Map<Way, BoolVar> chosen = new LinkedHashMap<>();
    Map<String, BoolVar> brought = new LinkedHashMap<>();
    Map<String, LeadDraft> drafts = new LinkedHashMap<>();
    Map<String, BoolVar> opened = new LinkedHashMap<>();
    for (NeedAt need : needs) {
      List<Way> ways = group.ways().getOrDefault(need, List.of());
      if (ways.isEmpty()) {
        return Optional.empty();
      }
      BoolVar[] options = new BoolVar[ways.size()];
      for (int i = 0; i < options.length; i++) {
        Way way = ways.get(i);
        options[i] = model.boolVar("w" + chosen.size());
        chosen.put(way, options[i]);
        for (LeadDraft lead : way.leads()) {
          drafts.put(lead.key(), lead);
          BoolVar there =
              brought.computeIfAbsent(lead.key(), key -> model.boolVar("l" + brought.size()));
          model.arithm(options[i], "<=", there).post();
        }
        for (String opening : way.openings()) {
          BoolVar open = opened.computeIfAbsent(opening, key -> model.boolVar("o" + opened.size()));
          model.arithm(options[i], "<=", open).post();
        }
      }
      model.sum(options, "=", 1).post();
    }
    exclusive(model, chosen);
    capacities(model, chosen);
    IntVar cost = cost(model, chosen, brought, opened, drafts, liked, avoid);
    model.setObjective(Model.MINIMIZE, cost);
    List<BoolVar> decisions = new ArrayList<>(chosen.values());
    decisions.addAll(brought.values());
    decisions.addAll(opened.values());
    // Ways come cheapest kind first; trying "chosen" first finds good sets early.
    model.getSolver().setSearch(Search.inputOrderUBSearch(decisions.toArray(new BoolVar[0])));
    Solution best =
        model.getSolver().findOptimalSolution(cost, Model.MINIMIZE, PlanningStopped::isAsked);
    PlanningStopped.ifAsked();
    if (best == null) {
      return Optional.empty();
    }
    Map<NeedAt, Way> result = new LinkedHashMap<>();
    chosen.forEach(
        (way, variable) -> {
          if (best.getIntVal(variable) == 1) {
            result.put(way.need(), way);
          }
        });
    return Optional.of(result);
  }

  // Each spot has at most one holder.
  private static void exclusive(Model model, Map<Way, BoolVar> chosen) {
    Map<String, Map<String, BoolVar>> holders = new TreeMap<>();
    chosen.forEach(
        (way, variable) ->
            Spots.taken(way)
                .forEach(
                    (spot, holder) -> {
                      BoolVar holds =
                          holders
                              .computeIfAbsent(spot, s -> new LinkedHashMap<>())
                              .computeIfAbsent(holder, h -> model.boolVar(spot + " for " + h));
                      model.arithm(variable, "<=", holds).post();
                    }));
    for (Map<String, BoolVar> rivals : holders.values()) {
      if (rivals.size() > 1) {
        model.sum(rivals.values().toArray(new BoolVar[0]), "<=", 1).post();
      }
    }
  }

  private static void capacities(Model model, Map<Way, BoolVar> chosen) {
    Map<String, List<Map.Entry<Use, BoolVar>>> uses = new TreeMap<>();
    chosen.forEach(
        (way, variable) -> {
          for (Use use : way.uses()) {
            uses.computeIfAbsent(use.resource(), r -> new ArrayList<>())
                .add(Map.entry(use, variable));
          }
        });
    for (List<Map.Entry<Use, BoolVar>> all : uses.values()) {
      int[] amounts =
          all.stream()
              .mapToInt(it -> (int) Math.ceil(it.getKey().amount() * USE_UNIT - ROUNDING))
              .toArray();
      BoolVar[] variables = all.stream().map(Map.Entry::getValue).toArray(BoolVar[]::new);
      int limit = (int) Math.floor(all.get(0).getKey().limit() * USE_UNIT + ROUNDING);
      model.scalar(variables, amounts, "<=", limit).post();
    }
  }

  private IntVar cost(
      Model model,
      Map<Way, BoolVar> chosen,
      Map<String, BoolVar> brought,
      Map<String, BoolVar> opened,
      Map<String, LeadDraft> drafts,
      Set<String> liked,
      Set<String> avoid) {
    List<BoolVar> variables = new ArrayList<>();
    List<Integer> weights = new ArrayList<>();
    chosen.forEach(
        (way, variable) -> {
          variables.add(variable);
          Set<String> contested = new TreeSet<>(Spots.taken(way).keySet());
          contested.retainAll(avoid);
          weights.add((int) Math.round(way.ownCost() * COST_UNIT) + contested.size());
        });
    brought.forEach(
        (key, variable) -> {
          LeadDraft draft = drafts.get(key);
          if (draft != null) {
            variables.add(variable);
            // One unit more for a lead not used so far: decides ties, never a real difference.
            weights.add(
                (int) Math.round(leadCost.applyAsDouble(draft) * COST_UNIT)
                    + (liked.contains(key) ? 0 : 1));
          }
        });
    opened.forEach(
        (opening, variable) -> {
          variables.add(variable);
          weights.add((int) Math.round(openingCost.applyAsDouble(opening) * COST_UNIT));
        });
    int most = weights.stream().mapToInt(Integer::intValue).sum();
    // No sensible set of ways costs as much as the largest number the solver can hold.
    IntVar cost = model.intVar("cost", 0, Math.max(1, Math.min(most, IntVar.MAX_INT_BOUND)));
    model
        .scalar(
            variables.toArray(new BoolVar[0]),
            weights.stream().mapToInt(Integer::intValue).toArray(),
            "=",
            cost)
        .post();
    return cost;
  }
}
