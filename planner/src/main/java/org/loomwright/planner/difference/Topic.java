package org.loomwright.planner.difference;

/** The stage of planning that a change belongs to. */
public enum Topic {
  /** What is missing on which builds, and what is not served. */
  GAP,
  /** Cases and the ways that meet their needs. */
  WAYS,
  /** What is made: leads, joints, bundles. */
  LEADS,
  /** Checks and their figures. */
  SUMS,
  /** The instructions. */
  GUIDE,
  /** The walk of every build through the guide. */
  PROOF,
  /** Release, part numbers, parts lists and cost. */
  PACK
}
