package org.loomwright.planner.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.loomwright.planner.fixture.Draw;

/** Forests against trying every set of links, and their paths against shortest paths. */
class ForestFinderOracleTest {
  private static final double ANY = Double.POSITIVE_INFINITY;

  @Property(tries = 400, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void noForestIsCheaper(@ForAll long seed) {
    Draw draw = new Draw(seed);
    int nodes = draw.number(3, 8);
    List<Link> links = RandomLinks.any(draw, nodes, draw.number(nodes, 11), 15);
    List<Ends> pairs = RandomLinks.pairs(draw, nodes, draw.number(1, 4));
    Optional<Forest> found = ForestFinder.of(links).joining(pairs, ANY);
    OptionalDouble least = BruteForce.forest(links, pairs);
    assertThat(found.isPresent()).isEqualTo(least.isPresent());
    found.ifPresent(
        forest -> {
          assertThat(TreeCheck.faults(links, pairs, forest)).isEmpty();
          assertThat(forest.exact()).isTrue();
          assertThat(forest.notes()).isEmpty();
          assertThat(forest.cost()).isCloseTo(least.getAsDouble(), within(1e-9));
        });
    Statistics.label("joined")
        .collect(found.isPresent())
        .coverage(c -> c.check(true).percentage(p -> p > 40));
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void withoutTheExactSumItIsStillAForestWithinItsBound(@ForAll long seed) {
    Draw draw = new Draw(seed);
    List<Link> links = RandomLinks.connected(draw, 10, 10, 15);
    List<Ends> pairs = RandomLinks.pairs(draw, 10, draw.number(1, 5));
    Forest exact = ForestFinder.of(links).joining(pairs, ANY).orElseThrow();
    Forest near = ForestFinder.of(links, 0).joining(pairs, ANY).orElseThrow();
    assertThat(exact.exact()).isTrue();
    assertThat(TreeCheck.faults(links, pairs, near)).isEmpty();
    assertThat(near.cost()).isBetween(exact.cost() - 1e-9, 2 * exact.cost());
    assertThat(near.leastCost()).isLessThanOrEqualTo(exact.cost() + 1e-9);
    assertThat(near.exact()).isEqualTo(near.notes().isEmpty());
  }

  @Property(tries = 8, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void manyGroupsMakeAForestAboveItsBound(@ForAll long seed) {
    Draw draw = new Draw(seed);
    int nodes = draw.number(14, 16);
    List<Link> links = RandomLinks.connected(draw, nodes, 2, 15);
    List<String> apart = List.copyOf(RandomLinks.nodes(draw, nodes, 14));
    List<Ends> pairs =
        IntStream.range(0, 7)
            .mapToObj(i -> new Ends(apart.get(2 * i), apart.get(2 * i + 1)))
            .toList();
    Forest forest = ForestFinder.of(links).joining(pairs, ANY).orElseThrow();
    double least = BruteForce.forest(links, pairs).orElseThrow();
    assertThat(TreeCheck.faults(links, pairs, forest)).isEmpty();
    assertThat(forest.cost()).isGreaterThanOrEqualTo(least - 1e-9);
    assertThat(forest.leastCost()).isBetween(least / 2, least + 1e-9);
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void pathsAreKeptShortWhereAsked(@ForAll long seed) {
    Draw draw = new Draw(seed);
    int nodes = draw.number(5, 16);
    List<Link> links = RandomLinks.connected(draw, nodes, draw.number(4, 20), 30);
    List<Ends> pairs = RandomLinks.pairs(draw, nodes, draw.number(2, 7));
    double most = 1 + draw.number(0, 10) / 10.0;
    Forest cheapest = ForestFinder.of(links).joining(pairs, ANY).orElseThrow();
    Forest kept = ForestFinder.of(links).joining(pairs, most).orElseThrow();
    assertThat(TreeCheck.faults(links, pairs, kept)).isEmpty();
    assertThat(kept.cost()).isGreaterThanOrEqualTo(cheapest.leastCost() - 1e-9);
    Set<Ends> longBefore = overlong(links, pairs, cheapest, most);
    Set<Ends> longAfter = overlong(links, pairs, kept, most);
    assertThat(longAfter.size()).isLessThanOrEqualTo(longBefore.size());
    if (longBefore.isEmpty()) {
      assertThat(kept.links()).isEqualTo(cheapest.links());
    }
    assertThat(kept.notes().stream().filter(note -> note.contains(": the path costs ")).count())
        .isEqualTo(longAfter.size());
    for (Ends ends : longAfter) {
      assertThat(kept.notes()).anyMatch(it -> it.startsWith(ends.from() + " to " + ends.to()));
    }
    Statistics.label("over-long path repaired")
        .collect(longAfter.size() < longBefore.size())
        .coverage(c -> c.check(true).percentage(p -> p > 10));
  }

  private static Set<Ends> overlong(
      List<Link> links, List<Ends> pairs, Forest forest, double most) {
    Set<Ends> overlong = new HashSet<>();
    for (Ends ends : pairs) {
      double path = forest.path(ends.from(), ends.to()).stream().mapToDouble(Link::cost).sum();
      double shortest =
          DijkstraShortestPath.findPathBetween(Peer.multi(links), ends.from(), ends.to())
              .getWeight();
      if (path > most * shortest + 1e-6) {
        overlong.add(ends);
      }
    }
    return overlong;
  }
}
