package org.loomwright.cli.sum;

import java.util.List;
import org.loomwright.physics.Check;
import org.loomwright.physics.Trace;
import org.loomwright.physics.Verdict;

/**
 * The answer to a sum.
 *
 * @param figures what was asked for, in the order of the documentation
 * @param checks figures held against limits; empty for a sum that checks nothing
 * @param fails whether the program ends with "a check fails"
 * @param ways how the figures were reached
 */
record Answer(List<Figure> figures, List<Check> checks, boolean fails, List<Way> ways) {

  /**
   * How a figure was reached.
   *
   * @param title heading for people
   * @param trace the steps
   */
  record Way(String title, Trace trace) {
    /** The only way of an answer. */
    static Way only(Trace trace) {
      return new Way("How it was reached", trace);
    }
  }

  Answer {
    figures = List.copyOf(figures);
    checks = List.copyOf(checks);
    ways = List.copyOf(ways);
  }

  /** An answer without checks. */
  static Answer of(Trace trace, Figure... figures) {
    return new Answer(List.of(figures), List.of(), false, List.of(Way.only(trace)));
  }

  /** An answer with checks; it fails when the worst of them does. */
  static Answer checked(Trace trace, List<Check> checks, Figure... figures) {
    boolean fails = Check.worst(checks) == Verdict.FAILS;
    return new Answer(List.of(figures), checks, fails, List.of(Way.only(trace)));
  }
}
