package org.loomwright.physics.network;

/** One thing with two terminals in a network. */
public sealed interface Element permits Source, Link, Load {
  /** Name, unique in its network. */
  String name();

  /** Node of the first terminal. */
  String from();

  /** Node of the second terminal; never the same as {@link #from}. */
  String to();
}
