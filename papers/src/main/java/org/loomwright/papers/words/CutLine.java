package org.loomwright.papers.words;

import java.util.List;
import org.loomwright.model.design.Lead;

/**
 * One line of the cut list.
 *
 * @param lead lead
 * @param wireName name of its wire
 * @param a how end A is made
 * @param b how end B is made
 * @param numbers part numbers that hold the lead
 */
public record CutLine(Lead lead, String wireName, BenchEnd a, BenchEnd b, List<String> numbers) {
  public CutLine {
    numbers = List.copyOf(numbers);
  }
}
