package org.loomwright.planner.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Published problems with known least cost. Each file names its source. The last two are known as
 * hard for heuristics.
 */
class PublishedTreesTest {
  private record Problem(List<Link> links, Set<String> ends, double least) {
    static Problem of(String name) throws IOException {
      List<Link> links = new ArrayList<>();
      Set<String> ends = new LinkedHashSet<>();
      double least = Double.NaN;
      String text;
      try (InputStream in = PublishedTreesTest.class.getResourceAsStream(name + ".txt")) {
        text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      }
      for (String line : text.lines().toList()) {
        List<String> words = List.of(line.split(" "));
        switch (words.get(0)) {
          case "least" -> least = Double.parseDouble(words.get(1));
          case "join" -> ends.addAll(words.subList(1, words.size()));
          case "link" ->
              links.add(
                  new Link(
                      "e" + links.size(),
                      words.get(1),
                      words.get(2),
                      Double.parseDouble(words.get(3))));
          default -> assertThat(line).startsWith("#");
        }
      }
      return new Problem(links, ends, least);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"antiwheel5", "oddwheel3", "design432", "b01", "b03", "cc6-2p"})
  void exactCostIsAsPublished(String name) throws IOException {
    Problem problem = Problem.of(name);
    FoundTree tree = TreeFinder.of(problem.links()).joining(problem.ends()).orElseThrow();
    assertThat(TreeCheck.faults(problem.links(), problem.ends(), tree)).isEmpty();
    assertThat(tree.exact()).isTrue();
    assertThat(tree.cost()).isCloseTo(problem.least(), within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"antiwheel5", "oddwheel3", "design432", "b01", "b03", "b06", "cc6-2p", "hc6p"})
  void withoutTheExactSumTheCostIsNear(String name) throws IOException {
    Problem problem = Problem.of(name);
    FoundTree tree = TreeFinder.of(problem.links(), 0).joining(problem.ends()).orElseThrow();
    assertThat(TreeCheck.faults(problem.links(), problem.ends(), tree)).isEmpty();
    assertThat(tree.cost()).isBetween(problem.least() - 1e-9, 1.05 * problem.least());
    assertThat(tree.leastCost()).isLessThanOrEqualTo(problem.least() + 1e-9);
    System.out.printf(
        Locale.ROOT,
        "%s: published %.0f, found %.0f, lower bound %.1f%n",
        name,
        problem.least(),
        tree.cost(),
        tree.leastCost());
  }
}
