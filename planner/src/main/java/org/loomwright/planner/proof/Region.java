package org.loomwright.planner.proof;

import java.math.BigInteger;
import java.util.Set;
import java.util.SortedSet;

/**
 * A set of builds. Two regions of the same vehicle are equal when they hold the same builds.
 *
 * @param in the diagrams it belongs to
 * @param node its node
 */
record Region(Regions in, int node) {
  Region and(Region other) {
    return in.and(this, other);
  }

  Region or(Region other) {
    return in.or(this, other);
  }

  Region not() {
    return in.not(this);
  }

  Region minus(Region other) {
    return in.and(this, in.not(other));
  }

  /** Builds that equal one of these when the given traits are left out of account. */
  Region forget(Set<String> traits) {
    return in.forget(this, traits);
  }

  /** The builds with this value of a trait, without regard to that trait. */
  Region restrict(String trait, int value) {
    return in.restrict(this, trait, value);
  }

  boolean isEmpty() {
    return node == Regions.NONE;
  }

  boolean within(Region other) {
    return minus(other).isEmpty();
  }

  boolean meets(Region other) {
    return !and(other).isEmpty();
  }

  /** Exact number of value combinations, impossible builds included where it holds them. */
  BigInteger count() {
    return in.count(this);
  }

  /** Traits it depends on, in the order of the diagrams. */
  SortedSet<String> support() {
    return in.support(this);
  }

  @Override
  public String toString() {
    return "region " + node + " of " + count() + " builds";
  }
}
