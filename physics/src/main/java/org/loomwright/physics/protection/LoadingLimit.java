package org.loomwright.physics.protection;

import java.util.List;

/**
 * A published limit for the steady load on a fuse.
 *
 * @param share load over rating, 0 to 1
 * @param use where it applies
 * @param source who says so
 */
public record LoadingLimit(double share, String use, String source) {
  /** The limit used where nothing else is asked for. */
  public static final LoadingLimit DEFAULT =
      new LoadingLimit(
          0.70, "added circuits, 40 °C", "a vehicle maker's body-builder fuse and wire table");

  /** All limits known here, strictest first. */
  public static final List<LoadingLimit> KNOWN =
      List.of(
          new LoadingLimit(
              0.60,
              "factory circuit with an added load, engine bay",
              "a vehicle maker's add-on wiring guide"),
          DEFAULT,
          new LoadingLimit(0.75, "any fuse at 23 to 25 °C", "fuse makers' guides (from memory)"),
          new LoadingLimit(
              0.80,
              "factory circuit with an added load, cabin",
              "a vehicle maker's add-on wiring guide"));
}
