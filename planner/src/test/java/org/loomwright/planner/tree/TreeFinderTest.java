package org.loomwright.planner.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TreeFinderTest {
  /** A star is cheaper than the three sides: the middle is taken in. */
  private static final List<Link> STAR =
      List.of(
          new Link("ab", "a", "b", 10),
          new Link("bc", "b", "c", 10),
          new Link("ca", "c", "a", 10),
          new Link("am", "a", "m", 6),
          new Link("bm", "b", "m", 6),
          new Link("cm", "c", "m", 6));

  @Test
  void takesInAFurtherNodeWhereThatIsCheaper() {
    FoundTree tree = TreeFinder.of(STAR).joining(Set.of("a", "b", "c")).orElseThrow();
    assertThat(tree.links()).containsExactly("am", "bm", "cm");
    assertThat(tree.cost()).isEqualTo(18).isEqualTo(tree.leastCost());
    assertThat(tree.bound()).startsWith("exact");
  }

  @Test
  void noneAndOneNodeNeedNoLink() {
    assertThat(TreeFinder.of(STAR).joining(Set.of()).orElseThrow().links()).isEmpty();
    assertThat(TreeFinder.of(STAR).joining(Set.of("b")).orElseThrow().cost()).isZero();
    assertThat(TreeFinder.of(List.of()).joining(Set.of("x")).orElseThrow().exact()).isTrue();
  }

  @Test
  void nodesThatNoLinksConnectAreNotJoined() {
    List<Link> links = List.of(new Link("ab", "a", "b", 1), new Link("cd", "c", "d", 1));
    assertThat(TreeFinder.of(links).joining(Set.of("a", "c"))).isEmpty();
    assertThat(TreeFinder.of(links).joining(Set.of("a", "x"))).isEmpty();
    assertThat(TreeFinder.of(links).joining(Set.of("c", "d"))).isPresent();
  }

  @Test
  void amongTiesTheFirstLinkInTheInputWins() {
    List<Link> links =
        List.of(
            new Link("loop", "a", "a", 0),
            new Link("dear", "a", "b", 5),
            new Link("first", "a", "b", 3),
            new Link("second", "b", "a", 3));
    assertThat(TreeFinder.of(links).joining(Set.of("a", "b")).orElseThrow().links())
        .containsExactly("first");
    assertThat(TreeFinder.of(links, 0).joining(Set.of("a", "b")).orElseThrow().links())
        .containsExactly("first");
  }

  @Test
  void linksOfNoCostMakeNoCycle() {
    List<Link> links =
        List.of(
            new Link("ab", "a", "b", 0),
            new Link("bc", "b", "c", 0),
            new Link("ca", "c", "a", 0),
            new Link("cd", "c", "d", 0),
            new Link("de", "d", "e", 0),
            new Link("ea", "e", "a", 0));
    Set<String> ends = Set.of("a", "c", "d");
    for (double limit : List.of(0.0, TreeFinder.LIMIT)) {
      FoundTree tree = TreeFinder.of(links, limit).joining(ends).orElseThrow();
      assertThat(TreeCheck.faults(links, ends, tree)).isEmpty();
      assertThat(tree.exact()).isTrue();
    }
  }

  @Test
  void longChainsAreNoTrouble() {
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < 50_000; i++) {
      links.add(new Link("l" + i, "n" + i, "n" + (i + 1), 1));
    }
    FoundTree tree = TreeFinder.of(links).joining(Set.of("n10", "n30000", "n40010")).orElseThrow();
    assertThat(tree.cost()).isEqualTo(40_000);
    assertThat(tree.exact()).isTrue();
  }

  @Test
  void badLinksAreRefused() {
    assertThatThrownBy(() -> new Link("ab", "a", "b", -1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("link ab: cost -1.0 must be zero or more and finite");
    assertThatThrownBy(() -> new Link("ab", "a", "b", Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> new Link("ab", "a", "b", Double.POSITIVE_INFINITY))
        .hasMessageContaining("Infinity");
    List<Link> twice = List.of(STAR.get(0), STAR.get(0));
    assertThatThrownBy(() -> TreeFinder.of(twice)).hasMessage("link ab comes up twice");
  }

  @Test
  void whereNotExactTheBoundIsSaid() {
    List<Link> links = new ArrayList<>();
    List<String> words = List.of("1 2", "1 4", "1 5", "2 3", "2 6", "3 4", "3 7", "4 8");
    List<String> more = List.of("5 6", "5 8", "6 7", "7 8");
    for (String word : words) {
      links.add(new Link(word, word.substring(0, 1), word.substring(2), 1));
    }
    for (String word : more) {
      links.add(new Link(word, word.substring(0, 1), word.substring(2), 1));
    }
    Set<String> corners = Set.of("1", "3", "6", "8");
    FoundTree exact = TreeFinder.of(links).joining(corners).orElseThrow();
    FoundTree near = TreeFinder.of(links, 0).joining(corners).orElseThrow();
    assertThat(near.cost()).isEqualTo(exact.cost());
    assertThat(near.exact()).isFalse();
    assertThat(near.leastCost()).isLessThan(near.cost());
    assertThat(near.bound()).endsWith("never exceeds 1.500 times the least").startsWith("at most ");
  }
}
