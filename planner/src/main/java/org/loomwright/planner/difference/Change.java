package org.loomwright.planner.difference;

/**
 * One thing that a change did to a plan.
 *
 * @param weight which way it goes
 * @param words what it did, one line, complete in itself; things of the vehicle that the plan knows
 *     no name of stand by their id
 * @param topic the stage it belongs to
 */
public record Change(Weight weight, String words, Topic topic) {
  static Change worse(Topic topic, String words) {
    return new Change(Weight.WORSE, words, topic);
  }

  static Change better(Topic topic, String words) {
    return new Change(Weight.BETTER, words, topic);
  }

  static Change neutral(Topic topic, String words) {
    return new Change(Weight.NEUTRAL, words, topic);
  }
}
