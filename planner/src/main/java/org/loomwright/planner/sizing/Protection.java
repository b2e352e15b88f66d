package org.loomwright.planner.sizing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.rules.Rules;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.protection.DamageLine;
import org.loomwright.physics.protection.LoadPoint;
import org.loomwright.physics.protection.LoadingLimit;
import org.loomwright.physics.protection.ProtectionChart;
import org.loomwright.physics.protection.ProtectionCheck;
import org.loomwright.physics.protection.ProtectionRequest;
import org.loomwright.physics.wire.Conductor;

/**
 * A wire behind its fuse: the checks of {@link ProtectionCheck} and of {@link Carrying}.
 *
 * <p>Of things that both could judge, the stricter form is kept. A fault at the end of the line and
 * a short circuit are held against the whole damage line, at the lowest and the highest supply,
 * with a weak and a strong source, by {@link ProtectionCheck}; that leaves nothing for a check of
 * one supply and one source against k²S². "conductor carries the fuse" and "wire carries what may
 * never open the fuse" are both kept: the first goes by the shop's multiple and by handbook and
 * heat balance, the second by the opening band and heat balance alone, and which of them is
 * stricter depends on the shop's multiple.
 */
public final class Protection {
  /** Name of the check of a short circuit right behind the fuse against what it can interrupt. */
  public static final String BREAKING = "breaking capacity";

  private static final String LOADING = "loading";
  private static final String STARTING = "starting current";

  private final Rules rules;

  /** Judges by the rules of a shop. */
  public Protection(Rules rules) {
    this.rules = rules;
  }

  /**
   * @param checks each by name once; with several fuses the one with the least margin
   * @param trace how the figures were reached
   */
  public record Result(List<Check> checks, Trace trace) {
    /** Copies the list. */
    public Result {
      checks = List.copyOf(checks);
    }
  }

  /**
   * All checks of a wire.
   *
   * @throws org.loomwright.physics.SumException where something is outside the range of the sums
   */
  public Result of(Wire wire, WireNeed need) {
    Trace.Builder trace = Trace.builder();
    Carrying carrying = new Carrying(wire, need, rules, true);
    List<Check> checks = new ArrayList<>(behindFuse(wire, need, trace));
    checks.addAll(carrying.checks());
    return new Result(checks, trace.addAll(carrying.trace()).build());
  }

  /**
   * A fuse against the wire behind it over current and time, from the same request as the checks.
   *
   * @throws org.loomwright.physics.SumException where something is outside the range of the sums
   */
  public static ProtectionChart chart(Wire wire, WireNeed need, FuseBefore before) {
    return ProtectionChart.of(request(wire, need, before));
  }

  // Each by name once, with the fuse that leaves the least margin.
  private Collection<Check> behindFuse(Wire wire, WireNeed need, Trace.Builder trace) {
    Map<String, Check> worst = new LinkedHashMap<>();
    for (FuseBefore before : need.fuses()) {
      ProtectionCheck.Result result = ProtectionCheck.of(request(wire, need, before));
      before.notes().forEach(note -> trace.line(note, "not claimed", 0, "", "vehicle document"));
      trace.addAll(result.trace());
      showLoading(trace, result.loading().strictest(), before);
      for (Check check : checks(result, need, before)) {
        worst.merge(check.name(), check, (a, b) -> b.margin() < a.margin() ? b : a);
      }
    }
    return worst.values();
  }

  private void showLoading(Trace.Builder trace, LoadingLimit published, FuseBefore before) {
    LoadingLimit shop = FuseLoading.of(rules).shop();
    LoadingLimit kept = FuseLoading.of(rules).at(before.fuse().family(), before.spot());
    trace
        .line("loading limit of the shop, " + shop.use(), "given", shop.share(), "1", shop.source())
        .line(
            "loading limit kept",
            kept.equals(published) ? "loading limit that counts" : "loading limit of the shop",
            kept.share(),
            "of the rating",
            kept.equals(published) ? "published" : "rule of the shop");
  }

  /**
   * Whether a wire passes every check, but for what its fuse can interrupt: that is a matter of the
   * fuse's place alone, so it is shown and picks no wire.
   */
  boolean passes(Wire wire, WireNeed need) {
    // What is quickly reckoned first: most wires that are too thin are so by far.
    return new Carrying(wire, need, rules, false)
            .checks().stream().allMatch(check -> check.verdict() != Verdict.FAILS)
        && behindFuse(wire, need, Trace.builder()).stream()
            .allMatch(check -> check.verdict() != Verdict.FAILS || check.name().equals(BREAKING));
  }

  private List<Check> checks(ProtectionCheck.Result result, WireNeed need, FuseBefore before) {
    LoadingLimit limit = FuseLoading.of(rules).at(before.fuse().family(), before.spot());
    List<Check> checks = new ArrayList<>();
    for (Check check : result.checks()) {
      boolean ofFuse =
          check.name().equals(LOADING)
              || check.name().equals(STARTING)
              || check.name().equals(BREAKING);
      // Loading, start and breaking capacity concern the fuse: they are shown with its feed.
      if (need.ground() && ofFuse || before.factory() && check.name().equals(BREAKING)) {
        continue;
      }
      Check judged = check.name().equals(LOADING) ? loading(need, before, limit) : check;
      checks.add(before.formOnFile() ? judged : withNote(judged));
    }
    return checks;
  }

  private static Check loading(WireNeed need, FuseBefore before, LoadingLimit limit) {
    return Check.atMost(
        LOADING,
        need.load().continuousA() / before.fuse().ratingA(),
        limit.share(),
        "of the rating",
        "steady load at most "
            + Require.text(Math.round(1000 * limit.share()) / 10.0)
            + " % of the "
            + before.fuse().label()
            + " in the "
            + before.spot().place().label()
            + " at "
            + Require.text(before.spot().ambientC())
            + " °C: "
            + limit.use(),
        limit.source());
  }

  private static Check withNote(Check check) {
    return new Check(
        check.name(),
        check.verdict(),
        check.value(),
        check.limit(),
        check.margin(),
        check.unit(),
        check.rule(),
        check.source() + "; the form of the fuse is not on file, a regular blade is taken");
  }

  private static ProtectionRequest request(Wire wire, WireNeed need, FuseBefore before) {
    Conductor conductor = Conductors.of(wire);
    double ratingC = wire.rating().celsius();
    Load load = need.load();
    return new ProtectionRequest(
        before.fuse(),
        before.spot().place(),
        before.spot().ambientC(),
        load.continuousA(),
        load.hasPeak()
            ? Optional.of(new LoadPoint(STARTING, load.peakA(), load.peakTimeS()))
            : Optional.empty(),
        Optional.empty(),
        DamageLine.Wire.hot(conductor, Conductors.insulation(wire), ratingC, need.ambientC()),
        before.loop().with(conductor, need.lengthMm() / 1000, need.restMm() / 1000, ratingC),
        ProtectionRequest.DEFAULT_OPENING_S);
  }
}
