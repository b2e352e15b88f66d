package org.loomwright.planner.difference;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Plan;

/**
 * Two plans with what belongs together in them.
 *
 * @param before the earlier one
 * @param after the later one
 * @param was names in the earlier one
 * @param is names in the later one
 * @param leads leads that are the same
 * @param families cases of the same needs
 * @param detail changes of one sort told one by one
 */
record Two(
    Plan before,
    Plan after,
    PlanNames was,
    PlanNames is,
    List<LeadPair> leads,
    List<Family> families,
    int detail) {
  Two {
    leads = List.copyOf(leads);
    families = List.copyOf(families);
  }

  static Two of(Plan before, Plan after, int detail) {
    return new Two(
        before,
        after,
        new PlanNames(before),
        new PlanNames(after),
        LeadPair.match(before.design().leads(), after.design().leads()),
        Family.of(before.cases(), after.cases()),
        detail);
  }

  /** The later number of an earlier lead. */
  Optional<String> leadNow(String id) {
    return leads.stream()
        .filter(it -> it.before().id().equals(id))
        .map(it -> it.after().id())
        .findFirst();
  }

  /** Earlier leads that are gone. */
  List<Lead> goneLeads() {
    return before.design().leads().stream()
        .filter(lead -> leads.stream().noneMatch(it -> it.before().equals(lead)))
        .toList();
  }

  /** Later leads that are new. */
  List<Lead> newLeads() {
    return after.design().leads().stream()
        .filter(lead -> leads.stream().noneMatch(it -> it.after().equals(lead)))
        .toList();
  }
}
