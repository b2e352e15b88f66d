package org.loomwright.planner.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Case;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.ways.Demand;
import org.loomwright.planner.ways.LeadDraft;
import org.loomwright.planner.ways.Way;

/**
 * The cases of one component.
 *
 * @param letter component letter
 * @param needs needs
 * @param members cases
 */
public record CaseSet(String letter, List<NeedAt> needs, List<Member> members) {
  public CaseSet {
    needs = List.copyOf(needs);
    members = List.copyOf(members);
  }

  /**
   * One case with its builds and ways as the planner holds them.
   *
   * @param info the case as data
   * @param region builds
   * @param ways way per need
   * @param landed what the landings of the user's own leads rest on
   */
  public record Member(Case info, Region region, Map<NeedAt, Way> ways, List<Landed> landed) {
    public Member {
      landed = List.copyOf(landed);
      ways = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(ways));
    }

    /** A case without leads of the user's own. */
    public Member(Case info, Region region, Map<NeedAt, Way> ways) {
      this(info, region, ways, List.of());
    }

    /** Case id. */
    public String id() {
      return info.id();
    }
  }

  /**
   * Something that a lead of the user's own needs of the vehicle.
   *
   * @param draft the lead
   * @param demand what it needs
   */
  public record Landed(LeadDraft draft, Demand demand) {}

  /** The case with this id. */
  public Optional<Member> member(String id) {
    return members.stream().filter(it -> it.id().equals(id)).findFirst();
  }

  /** Ids of all cases, in order. */
  public List<String> ids() {
    return members.stream().map(Member::id).toList();
  }
}
