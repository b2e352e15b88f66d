package org.loomwright.model.design;

/** What a step changes, so that a proof can follow it. */
public sealed interface Act {
  /** Isolates the battery. */
  record Isolate() implements Act {}

  /** Connects the battery again. */
  record Reconnect() implements Act {}

  /** Opens a panel, cover or block. */
  record Open(String opening) implements Act {}

  /** Closes it again. */
  record Close(String opening) implements Act {}

  /** Lays a lead along its runs. */
  record Lay(String lead) implements Act {}

  /** Pulls a seal plug out of a cavity. */
  record PullPlug(String connector, String cavity) implements Act {}

  /**
   * Lands one end of a lead as it was made on the bench.
   *
   * @param end "a" or "b"
   */
  record Land(String lead, String end, Landing landing) implements Act {}

  /**
   * Cuts off an end as made and lands it otherwise.
   *
   * @param end "a" or "b"
   */
  record Change(String lead, String end, Landing landing) implements Act {}

  /**
   * Caps, labels and tapes back an end.
   *
   * @param end "a" or "b"
   */
  record Park(String lead, String end, Landing.Parked landing) implements Act {}

  /** Plugs a housing of the kit or connector of the vehicle into the equipment. */
  record PlugIn(String equipmentPlug) implements Act {}

  /** Puts a fuse into a slot. */
  record FitFuse(String block, String slot, double ratingA) implements Act {}
}
