package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.kit.OwnLead;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.route.Route;
import org.loomwright.planner.ways.LeadDraft;

/**
 * A lead of the kit before its wire is chosen: drafts of different cases that one wire can serve,
 * because one end is the same and the others end at the same place.
 */
final class Strand {
  private final String component;
  private final Map<String, LeadDraft> byCase = new LinkedHashMap<>();
  private final Map<String, Set<NeedAt>> needsByCase = new LinkedHashMap<>();
  private final Route route;
  private final LeadDraft first;
  private final Optional<OwnLead> own;

  Strand(String component, LeadDraft draft, Route route) {
    this(component, draft, route, Optional.empty());
  }

  /**
   * @param own the lead of the user's own that it is
   */
  Strand(String component, LeadDraft draft, Route route, Optional<OwnLead> own) {
    this.component = component;
    this.own = own;
    this.first = draft;
    this.route = route;
  }

  void use(String caseId, LeadDraft draft, Set<NeedAt> needs) {
    byCase.put(caseId, draft);
    needsByCase.put(caseId, new LinkedHashSet<>(needs));
  }

  /** Whether a draft, with the needs it serves by case, could be this wire. */
  boolean canServe(LeadDraft draft, Map<String, Set<NeedAt>> uses) {
    boolean sameNeed =
        uses.values().stream().flatMap(Set::stream).anyMatch(need -> needs().contains(need));
    if (draft.kind() != first.kind()
        || !sameNeed
        || uses.keySet().stream().anyMatch(byCase::containsKey)) {
      return false;
    }
    return byCase.values().stream()
        .allMatch(
            own ->
                own.a().place().equals(draft.a().place())
                    && own.b().place().equals(draft.b().place())
                    && (own.a().key().equals(draft.a().key())
                        || own.b().key().equals(draft.b().key())));
  }

  String component() {
    return component;
  }

  /** The lead of the user's own that it is, empty for what needs ask for. */
  Optional<OwnLead> own() {
    return own;
  }

  CircuitKind kind() {
    return first.kind();
  }

  /** Name that does not depend on the order of strands. */
  String key() {
    return first.key();
  }

  Route route() {
    return route;
  }

  Set<String> cases() {
    return byCase.keySet();
  }

  Optional<LeadDraft> in(String caseId) {
    return Optional.ofNullable(byCase.get(caseId));
  }

  Set<NeedAt> needs(String caseId) {
    return needsByCase.getOrDefault(caseId, Set.of());
  }

  /** All needs over all cases, in order of appearance. */
  List<NeedAt> needs() {
    Set<NeedAt> all = new LinkedHashSet<>();
    needsByCase.values().forEach(all::addAll);
    return List.copyOf(all);
  }

  /** The same strand on another path between the same places. */
  Strand along(Route other) {
    Strand moved = new Strand(component, first, other, own);
    moved.byCase.putAll(byCase);
    moved.needsByCase.putAll(needsByCase);
    return moved;
  }

  /**
   * The end at one side as the bench makes it: a terminal or joint can be cut off and spliced in
   * the vehicle, not the other way round.
   */
  Touch made(boolean a) {
    Set<Touch> touches = touches(a).keySet();
    return touches.stream()
        .filter(it -> !(it instanceof Touch.AtCircuit))
        .findFirst()
        .orElseGet(() -> touches.iterator().next());
  }

  /** Distinct ends at one side, each with the cases that use it; most used first. */
  Map<Touch, List<String>> touches(boolean a) {
    Map<Touch, List<String>> touches = new LinkedHashMap<>();
    byCase.forEach(
        (caseId, draft) ->
            touches.computeIfAbsent(a ? draft.a() : draft.b(), t -> new ArrayList<>()).add(caseId));
    return touches;
  }
}
