package org.loomwright.model.design;

/** The ways to meet a need, in the order in which they are tried for. */
public enum WayKind {
  ALREADY_WIRED,
  FACTORY_SLOT,
  OTHER_SLOT,
  SPLICE,
  GROUND_STUD
}
