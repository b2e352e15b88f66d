package org.loomwright.physics.network;

/** What came of solving a network. */
public sealed interface NetworkOutcome permits Solved, NoOperatingPoint, NotConnected {
  /** The outcome in one sentence for a person. */
  String message();
}
