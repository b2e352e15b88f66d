package org.loomwright.papers.calculation;

import org.loomwright.model.design.Check;

/**
 * The rule of a check.
 *
 * @param words what has to be kept, empty when the name of the check says it all
 * @param source where the limit comes from
 */
public record Rule(String words, String source) {
  private static final String BETWEEN = "; ";

  /** The rule of a check: sources that begin with the rule in words are taken apart. */
  public static Rule of(Check check) {
    int between = check.source().indexOf(BETWEEN);
    return between < 0
        ? new Rule("", check.source())
        : new Rule(
            check.source().substring(0, between),
            check.source().substring(between + BETWEEN.length()));
  }
}
