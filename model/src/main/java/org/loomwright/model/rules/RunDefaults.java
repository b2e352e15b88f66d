package org.loomwright.model.rules;

import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.vehicle.Hazard;

/**
 * How bundles are led, covered, held and laid out: what the shop's rules say, else a default from
 * practice, each with where it comes from.
 */
public final class RunDefaults {
  private static final Sourced<Percent> LOOM_FACTOR =
      new Sourced<>(
          Percent.of("80 %"),
          "default, a run along a factory loom is known to be free and clipped: common practice to follow it, weight ours");
  private static final Sourced<Temperature> HOT_FROM =
      new Sourced<>(
          Temperature.of("80 °C"),
          "default, a vehicle maker's body-builder manual: added wiring where it stays below 80 °C");
  private static final Sourced<Percent> HOT_FACTOR =
      new Sourced<>(Percent.of("200 %"), "default, common practice to avoid heat, weight ours");
  private static final Sourced<Percent> WET_FACTOR =
      new Sourced<>(Percent.of("130 %"), "default, common practice to avoid water, weight ours");
  private static final Sourced<Percent> MOVING_FACTOR =
      new Sourced<>(
          Percent.of("200 %"), "default, common practice to avoid moving parts, weight ours");
  private static final Sourced<Percent> MOST_DETOUR =
      new Sourced<>(Percent.of("150 %"), "default, weight ours");
  private static final Sourced<Length> CLEAR_EXHAUST =
      new Sourced<>(
          Length.of("200 mm"),
          "default, vehicle makers' body-builder manuals: 100 or 200 mm; the stricter counts");
  private static final Sourced<Length> CLEAR_MOVING =
      new Sourced<>(
          Length.of("75 mm"),
          "default, vehicle makers' body-builder manuals and repair texts: 25 or 75 mm; the stricter counts");
  private static final Sourced<Length> CLEAR_PIPES =
      new Sourced<>(
          Length.of("25 mm"), "default, a vehicle maker's repair text: 25 mm to brake lines");
  private static final Sourced<Length> CLEAR_BATTERY =
      new Sourced<>(Length.of("50 mm"), "default, a vehicle maker's body-builder manual");
  private static final Sourced<Length> CLEAR_FIXINGS =
      new Sourced<>(Length.of("20 mm"), "default, published harness design notes");
  private static final Sourced<Percent> BEND_FIXED =
      new Sourced<>(Percent.of("400 %"), "default, common practice: four times the diameter");
  private static final Sourced<Percent> BEND_MOVING =
      new Sourced<>(
          Percent.of("1000 %"), "default, common practice: ten times the diameter where it moves");
  private static final Sourced<Length> CLIP_SPACING =
      new Sourced<>(
          Length.of("200 mm"),
          "default, vehicle makers' body-builder manuals: 200 or 300 mm; the stricter counts");
  private static final Sourced<Length> FIRST_CLIP =
      new Sourced<>(
          Length.of("100 mm"),
          "default, published harness design notes: 100 mm where it shakes, else 120 mm; the stricter counts");
  private static final Sourced<Percent> CONDUIT_FILL =
      new Sourced<>(
          Percent.of("80 %"),
          "default, common practice: a conduit that still closes, a tenth of its width free");
  private static final Sourced<Percent> HOLE_FILL =
      new Sourced<>(
          Percent.of("80 %"), "default, common practice: a bundle must go through without force");
  private static final Sourced<Percent> TAPE_OVERLAP =
      new Sourced<>(Percent.of("50 %"), "default, common practice: half lapped");
  private static final Sourced<Length> BOARD_WIDTH =
      new Sourced<>(Length.of("2400 mm"), "default, common practice: a sheet of plywood");
  private static final Sourced<Length> BOARD_HEIGHT =
      new Sourced<>(Length.of("1200 mm"), "default, common practice: a sheet of plywood");
  private static final Sourced<PaperSize> PAPER =
      new Sourced<>(PaperSize.A4, "default, common practice: the paper most printers hold");

  private RunDefaults() {}

  /** Least distance to a hazard. */
  public static Sourced<Length> clear(Rules rules, Hazard hazard) {
    return switch (hazard) {
      case EXHAUST -> clearExhaust(rules);
      case MOVING_PART -> clearMoving(rules);
      case PIPE -> clearPipes(rules);
      case BATTERY -> clearBattery(rules);
      case TRIM_FIXING -> clearFixings(rules);
    };
  }

