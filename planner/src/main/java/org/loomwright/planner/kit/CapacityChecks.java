package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.loomwright.model.design.TraceLine;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.ways.OwnUses;
import org.loomwright.planner.ways.Use;
import org.loomwright.planner.ways.Way;

/** Room on sections, factory circuits and ground studs. */
final class CapacityChecks {
  private final List<CaseSet> sets;
  private final Checklist list;
  private final Map<String, Use> own;

  CapacityChecks(KitOrder order, List<CaseSet> sets, Checklist list) {
    this.own = OwnUses.of(order);
    this.sets = List.copyOf(sets);
    this.list = list;
  }

  // Sum over components of each one's worst case: an upper bound for every build.
  void check() {
    Map<String, Use> uses = new LinkedHashMap<>();
    Map<String, List<Worst>> worst = new LinkedHashMap<>();
    for (CaseSet set : sets) {
      Map<String, Map<String, Double>> byCase = new LinkedHashMap<>();
      for (CaseSet.Member member : set.members()) {
        for (Way way : member.ways().values()) {
          for (Use use : way.uses()) {
            uses.put(use.resource(), use);
            byCase
                .computeIfAbsent(use.resource(), r -> new LinkedHashMap<>())
                .merge(member.id(), use.amount(), Double::sum);
          }
        }
      }
      byCase.forEach(
          (resource, amounts) ->
              worst.computeIfAbsent(resource, r -> new ArrayList<>()).add(Worst.of(amounts)));
    }
    own.forEach(
        (resource, use) ->
            uses.putIfAbsent(
                resource, new Use(resource, 0, use.limit() - use.amount(), use.words())));
    uses.forEach((resource, use) -> capacity(use, worst.getOrDefault(resource, List.of())));
  }

  /** The most that any case of a component takes of something, and the cases that do. */
  private record Worst(double amount, List<String> cases) {
    static Worst of(Map<String, Double> amounts) {
      double most = amounts.values().stream().mapToDouble(it -> it).max().orElse(0);
      return new Worst(
          most,
          amounts.entrySet().stream()
              .filter(it -> it.getValue() >= most - 1e-9)
              .map(Map.Entry::getKey)
              .toList());
    }
  }

  private void capacity(Use use, List<Worst> worst) {
    boolean lugs = use.resource().endsWith("lugs");
    String unit = lugs ? "lugs" : "A";
    // Ways are offered only what the user's own leads leave of it.
    double ownAmount = Optional.ofNullable(own.get(use.resource())).map(Use::amount).orElse(0.0);
    list.add(
        "capacity/" + use.resource(),
        "room for added " + (lugs ? "lugs" : "load"),
        use.words(),
        worst.stream().flatMap(it -> it.cases().stream()).toList(),
        worst.stream().mapToDouble(Worst::amount).sum() + ownAmount,
        use.limit() + ownAmount,
        true,
        unit,
        "vehicle document and shop rules",
        trace(use, worst, ownAmount, unit));
  }

  private static List<TraceLine> trace(Use use, List<Worst> worst, double ownAmount, String unit) {
    List<TraceLine> trace = new ArrayList<>();
    for (int i = 0; i < worst.size(); i++) {
      Worst it = worst.get(i);
      trace.add(
          new TraceLine(
              "a" + (i + 1) + ", added in case " + String.join(" or ", it.cases()),
              "given",
              it.amount(),
              unit,
              "the equipment's document"));
    }
    int parts = worst.size();
    if (ownAmount > 0) {
      parts++;
      trace.add(
          new TraceLine(
              "a" + parts + ", leads of the user's own", "given", ownAmount, unit, "kit document"));
    }
    trace.add(
        new TraceLine(
            "added in all, each component in its worst case",
            IntStream.rangeClosed(1, parts)
                .mapToObj(i -> "a" + i)
                .collect(Collectors.joining(" + ")),
            worst.stream().mapToDouble(Worst::amount).sum() + ownAmount,
            unit,
            ""));
    trace.add(
        new TraceLine(
            "room for added leads on " + use.words(),
            "given",
            use.limit() + ownAmount,
            unit,
            "vehicle document and shop rules"));
    return trace;
  }
}
