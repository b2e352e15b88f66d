package org.loomwright.planner.sizing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.rules.Rules;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.memo.Memo;
import org.loomwright.physics.wire.Drop;
import org.loomwright.planner.watch.PlanningStopped;

/**
 * The smallest wire on file that passes every check of a lead. Remembers what was judged, since
 * many ways ask for the same.
 */
public final class WireSizer {
  /** Name of the check of a wire against the table of fuse and smallest section. */
  public static final String SECTION = Carrying.SECTION;

  private final Parts parts;
  private final Protection protection;
  private final Memo<Asked, Boolean> judged;

  // A judgement follows from wire, need and limits alone; a kit that is planned again after a
  // change asks mostly for the same.
  private static final Memo<Rules, Memo<Asked, Boolean>> JUDGED = new Memo<>(4);

  private static final int MOST_JUDGED = 5000;

  private record Asked(Wire wire, WireNeed need) {}

  /** Sizes with the wires and limits of an order. */
  public WireSizer(Parts parts, Rules rules) {
    this.parts = parts;
    this.protection = new Protection(rules);
    this.judged = JUDGED.of(rules, its -> new Memo<>(MOST_JUDGED));
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
    return wire.rating().celsius() > need.ambientC()
        && judged.of(new Asked(wire, need), asked -> judge(wire, need));
  }

  private boolean judge(Wire wire, WireNeed need) {
    PlanningStopped.ifAsked();
    try {
      return dropV(wire, need) <= need.dropV() + 1e-9 && protection.passes(wire, need);
    } catch (SumException outsideTheSums) {
      // A wire the sums can't judge is never chosen.
      return false;
    }
  }

  /**
   * The protection checks of a wire behind its fuse. The drop is left out: feed and ground have
   * budgets of their own.
   *
   * @throws SumException where something is outside the range of the sums
   */
  public Protection.Result protection(Wire wire, WireNeed need) {
    return protection.of(wire, need);
  }

  /** The first check a wire fails, in words with its figure; empty when it passes all. */
  public Optional<String> firstFailing(Wire wire, WireNeed need) {
    if (wire.rating().celsius() <= need.ambientC()) {
      return Optional.of(
          "the insulation bears " + wire.rating().text() + ", no more than the ambient");
    }
    try {
      Optional<String> protection =
          protection(wire, need).checks().stream()
              .filter(check -> check.verdict() == Verdict.FAILS)
              .filter(check -> !check.name().equals(Protection.BREAKING))
              .map(
                  check ->
                      check.name()
                          + " is "
                          + shown(check.value())
                          + " "
                          + check.unit()
                          + ", limit "
                          + shown(check.limit()))
              .findFirst();
      double dropV = dropV(wire, need);
      return protection.isPresent() || dropV <= need.dropV() + 1e-9
          ? protection
          : Optional.of(
              "voltage drop is " + shown(dropV) + " V, limit " + shown(need.dropV()) + " V");
    } catch (SumException outsideTheSums) {
      return Optional.ofNullable(outsideTheSums.getMessage());
    }
  }

  /** A figure in words: more digits than four say nothing to a reader. */
  private static String shown(double value) {
    return Require.text(new BigDecimal(value).round(new MathContext(4)).doubleValue());
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
}
