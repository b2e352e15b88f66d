package org.loomwright.papers.words;

import java.util.List;

/**
 * One caution.
 *
 * @param title what it is about
 * @param text what to do
 * @param steps numbers of the guide's steps that say it, each on other builds
 */
public record Caution(String title, String text, List<Integer> steps) {
  public Caution {
    steps = List.copyOf(steps);
  }
}
