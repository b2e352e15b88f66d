package org.loomwright.planner.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import org.jgrapht.alg.steiner.KouMarkowskyBermanAlgorithm;
import org.loomwright.planner.fixture.Draw;

/** Trees found without the exact sum against exact ones, and against JGraphT's. */
class NearTreeOracleTest {
  private static final double NEVER = 0;

  private static int count;
  private static int best;
  private static double worst;
  private static double sum;
  private static double lowest = 1;
  private static double peerWorst;
  private static double peerSum;

  @AfterContainer
  static void report() {
    System.out.printf(
        Locale.ROOT,
        "trees without the exact sum, of the least cost: worst %.4f, mean %.5f, least in %d of %d;"
            + " lower bound at least %.3f; plain metric closure: worst %.4f, mean %.5f%n",
        worst,
        sum / count,
        best,
        count,
        lowest,
        peerWorst,
        peerSum / count);
  }

  @Property(tries = 1000, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void staysWithinItsBoundsOnSmallGraphs(@ForAll long seed) {
    Draw draw = new Draw(seed);
    int nodes = draw.number(3, 14);
    check(
        RandomLinks.connected(draw, nodes, draw.number(nodes, 3 * nodes), draw.number(1, 40)),
        RandomLinks.nodes(draw, nodes, draw.number(3, 8)));
  }

  @Property(tries = 100, shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
  void staysWithinItsBoundsOnLargerGraphs(@ForAll long seed) {
    Draw draw = new Draw(seed);
    int nodes = draw.number(30, 60);
    check(
        RandomLinks.connected(draw, nodes, 2 * nodes, draw.chance(30) ? 2 : 100),
        RandomLinks.nodes(draw, nodes, 10));
  }

  private static void check(List<Link> links, Set<String> ends) {
    FoundTree exact = TreeFinder.of(links).joining(ends).orElseThrow();
    FoundTree near = TreeFinder.of(links, NEVER).joining(ends).orElseThrow();
    assertThat(exact.exact()).isTrue();
    assertThat(TreeCheck.faults(links, ends, exact)).isEmpty();
    assertThat(TreeCheck.faults(links, ends, near)).isEmpty();
    assertThat(near.cost()).isBetween(exact.cost() - 1e-9, factor(ends) * exact.cost() + 1e-9);
    assertThat(near.leastCost()).isLessThanOrEqualTo(exact.cost() + 1e-9);
    if (near.exact()) {
      assertThat(near.cost()).isLessThanOrEqualTo(exact.cost() + 1e-9);
    }
    double peer =
        new KouMarkowskyBermanAlgorithm<>(Peer.simple(links)).getSteinerTree(ends).getWeight();
    assertThat(near.cost()).isLessThanOrEqualTo(peer + 1e-9);
    note(exact.cost(), near, peer);
  }

  private static double factor(Set<String> ends) {
    return 2 * (1 - 1.0 / ends.size());
  }

  private static void note(double exact, FoundTree near, double peer) {
    if (exact > 0) {
      count++;
      best += near.cost() <= exact + 1e-9 ? 1 : 0;
      worst = Math.max(worst, near.cost() / exact);
      sum += near.cost() / exact;
      lowest = Math.min(lowest, near.leastCost() / exact);
      peerWorst = Math.max(peerWorst, peer / exact);
      peerSum += peer / exact;
    }
  }
}
