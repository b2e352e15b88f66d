package org.loomwright.planner.watch;

/** What planning is at, in the order in which it gets there. */
public enum PlanPhase {
  /** Which builds are possible. */
  BUILDS("counting the builds"),
  /** What each build has already. */
  GAP("finding what is missing"),
  /** How each need could be met. */
  WAYS("looking for ways"),
  /** Which ways are taken on which builds. */
  CHOICE("choosing ways"),
  /** Which leads there are, and with which wires. */
  LEADS("sizing the leads"),
  /** Bundles, part numbers and checks. */
  SUMS("checking the sums"),
  /** The steps of the fitter. */
  GUIDE("writing the guide"),
  /** Every build walked through the guide. */
  PROOF("proving every build");

  private final String words;

  PlanPhase(String words) {
    this.words = words;
  }

  /** What is done, in words, e.g. "looking for ways". */
  public String words() {
    return words;
  }
}
