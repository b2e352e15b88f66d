package org.loomwright.physics.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomwright.physics.Check;
import org.loomwright.physics.Require;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;
import org.loomwright.physics.Verdict;
import org.loomwright.physics.protection.Fuse;
import org.loomwright.physics.protection.FuseFamily;

/**
 * The smallest standard fuse that carries the load and rides out the starting current, and the
 * checks of the wire behind it. A larger fuse only makes the wire checks harder, so the smallest
 * that serves the load decides.
 */
public final class FuseChoice {
  private FuseChoice() {}

  /**
   * @param fuse the choice; empty if no standard fuse within the limits carries the load and the
   *     peak - the check that fails is then the first in the list
   * @param checks loading, peak, conductor carries the load, conductor carries the fuse, in a
   *     bundle also conductor carries the fuse in its bundle, voltage drop, end-of-line fault,
   *     short-circuit withstand; without a fuse only those that need none
   * @param trace how the figures were reached
   */
  public record Result(Optional<Fuse> fuse, List<Check> checks, Trace trace) {
    /** Copies the checks. */
    public Result {
      checks = List.copyOf(checks);
    }

    /** Rating of the chosen fuse, A. */
    public OptionalDouble fuseA() {
      return fuse.map(f -> OptionalDouble.of(f.ratingA())).orElseGet(OptionalDouble::empty);
    }

    /** The worst verdict of all checks. */
    public Verdict verdict() {
      return Check.worst(checks);
    }
  }

  /**
   * Chooses and checks.
   *
   * @throws SumException if the request allows no fuse at all
   */
  public static Result of(FuseRequest request) {
    List<Fuse> candidates = candidates(request);
    Optional<Fuse> chosen =
        candidates.stream()
            .filter(
                f ->
                    FuseChecks.loading(request, f).verdict() != Verdict.FAILS
                        && FuseChecks.peak(request, f).verdict() != Verdict.FAILS)
            .findFirst();
    Trace.Builder trace =
        Trace.builder()
            .given("continuous current", request.continuousA(), "A")
            .given("peak current", request.peakA(), "A")
            .given("peak time", request.peakTimeS(), "s");
    List<Check> checks = new ArrayList<>();
    FuseChecks wire = new FuseChecks(request, trace);
    if (chosen.isPresent()) {
      checks.addAll(all(request, wire, chosen.get()));
      trace.line(
          "fuse",
          "smallest standard rating that carries load and peak",
          chosen.get().ratingA(),
          "A",
          "ISO 8820-3 ratings (from memory)");
    } else {
      // The largest candidate shows by how much it misses.
      Fuse largest = candidates.get(candidates.size() - 1);
      Check loading = FuseChecks.loading(request, largest);
      Check peak = FuseChecks.peak(request, largest);
      boolean loadingFails = loading.verdict() == Verdict.FAILS;
      checks.add(loadingFails ? loading : peak);
      checks.add(loadingFails ? peak : loading);
      checks.add(wire.carriesLoad());
      checks.add(wire.drop());
    }
    return new Result(chosen, checks, trace.build());
  }

  /**
   * The checks of a fuse that is already there, in the order of {@link Result#checks}.
   *
   * @param fuse the fuse fitted
   */
  public static Result check(FuseRequest request, Fuse fuse) {
    Trace.Builder trace = Trace.builder().given("fuse fitted", fuse.ratingA(), "A");
    FuseChecks wire = new FuseChecks(request, trace);
    List<Check> checks = all(request, wire, fuse);
    return new Result(Optional.of(fuse), checks, trace.build());
  }

  private static List<Check> all(FuseRequest request, FuseChecks wire, Fuse fuse) {
    List<Check> checks = new ArrayList<>();
    checks.add(FuseChecks.loading(request, fuse));
    checks.add(FuseChecks.peak(request, fuse));
    checks.add(wire.carriesLoad());
    checks.add(wire.carriesFuse(fuse));
    wire.carriesFuseInBundle(fuse).ifPresent(checks::add);
    checks.add(wire.drop());
    checks.add(wire.endOfLineFault(fuse));
    checks.add(wire.withstand(fuse));
    return checks;
  }

  /** Allowed fuses in order of choice. */
  private static List<Fuse> candidates(FuseRequest request) {
    double highestSoFar = 0;
    double capA = request.maxRatingA().orElse(Double.POSITIVE_INFINITY);
    List<Fuse> fuses = new ArrayList<>();
    for (FuseFamily family : request.families()) {
      for (double ratingA : family.ratingsA()) {
        if (ratingA > highestSoFar && ratingA <= capA) {
          fuses.add(new Fuse(family, ratingA));
          highestSoFar = ratingA;
        }
      }
    }
    if (fuses.isEmpty()) {
      throw new SumException(
          "no standard fuse is allowed: the largest rating is "
              + Require.text(capA)
              + " A among "
              + request.families().stream().map(FuseFamily::label).toList());
    }
    return fuses;
  }
}
