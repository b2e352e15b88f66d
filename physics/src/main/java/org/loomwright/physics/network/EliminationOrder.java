package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The order in which nodes are eliminated: always the one with the fewest neighbours left, the
 * lowest number among equals. On a tree this makes no new entries at all; a harness is close to
 * one.
 */
final class EliminationOrder {
  private EliminationOrder() {}

  /**
   * @param neighbours for each node the others it is joined to, without itself
   * @return the nodes in order of elimination
   */
  static int[] minimumDegree(List<? extends Set<Integer>> neighbours) {
    int n = neighbours.size();
    List<Set<Integer>> left = new ArrayList<>(n);
    TreeSet<Long> queue = new TreeSet<>();
    for (int i = 0; i < n; i++) {
      left.add(new HashSet<>(neighbours.get(i)));
      queue.add(key(left.get(i).size(), i));
    }
    int[] order = new int[n];
    for (int k = 0; k < n; k++) {
      long first = queue.first();
      queue.remove(first);
      int node = (int) first;
      order[k] = node;
      eliminate(node, left, queue);
    }
    return order;
  }

  /** Takes the node out and joins all its neighbours to each other. */
  private static void eliminate(int node, List<Set<Integer>> left, TreeSet<Long> queue) {
    Set<Integer> around = left.get(node);
    for (int a : around) {
      Set<Integer> ofA = left.get(a);
      queue.remove(key(ofA.size(), a));
      ofA.remove(node);
      for (int b : around) {
        if (b != a) {
          ofA.add(b);
        }
      }
      queue.add(key(ofA.size(), a));
    }
    left.set(node, Set.of());
  }

  private static long key(int degree, int node) {
    return ((long) degree << 32) | node;
  }
}
