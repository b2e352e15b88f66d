package org.loomwright.planner.fit;

import java.util.List;

/**
 * What answers leave open of a decision between several outcomes.
 *
 * @param classes outcomes that some possible build with these answers has, rising; none when there
 *     is no such build
 * @param sets smallest sets of traits of {@link FitCheck#traits()} that decide between them once
 *     they are known too: none of them contains another; smaller ones first. The empty set alone
 *     when nothing is left to decide
 * @param kind tells apart what is decided by the same traits in different ways; 0 where nothing is
 *     left to decide
 */
public record Left(List<Integer> classes, List<List<Integer>> sets, int kind) {
  public Left {
    classes = List.copyOf(classes);
    sets = List.copyOf(sets);
  }
}
