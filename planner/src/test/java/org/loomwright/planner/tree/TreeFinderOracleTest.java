package org.loomwright.planner.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.BellmanFordShortestPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.alg.spanning.KruskalMinimumSpanningTree;
import org.jgrapht.alg.spanning.PrimMinimumSpanningTree;
import org.jgrapht.graph.WeightedMultigraph;
import org.loomwright.planner.fixture.Draw;

/** Exact trees against trying everything and against the algorithms of JGraphT. */
class TreeFinderOracleTest {
  @Property(tries = 1000, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void noTreeIsCheaper(@ForAll long seed) {
    Draw draw = new Draw(seed);
    int nodes = draw.number(2, 8);
    List<Link> links = RandomLinks.any(draw, nodes, draw.number(1, 3 * nodes), draw.number(1, 20));
    Set<String> ends = RandomLinks.nodes(draw, nodes, draw.number(1, nodes));
    Optional<FoundTree> found = TreeFinder.of(links).joining(ends);
    OptionalDouble least = BruteForce.tree(links, ends);
    assertThat(found.isPresent()).isEqualTo(least.isPresent());
    found.ifPresent(
        tree -> {
          assertThat(TreeCheck.faults(links, ends, tree)).isEmpty();
          assertThat(tree.exact()).isTrue();
          assertThat(tree.cost()).isCloseTo(least.getAsDouble(), within(1e-9));
          Statistics.label("further nodes")
              .collect(tree.links().size() >= ends.size())
              .coverage(c -> c.check(true).percentage(p -> p > 5));
        });
    Statistics.label("connected")
        .collect(found.isPresent())
        .coverage(c -> c.check(false).percentage(p -> p > 10));
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void orderOfNodesDoesNotMatterAndOrderOfLinksNotForTheCost(@ForAll long seed) {
    Draw draw = new Draw(seed);
    int nodes = draw.number(3, 12);
    List<Link> links = RandomLinks.connected(draw, nodes, draw.number(0, 15), 6);
    List<String> ends =
        new ArrayList<>(RandomLinks.nodes(draw, nodes, draw.number(2, Math.min(8, nodes))));
    FoundTree tree = TreeFinder.of(links).joining(new LinkedHashSet<>(ends)).orElseThrow();
    Collections.shuffle(ends, new Random(seed));
    assertThat(TreeFinder.of(links).joining(new LinkedHashSet<>(ends))).contains(tree);
    List<Link> shuffled = new ArrayList<>(links);
    Collections.shuffle(shuffled, new Random(seed));
    assertThat(TreeFinder.of(shuffled).joining(new LinkedHashSet<>(ends)).orElseThrow().cost())
        .isCloseTo(tree.cost(), within(1e-9));
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void twoNodesAreJoinedByAShortestPath(@ForAll long seed) {
    Draw draw = new Draw(seed);
    int nodes = draw.number(2, 30);
    List<Link> links = RandomLinks.any(draw, nodes, draw.number(nodes / 2, 2 * nodes), 50);
    List<String> two = List.copyOf(RandomLinks.nodes(draw, nodes, 2));
    WeightedMultigraph<String, Link> peer = Peer.multi(links);
    Optional<FoundTree> found = TreeFinder.of(links).joining(Set.copyOf(two));
    if (!peer.containsVertex(two.get(0)) || !peer.containsVertex(two.get(1))) {
      assertThat(found).isEmpty();
      return;
    }
    GraphPath<String, Link> dijkstra =
        DijkstraShortestPath.findPathBetween(peer, two.get(0), two.get(1));
    assertThat(found.isPresent()).isEqualTo(dijkstra != null);
    if (found.isPresent()) {
      assertThat(found.get().cost()).isCloseTo(dijkstra.getWeight(), within(1e-9));
      assertThat(found.get().cost())
          .isCloseTo(
              new BellmanFordShortestPath<>(peer).getPathWeight(two.get(0), two.get(1)),
              within(1e-9));
      assertThat(TreeCheck.faults(links, Set.copyOf(two), found.get())).isEmpty();
    }
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void allNodesAreJoinedByALeastSpanningTree(@ForAll long seed) {
    Draw draw = new Draw(seed);
    int nodes = draw.number(2, 40);
    List<Link> links = RandomLinks.connected(draw, nodes, draw.number(0, 80), 30);
    Set<String> all = Peer.multi(links).vertexSet();
    FoundTree tree = TreeFinder.of(links).joining(all).orElseThrow();
    assertThat(TreeCheck.faults(links, all, tree)).isEmpty();
    assertThat(tree.exact()).isTrue();
    assertThat(tree.cost())
        .isCloseTo(
            new KruskalMinimumSpanningTree<>(Peer.multi(links)).getSpanningTree().getWeight(),
            within(1e-9))
        .isCloseTo(
            new PrimMinimumSpanningTree<>(Peer.multi(links)).getSpanningTree().getWeight(),
            within(1e-9));
  }
}
