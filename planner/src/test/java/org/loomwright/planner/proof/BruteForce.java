package org.loomwright.planner.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Step;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Undo;

/** The oracle: walks each build alone, and compares builds that gave the same answers. */
final class BruteForce {
  /** A build that stands at a step. */
  private record At(Map<String, String> build, Map<String, String> answers, Set<String> read) {}

  private final RandomKit kit;
  private final List<Map<String, String>> possible = new ArrayList<>();
  private final Map<String, List<At>> visits = new HashMap<>();
  final Set<Map<String, String>> unserved = new LinkedHashSet<>();
  boolean covered = true;
  boolean decided = true;
  boolean landedRight = true;

  BruteForce(RandomKit kit) {
    this.kit = kit;
    for (Map<String, String> build : kit.combinations()) {
      if (kit.order.vehicle().rules().stream().noneMatch(it -> it.exclude().holds(build))) {
        possible.add(build);
      }
    }
    possible.forEach(this::walk);
    kit.guide.steps().forEach(this::judge);
  }

  int possible() {
    return possible.size();
  }

  private void walk(Map<String, String> build) {
    Step step = kit.guide.step(kit.guide.start()).orElseThrow();
    Map<String, String> answers = new TreeMap<>();
    Set<String> read = new HashSet<>();
    while (true) {
      visits
          .computeIfAbsent(step.id(), id -> new ArrayList<>())
          .add(new At(build, new TreeMap<>(answers), new HashSet<>(read)));
      if (step.ask().isPresent()) {
        String trait = step.ask().get().trait();
        answers.put(trait, build.getOrDefault(trait, ""));
        if (step.ask().get().how().isReading()) {
          read.add(trait);
        }
      }
      if (kit.guide.ends().contains(step.id())) {
        return;
      }
      List<Edge> ways =
          kit.guide.from(step.id()).stream().filter(it -> it.when().holds(build)).toList();
      covered &= ways.size() == 1;
      if (ways.isEmpty()) {
        unserved.add(build);
        return;
      }
      step = kit.guide.step(ways.get(0).to()).orElseThrow();
    }
  }

  private void judge(Step step) {
    List<At> here = visits.getOrDefault(step.id(), List.of());
    Map<Map<String, String>, Map<Edge, Boolean>> goes = new HashMap<>();
    Set<At> judged = new HashSet<>();
    for (At one : here) {
      // Builds with the same answers, the one given here included, must all go the same way.
      Map<String, String> knows = new TreeMap<>(one.answers());
      step.ask()
          .ifPresent(ask -> knows.put(ask.trait(), one.build().getOrDefault(ask.trait(), "")));
      for (Edge edge : kit.guide.from(step.id())) {
        boolean go = edge.when().holds(one.build());
        Boolean before = goes.computeIfAbsent(knows, key -> new HashMap<>()).putIfAbsent(edge, go);
        decided &= before == null || before == go;
      }
      if (step.act().filter(it -> it instanceof Act.Land).isPresent()
          && judged.add(new At(Map.of(), one.answers(), one.read()))) {
        landed(step, (Act.Land) step.act().get(), one);
      }
    }
  }

  private void landed(Step step, Act.Land act, At one) {
    Condition right = kit.right(act.lead());
    boolean slot = Integer.parseInt(act.lead().substring(1)) >= 4;
    boolean hard = slot || step.undo() != Undo.EASILY;
    List<Trait> unread =
        kit.order.vehicle().traits().stream()
            .filter(it -> it.tell().how().isReading() && !one.read().contains(it.id()))
            .filter(it -> right.traits().contains(it.id()))
            .toList();
    for (Map<String, String> other : possible) {
      if (other.entrySet().containsAll(one.answers().entrySet())) {
        landedRight &= right.holds(other);
        landedRight &= !hard || holdsWhateverIsUnread(right, unread, other);
      }
    }
  }

  /** What was not measured must not matter: any value of it will do. */
  private static boolean holdsWhateverIsUnread(
      Condition right, List<Trait> unread, Map<String, String> build) {
    if (unread.isEmpty()) {
      return right.holds(build);
    }
    boolean holds = true;
    for (TraitValue value : unread.get(0).values()) {
      Map<String, String> other = new TreeMap<>(build);
      other.put(unread.get(0).id(), value.id());
      holds &= holdsWhateverIsUnread(right, unread.subList(1, unread.size()), other);
    }
    return holds;
  }
}
