package org.loomwright.planner.need;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.GapPart;
import org.loomwright.model.design.GapStatus;
import org.loomwright.model.design.NeedGap;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.planner.builds.Described;
import org.loomwright.planner.builds.Region;

/**
 * What each build has of a need. A build counts as "not known" when it would be served if an
 * unknown fact turned out one way and not if it turned out the other way.
 */
public final class GapFinder {
  private final Facts facts;
  private final Collection<String> unknownTraits;

  /**
   * @param unknownTraits traits that stand for unknown facts
   */
  public GapFinder(Facts facts, Collection<String> unknownTraits) {
    this.facts = facts;
    this.unknownTraits = List.copyOf(unknownTraits);
  }

  /** The gap of one need. */
  public NeedGap of(NeedAt need, Already already) {
    Region met = already.met(facts);
    Region surelyMet = met.certain(unknownTraits);
    Region notKnown = met.blurred(unknownTraits).minus(surelyMet);
    Region partly = already.partly().minus(surelyMet).minus(notKnown);
    Region missing = facts.builds().possible().minus(surelyMet).minus(notKnown).minus(partly);
    List<GapPart> parts = new ArrayList<>();
    add(parts, GapStatus.ALREADY_THERE, surelyMet, there(already), evidence(already));
    add(
        parts,
        GapStatus.PARTLY_THERE,
        partly,
        String.join("; ", already.reasons()),
        evidence(already));
    add(parts, GapStatus.MISSING, missing, missing(need), missingEvidence(need));
    add(
        parts,
        GapStatus.NOT_KNOWN,
        notKnown,
        "depends on a fact that has to be looked up on the vehicle",
        List.of());
    return new NeedGap(need.id(), need.words(), parts);
  }

  private static void add(
      List<GapPart> parts, GapStatus status, Region region, String reason, List<String> evidence) {
    if (!region.isEmpty()) {
      Described described = Described.of(region);
      parts.add(
          new GapPart(
              status, described.when(), described.words(), region.count(), reason, evidence));
    }
  }

  private static String there(Already already) {
    return String.join(
        "; ", already.full().keySet().stream().map(it -> it.name() + " ends here").toList());
  }

  private String missing(NeedAt need) {
    Optional<Connector> connector = need.mount().connector().flatMap(facts.vehicle()::connector);
    if (connector.isEmpty()) {
      return "the kit brings the housing and all its leads";
    }
    Region absent = facts.builds().possible().minus(facts.present(connector.get()));
    String cavity = "cavity " + need.pin().cavity() + " of " + connector.get().name();
    return absent.isEmpty()
        ? "no wire of this kind ends in " + cavity
        : "no wire of this kind ends in " + cavity + ", or the connector itself is absent";
  }

  private List<String> evidence(Already already) {
    return already.full().keySet().stream()
        .map(it -> it.name() + ": " + words(it.evidence()))
        .toList();
  }

  private List<String> missingEvidence(NeedAt need) {
    return need.mount()
        .connector()
        .flatMap(facts.vehicle()::connector)
        .map(it -> List.of(it.name() + ": " + words(it.evidence())))
        .orElse(List.of());
  }

  private static String words(Optional<Evidence> evidence) {
    return evidence.map(Evidence::words).orElse("no evidence on file");
  }
}
