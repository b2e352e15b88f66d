package org.loomwright.planner.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The checker of the other tests finds planted faults. */
class TreeCheckTest {
  private static final List<Link> LINKS =
      List.of(
          new Link("ab", "a", "b", 1),
          new Link("bc", "b", "c", 2),
          new Link("ca", "c", "a", 4),
          new Link("cd", "c", "d", 8),
          new Link("ef", "e", "f", 16));

  private static List<String> faults(double cost, double least, boolean exact, String... ids) {
    return TreeCheck.faults(
        LINKS,
        Set.of("a", "c"),
        new FoundTree(new LinkedHashSet<>(List.of(ids)), cost, least, exact, ""));
  }

  @Test
  void aRightTreeHasNoFault() {
    assertThat(faults(3, 3, true, "ab", "bc")).isEmpty();
    assertThat(faults(4, 3, false, "ca")).isEmpty();
  }

  @Test
  void plantedFaultsOfTreesAreFound() {
    assertThat(faults(7, 7, true, "ab", "bc", "ca")).containsExactly("cycle closed by ca");
    assertThat(faults(1, 1, true, "ab")).contains("not all joined", "needless branch to b");
    assertThat(faults(11, 11, true, "ab", "bc", "cd")).containsExactly("needless branch to d");
    assertThat(faults(19, 19, true, "ab", "bc", "ef")).contains("in pieces");
    assertThat(faults(4, 4, true, "ab", "bc")).containsExactly("costs 3.0, not 4.0");
    assertThat(faults(3, 2, true, "ab", "bc")).hasSize(1).allMatch(it -> it.startsWith("bound"));
    assertThat(faults(3, 4, false, "ab", "bc")).hasSize(1).allMatch(it -> it.startsWith("bound"));
    assertThat(faults(3, 3, false, "ab", "bc")).hasSize(1).allMatch(it -> it.startsWith("bound"));
    assertThat(faults(3, 3, true, "bc", "ab")).containsExactly("links out of order");
    assertThat(faults(3, 3, true, "ab", "bc", "xy")).contains("unknown link xy");
  }

  @Test
  void plantedFaultsOfForestsAreFound() {
    List<Ends> pairs = List.of(new Ends("a", "c"));
    assertThat(TreeCheck.faults(LINKS, pairs, forest(3, 0, 1))).isEmpty();
    assertThat(TreeCheck.faults(LINKS, pairs, forest(7, 0, 1, 2))).contains("cycle closed by ca");
    assertThat(TreeCheck.faults(LINKS, pairs, forest(19, 0, 1, 4)))
        .containsExactly("a link that no pair uses");
    assertThat(TreeCheck.faults(LINKS, pairs, forest(2, 0, 1)))
        .containsExactly("costs 3.0, not 2.0");
    assertThat(TreeCheck.faults(LINKS, pairs, forest(3, 1, 0)))
        .containsExactly("links out of order or unknown");
  }

  private static Forest forest(double cost, int... places) {
    List<Link> links = Arrays.stream(places).mapToObj(LINKS::get).toList();
    return new Forest(links, cost, cost, true, List.of());
  }
}
