package org.loomwright.physics.network;

/** A passive path with a known resistance above zero. */
public sealed interface Link extends Element permits Wire, Joint {
  /** Resistance, ohm, 1e-6 to 1e9. */
  double ohm();
}
