package org.loomwright.planner.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Case;
import org.loomwright.planner.builds.Region;
import org.loomwright.planner.need.NeedAt;
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
   */
  public record Member(Case info, Region region, Map<NeedAt, Way> ways) {
    public Member {
      ways = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(ways));
    }

    /** Case id. */
    public String id() {
      return info.id();
    }
  }

  /** The case with this id. */
  public Optional<Member> member(String id) {
    return members.stream().filter(it -> it.id().equals(id)).findFirst();
  }

  /** Ids of all cases, in order. */
  public List<String> ids() {
    return members.stream().map(Member::id).toList();
  }
}
