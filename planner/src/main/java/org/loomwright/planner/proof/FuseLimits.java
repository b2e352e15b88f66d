package org.loomwright.planner.proof;

import java.util.Optional;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.physics.SumException;
import org.loomwright.physics.protection.FuseFamily;
import org.loomwright.physics.protection.FusePlace;
import org.loomwright.physics.protection.FuseRerating;
import org.loomwright.physics.protection.LoadingByPlace;

/**
 * A feed's fuse bears the load, rides out the peak, and is not larger than a need allows; needs
 * that want a fuse of their own share it only as they allow.
 *
 * <p>A fuse in warm air carries less and opens as one of a smaller rating. A fuse of the kit may be
 * loaded by the rule or by the strictest published limit for its place and ambient, whichever is
 * less; one of the factory by the rule, and no more than its rating is worth in the air there.
 *
 * <p>Peaks: the needs' continuous currents with the worst peak on top, for the longest peak time. A
 * fuse must by the opening-time band of its form (ISO 8820-3) stay closed; where the form of a
 * factory fuse is not on file, the peak must stay below twice its rating, where a blade fuse opens
 * within 5 s (ISO 8820-3).
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
    double limitA = share(at, feed, findings) * fuseA;
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

  /** Most load over rating: the rule, or what place and ambient leave, whichever is less. */
  private double share(NetAt at, Source feed, Findings findings) {
    Rules rules = subject.order().rules();
    Optional<Warm> warm = warm(at, feed, findings);
    if (at.circuits().isEmpty()) {
      double rule = rules.fuseLoading().value().fraction();
      return warm.map(it -> Math.min(rule, it.loading())).orElse(rule);
    }
    double rule =
        (inEngineBay(feed) ? rules.hostLoadingEngineBay() : rules.hostLoadingCabin())
            .value()
            .fraction();
    return warm.map(it -> Math.min(rule, it.factor())).orElse(rule);
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
    Optional<Warm> warm = warm(at, feed, findings);
    boolean holds =
        warm.isPresent()
            ? new org.loomwright.physics.protection.Fuse(warm.get().family(), fuseA)
                    .shortestOpeningS(peakA / warm.get().factor())
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
            + warm.map(it -> " at " + Figures.of(it.ambientC()) + " °C").orElse("")
            + " may open at the peak of "
            + Figures.of(peakA)
            + " A for "
            + Figures.of(peakTimeS)
            + " s");
  }

  /**
   * A fuse where it sits.
   *
   * @param family its family
   * @param ambientC air around it, °C
   * @param factor share of its rating it carries for good there
   * @param loading most load over rating of an added circuit there
   */
  private record Warm(FuseFamily family, double ambientC, double factor, double loading) {}

  /** Empty where form or place of the fuse is not on file; a fault where the air is too hot. */
  private Optional<Warm> warm(NetAt at, Source feed, Findings findings) {
    Optional<FeedSpot> spot = FeedSpot.of(subject, feed);
    Optional<FuseFamily> family = spot.flatMap(it -> it.family(at, feed));
    Optional<Double> ambientC = spot.flatMap(it -> it.ambientC(subject));
    if (family.isEmpty() || ambientC.isEmpty()) {
      return Optional.empty();
    }
    try {
      FusePlace place = inEngineBay(feed) ? FusePlace.ENGINE_BAY : FusePlace.CABIN;
      return Optional.of(
          new Warm(
              family.get(),
              ambientC.get(),
              FuseRerating.factor(family.get(), ambientC.get()),
              LoadingByPlace.of(family.get(), place, ambientC.get()).strictest().share()));
    } catch (SumException outsideTheSums) {
      at.fail(
          Claim.LIMITS,
          findings,
          "the fuse of " + feed.words() + " can't be judged: " + outsideTheSums.getMessage());
      return Optional.empty();
    }
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
    return FeedSpot.of(subject, feed)
        .filter(spot -> subject.inEngineBay(spot.block().place()))
        .isPresent();
  }
}
