package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.design.Case;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.ways.Demand;

/**
 * Cases and strands of the leads of the user's own. Leads that end alike on the same builds form
 * one component; its last case is that of the builds that do not use them.
 */
final class OwnCases {
  private final List<CaseSet> sets = new ArrayList<>();
  private final List<Strand> strands = new ArrayList<>();

  /**
   * @param before components there are already
   * @param served builds that the kit is sold to
   */
  OwnCases(OwnLeads leads, int before, Region served) {
    Map<Set<Region>, List<OwnLeads.Placed>> alike = new LinkedHashMap<>();
    for (OwnLeads.Placed placed : leads.placed()) {
      Set<Region> regions =
          placed.sides().stream()
              .map(OwnLeads.Side::region)
              .collect(Collectors.toCollection(LinkedHashSet::new));
      alike.computeIfAbsent(regions, r -> new ArrayList<>()).add(placed);
    }
    alike.forEach(
        (regions, group) -> add(CaseMaker.letter(before + sets.size()), regions, group, served));
  }

  List<CaseSet> sets() {
    return sets;
  }

  /** One strand for each lead. */
  List<Strand> strands() {
    return strands;
  }

  private void add(String letter, Set<Region> used, List<OwnLeads.Placed> group, Region served) {
    List<Region> regions =
        new ArrayList<>(
            used.stream()
                .sorted(
                    Comparator.comparingDouble((Region it) -> -it.share())
                        .thenComparing(it -> Described.of(it).when().text()))
                .toList());
    Region idle = used.stream().reduce(served, Region::minus);
    if (!idle.isEmpty()) {
      regions.add(idle);
    }
    String topic =
        "own "
            + (group.size() == 1 ? "lead: " : "leads: ")
            + group.stream().map(it -> it.lead().name()).collect(Collectors.joining(", "));
    List<CaseSet.Member> members = new ArrayList<>();
    for (Region region : regions) {
      Described described = Described.of(region);
      Case info =
          new Case(
              letter + (members.size() + 1),
              letter,
              topic,
              described.words(),
              described.when(),
              region.count(),
              region.share(),
              Map.of());
      members.add(new CaseSet.Member(info, region, Map.of(), demands(group, region)));
    }
    sets.add(new CaseSet(letter, List.of(), members));
    for (OwnLeads.Placed placed : group) {
      Strand strand =
          new Strand(
              letter, placed.sides().get(0).draft(), placed.route(), Optional.of(placed.lead()));
      for (CaseSet.Member member : members) {
        placed.sides().stream()
            .filter(side -> side.region().equals(member.region()))
            .forEach(side -> strand.use(member.id(), side.draft(), Set.of()));
      }
      strands.add(strand);
    }
  }

  private static List<CaseSet.Landed> demands(List<OwnLeads.Placed> group, Region region) {
    List<CaseSet.Landed> landed = new ArrayList<>();
    for (OwnLeads.Placed placed : group) {
      for (OwnLeads.Side side : placed.sides()) {
        if (side.region().equals(region)) {
          for (Demand demand : side.demands()) {
            landed.add(new CaseSet.Landed(side.draft(), demand));
          }
        }
      }
    }
    return landed;
  }
}
