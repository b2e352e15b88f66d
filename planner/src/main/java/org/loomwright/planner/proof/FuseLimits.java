package org.loomwright.planner.proof;

import java.util.Optional;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Slot;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.physics.protection.FuseFamily;

/**
 * A feed's fuse bears the load, rides out the peak, and is not larger than a need allows; needs
 * that want a fuse of their own share it only as they allow.
 *
 * <p>Peaks: the needs' continuous currents with the worst peak on top, for the longest peak time. A
 * fuse of the kit must by the opening-time band of its form (ISO 8820-3) stay closed; of a factory
 * fuse the form is not on file, and the peak must stay below twice its rating, where a blade fuse
 * opens within 5 s (ISO 8820-3).
 */
final class FuseLimits implements NetCheck {
  private static final double SLACK = 1e-9;
  private static final double FACTORY_PEAK = 2;

  private final Subject subject;

  FuseLimits(Subject subject) {
    this.subject = subject;
  }

  @Override
  public void check(NetAt at, Findings findings) {
    if (at.feed().isEmpty() || at.traced().isEmpty()) {
      return;
    }
    Source feed = at.feed().get();
    sharing(at, feed, findings);
    if (at.net().hasLeads()) {
      for (Circuit circuit : at.circuits()) {
        at.require(
            circuit.load().isPresent() || at.servesOnlyNeeds(circuit),
            Claim.LIMITS,
            findings,
            "the load already on " + circuit.name() + " is not known");
      }
    }
    if (feed.fuseA().isEmpty()) {
      return;
    }
    double fuseA = feed.fuseA().getAsDouble();
    loading(at, feed, fuseA, findings);
    peak(at, feed, fuseA, findings);
    for (Traced traced : at.traced()) {
      traced
          .need()
          .need()
          .fuseAtMost()
          .ifPresent(
              most ->
                  at.require(
                      fuseA <= most.amperes() + SLACK,
                      Claim.LIMITS,
                      findings,
                      traced.need().words()
                          + " may be behind "
                          + most.text()
                          + " at most and is behind "
                          + Figures.of(fuseA)
                          + " A"));
    }
  }

  private void loading(NetAt at, Source feed, double fuseA, Findings findings) {
    double loadA = at.continuousA() + at.factoryLoadA();
    Rules rules = subject.order().rules();
    double share =
        at.circuits().isEmpty()
            ? rules.fuseLoading().value().fraction()
            : inEngineBay(feed)
                ? rules.hostLoadingEngineBay().value().fraction()
                : rules.hostLoadingCabin().value().fraction();
    double limitA = share * fuseA;
    String figure =
        Figures.of(loadA)
            + " A of "
            + Figures.of(limitA)
            + " A on the "
            + Figures.of(fuseA)
            + " A fuse of "
            + feed.words();
    findings.figure(Claim.LIMITS, loadA / limitA, "load " + figure);
    at.require(loadA <= limitA + SLACK, Claim.LIMITS, findings, "the continuous load is " + figure);
  }

  private void peak(NetAt at, Source feed, double fuseA, Findings findings) {
    double peakA = 0;
    double peakTimeS = 0;
    for (Traced traced : at.traced()) {
      if (traced.need().need().peak().isPresent()) {
        double own = traced.need().need().peak().get().amperes();
        peakA =
            Math.max(
                peakA, at.continuousA() + at.factoryLoadA() - traced.need().continuousA() + own);
        peakTimeS =
            Math.max(
                peakTimeS, traced.need().need().peakTime().map(it -> it.seconds()).orElse(0.0));
      }
    }
    if (peakA == 0) {
      return;
    }
    Optional<FuseFamily> family = feed.kitFuse() ? family(feed) : Optional.empty();
    boolean holds =
        family.isPresent()
            ? new org.loomwright.physics.protection.Fuse(family.get(), fuseA)
                    .shortestOpeningS(peakA)
                >= peakTimeS
            : peakA <= FACTORY_PEAK * fuseA + SLACK;
    at.require(
        holds,
        Claim.LIMITS,
        findings,
        "the "
            + Figures.of(fuseA)
            + " A fuse of "
            + feed.words()
            + " may open at the peak of "
            + Figures.of(peakA)
            + " A for "
            + Figures.of(peakTimeS)
            + " s");
  }

  private Optional<FuseFamily> family(Source feed) {
    Optional<Slot> slot =
        subject.vehicle().fuseBlocks().stream()
            .flatMap(block -> block.slots().stream().filter(it -> isAt(feed, block, it)))
            .findFirst();
    Optional<String> form =
        slot.flatMap(
            it ->
                subject.order().parts().fuses().stream()
                    .map(Fuse::form)
                    .filter(known -> known.equals(it.form()))
                    .findFirst());
    return form.flatMap(
        it ->
            switch (it) {
              case "blade" -> Optional.of(FuseFamily.REGULAR_BLADE);
              case "small blade" -> Optional.of(FuseFamily.SMALL_BLADE);
              case "large blade" -> Optional.of(FuseFamily.LARGE_BLADE);
              default -> Optional.empty();
            });
  }

  private static void sharing(NetAt at, Source feed, Findings findings) {
    for (Traced one : at.traced()) {
      if (!one.need().need().ownFuse()) {
        continue;
      }
      at.require(
          at.factoryLoadA() == 0,
          Claim.NEEDS_MET,
          findings,
          one.need().words() + " needs a fuse of its own and shares that of " + feed.words());
      for (Traced other : at.traced()) {
        boolean allowed =
            other == one
                || (other.need().equipment().id().equals(one.need().equipment().id())
                    && one.need().need().shareWith().contains(other.need().name()));
        at.require(
            allowed,
            Claim.NEEDS_MET,
            findings,
            one.need().words()
                + " needs a fuse of its own and shares one with "
                + other.need().words());
      }
    }
  }

  private boolean inEngineBay(Source feed) {
    return subject.vehicle().fuseBlocks().stream()
        .filter(block -> block.slots().stream().anyMatch(slot -> isAt(feed, block, slot)))
        .anyMatch(block -> subject.inEngineBay(block.place()));
  }

  private static boolean isAt(Source feed, FuseBlock block, Slot slot) {
    return new Spot.OfSlot(block.id(), slot.id()).text().equals(feed.node());
  }
}
