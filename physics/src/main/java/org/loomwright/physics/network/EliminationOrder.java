package org.loomwright.physics.network;

import java.util.Arrays;

/**
 * The order in which nodes are eliminated: always one of those with the fewest neighbours left. On
 * a tree this makes no new entries at all; a harness is close to one.
 */
final class EliminationOrder {
  private static final int NONE = -1;

  private final int[][] neighbours;
  private final int[] degree;
  private final int[] first;
  private final int[] next;
  private final int[] before;
  private final int[] mark;
  private int stamp;

  private EliminationOrder(int[][] around) {
    int n = around.length;
    neighbours = new int[n][];
    degree = new int[n];
    first = new int[n + 1];
    next = new int[n];
    before = new int[n];
    mark = new int[n];
    Arrays.fill(first, NONE);
    for (int i = n - 1; i >= 0; i--) {
      neighbours[i] = around[i].clone();
      degree[i] = around[i].length;
      file(i);
    }
  }

  /**
   * @param neighbours for each node the others it is joined to, each once, without itself
   * @return the nodes in order of elimination
   */
  static int[] minimumDegree(int[][] neighbours) {
    return new EliminationOrder(neighbours).order();
  }

  private int[] order() {
    int[] order = new int[neighbours.length];
    int least = 0;
    for (int k = 0; k < order.length; k++) {
      while (first[least] == NONE) {
        least++;
      }
      int node = first[least];
      order[k] = node;
      unfile(node);
      eliminate(node);
      // Its neighbours lose one and may gain others: none falls by more than one.
      least = Math.max(0, least - 1);
    }
    return order;
  }

  /** Takes the node out and joins all its neighbours to each other. */
  private void eliminate(int node) {
    int count = degree[node];
    for (int i = 0; i < count; i++) {
      int a = neighbours[node][i];
      unfile(a);
      remove(a, node);
      stamp++;
      mark[a] = stamp;
      for (int j = 0; j < degree[a]; j++) {
        mark[neighbours[a][j]] = stamp;
      }
      for (int j = 0; j < count; j++) {
        int b = neighbours[node][j];
        if (mark[b] != stamp) {
          add(a, b);
        }
      }
      file(a);
    }
  }

  private void remove(int from, int node) {
    int[] list = neighbours[from];
    int at = 0;
    while (list[at] != node) {
      at++;
    }
    degree[from]--;
    list[at] = list[degree[from]];
  }

  private void add(int to, int node) {
    if (degree[to] == neighbours[to].length) {
      neighbours[to] = Arrays.copyOf(neighbours[to], 2 * degree[to] + 4);
    }
    neighbours[to][degree[to]] = node;
    degree[to]++;
  }

  /** Puts a node at the head of the list of its degree. */
  private void file(int node) {
    int d = degree[node];
    next[node] = first[d];
    before[node] = NONE;
    if (first[d] != NONE) {
      before[first[d]] = node;
    }
    first[d] = node;
  }

  private void unfile(int node) {
    if (before[node] == NONE) {
      first[degree[node]] = next[node];
    } else {
      next[before[node]] = next[node];
    }
    if (next[node] != NONE) {
      before[next[node]] = before[node];
    }
  }
}
