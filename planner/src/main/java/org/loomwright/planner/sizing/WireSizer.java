package org.loomwright.planner.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.rules.Rules;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.protection.LoadingLimit;
import org.loomwright.physics.sizing.FuseChoice;
import org.loomwright.physics.sizing.FuseLimits;
import org.loomwright.physics.sizing.FuseRequest;
import org.loomwright.physics.sizing.LeastSection;
import org.loomwright.physics.wire.Drop;

/** The smallest wire on file that passes every check of a lead. */
public final class WireSizer {
  /** Name of the check of a wire against the table of fuse and smallest section. */
  public static final String SECTION = "section for the fuse";

  private final Parts parts;
  private final Rules rules;

  /** Sizes with the wires and limits of an order. */
  public WireSizer(Parts parts, Rules rules) {
    this.parts = parts;
    this.rules = rules;
  }

  /** Wires in the order they are tried: by copper, then by price, then by part number. */
  public List<Wire> wires() {
    return parts.wires().stream()
        .sorted(
            Comparator.comparingDouble((Wire it) -> it.size().areaMm2())
                .thenComparing(it -> it.price().amount())
                .thenComparing(Wire::id))
        .toList();
  }

  /**
   * The smallest wire that bears what is asked and fits its ends.
   *
   * @param fits whether parts on file take the wire at both ends
   */
  public Optional<Wire> smallest(WireNeed need, Predicate<Wire> fits) {
    return wires().stream()
        .filter(wire -> wire.size().areaMm2() >= need.leastAreaMm2() - 1e-9)
        .filter(fits)
        .filter(wire -> passes(wire, need))
        .findFirst();
  }

  /** Whether a wire passes every check, marginally or better. */
  public boolean passes(Wire wire, WireNeed need) {
    if (wire.rating().celsius() <= need.ambientC()) {
      return false;
    }
    try {
      return dropV(wire, need) <= need.dropV() + 1e-9
          && protection(wire, need).stream().allMatch(check -> check.verdict() != Verdict.FAILS);
    } catch (SumException outsideTheSums) {
      // A wire the sums can't judge is never chosen.
      return false;
    }
  }

  /**
   * The protection checks of a wire behind its fuse. The drop is left out: feed and ground have
   * budgets of their own. For a ground, loading and peak are left out too: they concern the fuse,
   * and are shown with the feeds behind it.
   */
  public List<Check> protection(Wire wire, WireNeed need) {
    List<Check> checks = new ArrayList<>();
    for (Check check : FuseChoice.check(request(wire, need), need.fuse()).checks()) {
      boolean ofFuse = check.name().equals("loading") || check.name().equals("peak");
      if (!check.name().equals("voltage drop") && !(need.ground() && ofFuse)) {
        checks.add(check);
      }
    }
    LeastSection.areaMm2(need.fuse().ratingA())
        .ifPresent(
            least ->
                checks.add(
                    Check.atLeast(
                        SECTION,
                        wire.size().areaMm2(),
                        least,
                        "mm²",
                        "smallest section behind the " + need.fuse().label(),
                        LeastSection.SOURCE)));
    return checks;
  }

  /** The first check a wire fails, in words with its figure; empty when it passes all. */
  public Optional<String> firstFailing(Wire wire, WireNeed need) {
    if (wire.rating().celsius() <= need.ambientC()) {
      return Optional.of(
          "the insulation bears " + wire.rating().text() + ", no more than the ambient");
    }
    try {
      Optional<String> protection =
          protection(wire, need).stream()
              .filter(check -> check.verdict() == Verdict.FAILS)
              .map(
                  check ->
                      check.name()
                          + " is "
                          + Require.text(check.value())
                          + " "
                          + check.unit()
                          + ", limit "
                          + Require.text(check.limit()))
              .findFirst();
      double dropV = dropV(wire, need);
      return protection.isPresent() || dropV <= need.dropV() + 1e-9
          ? protection
          : Optional.of(
              "voltage drop is "
                  + Require.text(dropV)
                  + " V, limit "
                  + Require.text(need.dropV())
                  + " V");
    } catch (SumException outsideTheSums) {
      return Optional.ofNullable(outsideTheSums.getMessage());
    }
  }

  /** How the figures of {@link #protection} were reached. */
  public Trace protectionTrace(Wire wire, WireNeed need) {
    return FuseChoice.check(request(wire, need), need.fuse()).trace();
  }

  /** Drop of the whole result, volt and trace, with the conductor at its rated temperature. */
  public Drop.Result drop(Wire wire, double lengthMm, double currentA, double supplyV) {
    return Drop.of(
        new Drop.Input(
            Conductors.of(wire),
            lengthMm / 1000,
            OptionalDouble.empty(),
            currentA,
            supplyV,
            wire.rating().celsius()));
  }

  private double dropV(Wire wire, WireNeed need) {
    return drop(wire, need.lengthMm(), need.load().continuousA(), need.supplyV()).dropV();
  }

  private FuseRequest request(Wire wire, WireNeed need) {
    FuseLimits limits =
        new FuseLimits(
            new LoadingLimit(
                rules.fuseLoading().value().fraction(),
                "added circuits",
                rules.fuseLoading().source()),
            rules.wireOverFuse().value().fraction(),
            FuseLimits.DEFAULT.maxDropPercent(),
            FuseLimits.DEFAULT.sourceOhm(),
            FuseLimits.DEFAULT.openingTimeS());
    return FuseRequest.of(
            need.load().continuousA(),
            need.load().peakA(),
            need.load().peakTimeS(),
            Conductors.of(wire),
            need.lengthMm() / 1000,
            need.ambientC(),
            need.supplyV())
        .withReturnLengthM(need.restMm() / 1000)
        .withBundle(need.wires(), OptionalDouble.empty())
        .withInsulation(wire.rating().celsius(), Conductors.insulation(wire))
        .withLimits(limits);
  }
}
