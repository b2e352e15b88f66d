package org.loomwright.planner.tree;

import java.util.Arrays;

/** Disjoint sets of nodes. */
final class Sets {
  private final int[] head;

  /** Each node a set of its own. */
  Sets(int nodes) {
    head = new int[nodes];
    Arrays.setAll(head, i -> i);
  }

  int find(int node) {
    int at = node;
    while (head[at] != at) {
      head[at] = head[head[at]];
      at = head[at];
    }
    return at;
  }

  /** Joins two sets; false when they were one already. The lower number becomes the head. */
  boolean join(int a, int b) {
    int first = find(a);
    int second = find(b);
    head[Math.max(first, second)] = Math.min(first, second);
    return first != second;
  }
}
