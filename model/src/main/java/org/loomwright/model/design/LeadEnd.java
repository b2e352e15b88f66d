package org.loomwright.model.design;

import java.util.List;
import java.util.Optional;

/**
 * One end of a lead.
 *
 * @param place where it ends
 * @param uses its landings; more than one when the end is changeable or parked in some cases
 */
public record LeadEnd(String place, List<EndUse> uses) {
  public LeadEnd {
    uses = List.copyOf(uses);
  }

  /** The landing in a case, empty when the case does not have the lead. */
  public Optional<Landing> landing(String caseId) {
    return uses.stream()
        .filter(use -> use.cases().contains(caseId))
        .map(EndUse::landing)
        .findFirst();
  }

  /** The landing the bench makes. */
  public Landing asMade() {
    return uses.stream()
        .filter(EndUse::asMade)
        .map(EndUse::landing)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("an end without a landing made on the bench"));
  }

  /** True when some case needs the end made otherwise than the bench makes it. */
  public boolean isChangeable() {
    return uses.stream()
        .anyMatch(use -> !use.asMade() && !(use.landing() instanceof Landing.Parked));
  }

  /** True when some case parks the end, loose ends of leads that are in use included. */
  public boolean isParkedSomewhere() {
    return uses.stream().anyMatch(use -> use.landing() instanceof Landing.Parked);
  }

  /**
   * Whether a case uses the end: it lands it, or leaves it loose as the bench makes it. An end that
   * ends elsewhere on other builds and is taped back here is not used.
   */
  public boolean isUsedIn(String caseId) {
    return uses.stream()
        .filter(use -> use.cases().contains(caseId))
        .anyMatch(use -> use.asMade() || !(use.landing() instanceof Landing.Parked));
  }
}
