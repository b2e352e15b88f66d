package org.loomwright.planner.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ForestFinderTest {
  private static final double ANY = Double.POSITIVE_INFINITY;

  /** A ring of six nodes, one stretch a little dearer. */
  private static final List<Link> RING =
      List.of(
          new Link("ab", "a", "b", 10),
          new Link("bc", "b", "c", 10),
          new Link("cd", "c", "d", 10),
          new Link("de", "d", "e", 10),
          new Link("ef", "e", "f", 10),
          new Link("fa", "f", "a", 11));

  private static List<Ends> pairs(String... pairs) {
    return Stream.of(pairs).map(it -> new Ends(it.substring(0, 1), it.substring(1))).toList();
  }

  private static List<String> ids(List<Link> links) {
    return links.stream().map(Link::id).toList();
  }

  @Test
  void aPathIsReadInTheOrderWalked() {
    Forest forest = ForestFinder.of(RING).joining(pairs("ac", "cd"), ANY).orElseThrow();
    assertThat(ids(forest.links())).containsExactly("ab", "bc", "cd");
    assertThat(ids(forest.path("d", "b"))).containsExactly("cd", "bc");
    assertThat(ids(forest.path("a", "d"))).containsExactly("ab", "bc", "cd");
    assertThat(forest.path("a", "a")).isEmpty();
    assertThatThrownBy(() -> forest.path("a", "f")).hasMessage("the forest does not join a and f");
  }

  @Test
  void aPathThatStaysLongIsNamed() {
    List<Ends> pairs = pairs("ab", "bc", "cd", "de", "ef", "fa");
    Forest cheapest = ForestFinder.of(RING).joining(pairs, ANY).orElseThrow();
    assertThat(cheapest.cost()).isEqualTo(50);
    assertThat(cheapest.exact()).isTrue();
    Forest kept = ForestFinder.of(RING).joining(pairs, 1.5).orElseThrow();
    assertThat(kept.cost()).isEqualTo(50);
    assertThat(kept.notes())
        .containsExactly(
            "f to a: the path costs 50.0000, the shortest would cost 11.0000; more than 1.50 times");
  }

  @Test
  void shortPathsMayCostMore() {
    List<Link> links = new ArrayList<>(RING.subList(0, 5));
    links.add(new Link("fa", "f", "a", 35));
    List<Ends> pairs = pairs("ab", "ef", "af");
    Forest cheapest = ForestFinder.of(links).joining(pairs, 1.5).orElseThrow();
    assertThat(ids(cheapest.links())).containsExactly("ab", "bc", "cd", "de", "ef");
    assertThat(cheapest.notes()).isEmpty();
    Forest straight = ForestFinder.of(links).joining(pairs, 1.25).orElseThrow();
    assertThat(ids(straight.links())).containsExactly("ab", "ef", "fa");
    assertThat(straight.notes())
        .containsExactly(
            "10.00 % dearer than the cheapest forest found, to keep paths within 1.25 times the"
                + " shortest");
    assertThat(straight.exact()).isFalse();
    assertThat(straight.leastCost()).isEqualTo(50);
  }

  @Test
  void groupsShareATreeWhereThatIsCheaper() {
    List<Link> links =
        List.of(
            new Link("ab", "a", "b", 10),
            new Link("cd", "c", "d", 10),
            new Link("trunk", "x", "y", 8),
            new Link("ax", "a", "x", 1),
            new Link("cx", "c", "x", 1),
            new Link("by", "b", "y", 1),
            new Link("dy", "d", "y", 1));
    Forest one = ForestFinder.of(links).joining(pairs("ab"), ANY).orElseThrow();
    assertThat(one.cost()).isEqualTo(10);
    Forest both = ForestFinder.of(links).joining(pairs("ab", "cd"), ANY).orElseThrow();
    assertThat(ids(both.links())).containsExactly("trunk", "ax", "cx", "by", "dy");
    assertThat(both.cost()).isEqualTo(12);
    assertThat(both.exact()).isTrue();
  }

  @Test
  void groupsFarApartStayApart() {
    List<Link> links = new ArrayList<>(RING);
    links.add(new Link("xy", "x", "y", 5));
    links.add(new Link("ax", "a", "x", 1));
    Forest forest = ForestFinder.of(links).joining(pairs("cd", "xy", "yx"), ANY).orElseThrow();
    assertThat(ids(forest.links())).containsExactly("cd", "xy");
    assertThatThrownBy(() -> forest.path("c", "x")).hasMessageContaining("does not join");
  }

  @Test
  void nothingToJoinNeedsNoLinkAndCutOffPairsGiveNoForest() {
    assertThat(ForestFinder.of(RING).joining(List.of(), 1).orElseThrow().links()).isEmpty();
    Forest self = ForestFinder.of(RING).joining(pairs("zz"), 1).orElseThrow();
    assertThat(self.path("z", "z")).isEmpty();
    assertThat(self.exact()).isTrue();
    assertThat(ForestFinder.of(RING).joining(pairs("ab", "az"), 1)).isEmpty();
    List<Link> more = new ArrayList<>(RING);
    more.add(new Link("xy", "x", "y", 5));
    assertThat(ForestFinder.of(more).joining(pairs("ax"), 1)).isEmpty();
    assertThat(ForestFinder.of(more).joining(pairs("ax", "bb", "cb", "de", "ff", "xy"), 1))
        .isEmpty();
  }

  @Test
  void mostDetourBelowOneIsRefused() {
    assertThatThrownBy(() -> ForestFinder.of(RING).joining(pairs("ab"), 0.9))
        .hasMessage("mostDetour 0.9 must be one or more");
    assertThatThrownBy(() -> ForestFinder.of(RING).joining(pairs("ab"), Double.NaN))
        .hasMessageContaining("NaN");
  }
}