  /** Weight of a run along a factory loom. */
  public static Sourced<Percent> loomFactor(Rules rules) {
    return ruled(rules, RunRules::loomFactor, LOOM_FACTOR);
  }

  /** Ambient from which a run counts as hot. */
  public static Sourced<Temperature> hotFrom(Rules rules) {
    return ruled(rules, RunRules::hotFrom, HOT_FROM);
  }

  /** Weight of a hot run. */
  public static Sourced<Percent> hotFactor(Rules rules) {
    return ruled(rules, RunRules::hotFactor, HOT_FACTOR);
  }

  /** Weight of a wet run. */
  public static Sourced<Percent> wetFactor(Rules rules) {
    return ruled(rules, RunRules::wetFactor, WET_FACTOR);
  }

  /** Weight of a run on which the bundle bends in use. */
  public static Sourced<Percent> movingFactor(Rules rules) {
    return ruled(rules, RunRules::movingFactor, MOVING_FACTOR);
  }

  /** Longest way of a lead in the tree over its own shortest way. */
  public static Sourced<Percent> mostDetour(Rules rules) {
    return ruled(rules, RunRules::mostDetour, MOST_DETOUR);
  }

  /** Least distance to exhaust parts. */
  private static Sourced<Length> clearExhaust(Rules rules) {
    return ruled(rules, RunRules::clearExhaust, CLEAR_EXHAUST);
  }

  /** Least distance to moving parts. */
  private static Sourced<Length> clearMoving(Rules rules) {
    return ruled(rules, RunRules::clearMoving, CLEAR_MOVING);
  }

  /** Least distance to brake and fuel pipes. */
  private static Sourced<Length> clearPipes(Rules rules) {
    return ruled(rules, RunRules::clearPipes, CLEAR_PIPES);
  }

  /** Least distance to the battery. */
  private static Sourced<Length> clearBattery(Rules rules) {
    return ruled(rules, RunRules::clearBattery, CLEAR_BATTERY);
  }

  /** Least distance to trim fixings. */
  private static Sourced<Length> clearFixings(Rules rules) {
    return ruled(rules, RunRules::clearFixings, CLEAR_FIXINGS);
  }

  /** Least radius of a bend over the bundle's diameter, where nothing moves. */
  public static Sourced<Percent> bendFixed(Rules rules) {
    return ruled(rules, RunRules::bendFixed, BEND_FIXED);
  }

  /** The same where the bundle bends in use. */
  public static Sourced<Percent> bendMoving(Rules rules) {
    return ruled(rules, RunRules::bendMoving, BEND_MOVING);
  }

  /** Most distance between two clips. */
  public static Sourced<Length> clipSpacing(Rules rules) {
    return ruled(rules, RunRules::clipSpacing, CLIP_SPACING);
  }

  /** Most distance of the first clip from a connector. */
  public static Sourced<Length> firstClip(Rules rules) {
    return ruled(rules, RunRules::firstClip, FIRST_CLIP);
  }

  /** Most share of a conduit's inner section that the bundle takes. */
  public static Sourced<Percent> conduitFill(Rules rules) {
    return ruled(rules, RunRules::conduitFill, CONDUIT_FILL);
  }

  /** Most share of a hole's or grommet's bore that all bundles in it take. */
  public static Sourced<Percent> holeFill(Rules rules) {
    return ruled(rules, RunRules::holeFill, HOLE_FILL);
  }

  /** Share of the tape's width by which a turn covers the last. */
  public static Sourced<Percent> tapeOverlap(Rules rules) {
    return ruled(rules, RunRules::tapeOverlap, TAPE_OVERLAP);
  }

  /** Width of the board. */
  public static Sourced<Length> boardWidth(Rules rules) {
    return ruled(rules, RunRules::boardWidth, BOARD_WIDTH);
  }

  /** Height of the board. */
  public static Sourced<Length> boardHeight(Rules rules) {
    return ruled(rules, RunRules::boardHeight, BOARD_HEIGHT);
  }

  /** Paper the board is printed on. */
  public static Sourced<PaperSize> paper(Rules rules) {
    return ruled(rules, RunRules::paper, PAPER);
  }

  private static <T> Sourced<T> ruled(
      Rules rules, Function<RunRules, Optional<Sourced<T>>> value, Sourced<T> usual) {
    return rules.runs().flatMap(value).orElse(usual);
  }
}
