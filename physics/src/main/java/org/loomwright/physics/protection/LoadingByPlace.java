package org.loomwright.physics.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.physics.Require;
import org.loomwright.physics.Trace;

/**
 * Loading limit of a fuse by place and ambient: the strictest of the published ones that apply.
 *
 * <ul>
 *   <li>70 % for added circuits, made for 40 °C; above that re-rated by the ambient: 0.70 · f(T) /
 *       f(40 °C).
 *   <li>80 % of a fuse in the cabin, 60 % of one in the engine bay; as published, whatever the
 *       ambient.
 *   <li>75 % of any fuse at 23 to 25 °C, re-rated by the ambient: 0.75 · f(T).
 *   <li>Fuse at least 1.25 times the load: 80 %.
 * </ul>
 *
 * f is {@link FuseRerating#factor}.
 */
public final class LoadingByPlace {
  private static final String ADDED = "added circuits, re-rated from 40 °C to the ambient";
  private static final String ANY = "any fuse, re-rated to the ambient";

  private LoadingByPlace() {}

  /**
   * @param strictest the limit that counts, saying whose it is
   * @param considered all limits that apply, strictest first
   * @param trace how they came about
   */
  public record Result(LoadingLimit strictest, List<LoadingLimit> considered, Trace trace) {
    /** Copies the list. */
    public Result {
      considered = List.copyOf(considered);
    }
  }

  /**
   * The limits for a fuse.
   *
   * @param ambientC air at the fuse, -40 to 125 °C
   */
  public static Result of(FuseFamily family, FusePlace place, double ambientC) {
    double factor = FuseRerating.factor(family, ambientC);
    double atForty = FuseRerating.factor(family, 40);
    List<LoadingLimit> limits = new ArrayList<>();
    limits.add(
        new LoadingLimit(
            LoadingLimit.DEFAULT.share() * Math.min(1, factor / atForty),
            ADDED,
            LoadingLimit.DEFAULT.source()));
    limits.add(new LoadingLimit(0.75 * factor, ANY, "fuse makers' guides (from memory)"));
    limits.add(
        new LoadingLimit(
            place == FusePlace.CABIN ? 0.80 : 0.60,
            "circuit with an added load, " + place.label(),
            "a vehicle maker's add-on wiring guide"));
    limits.add(
        new LoadingLimit(0.80, "fuse at least 1.25 times the load", "published fuse-size guides"));
    limits.sort(Comparator.comparingDouble(LoadingLimit::share));
    Trace.Builder trace =
        Trace.builder()
            .given("ambient at the fuse", ambientC, "°C")
            .line(
                "re-rating by ambient",
                FuseRerating.formula("ambient at the fuse", ambientC),
                factor,
                "1",
                FuseRerating.source(family));
    for (LoadingLimit limit : limits) {
      trace.line(
          "loading limit, " + limit.use(),
          formula(limit, factor, atForty),
          limit.share(),
          "1",
          limit.source());
    }
    LoadingLimit strictest = limits.get(0);
    trace.line(
        "loading limit that counts, " + strictest.use(),
        "smallest of the loading limits",
        strictest.share(),
        "1",
        strictest.source());
    return new Result(strictest, limits, trace.build());
  }

  private static String formula(LoadingLimit limit, double factor, double atForty) {
    if (limit.use().equals(ANY)) {
      return "0.75 * re-rating by ambient";
    }
    return limit.use().equals(ADDED) && factor < atForty
        ? Require.text(LoadingLimit.DEFAULT.share())
            + " * re-rating by ambient / f40, f40 = "
            + OpeningWords.number(atForty)
        : "published";
  }
}
