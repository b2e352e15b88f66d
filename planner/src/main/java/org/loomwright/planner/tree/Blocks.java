package org.loomwright.planner.tree;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Cuts a graph at every node that alone holds two parts together (J. Hopcroft and R. Tarjan,
 * "Algorithm 447: efficient algorithms for graph manipulation", Comm. ACM 16, 1973). A tree that
 * joins nodes on both sides of such a node passes through it, so the cheapest tree is made of the
 * cheapest trees of the parts: within each part they join the part's own nodes and the cutting
 * nodes that lead to further ones. Parts with nothing to join are left out.
 */
final class Blocks {
  private final LinkGraph graph;
  private final BitSet needed;
  private final int[] seen;
  private final int[] low;
  private final int[] next;
  private final int[] came;
  private final boolean[] holds;
  private final Deque<Integer> open = new ArrayDeque<>();
  private final List<Block> blocks = new ArrayList<>();
  private int time;

  private Blocks(LinkGraph graph, BitSet ends) {
    this.graph = graph;
    needed = (BitSet) ends.clone();
    seen = new int[graph.nodes()];
    low = new int[graph.nodes()];
    next = new int[graph.nodes()];
    came = new int[graph.nodes()];
    holds = new boolean[graph.nodes()];
  }

  /**
   * The parts that a tree over some nodes runs through; empty when the nodes are not connected.
   *
   * @param ends one node at least
   */
  static Optional<List<Block>> between(LinkGraph graph, BitSet ends) {
    Blocks blocks = new Blocks(graph, ends);
    blocks.visit(ends.nextSetBit(0));
    boolean connected = ends.stream().allMatch(node -> blocks.seen[node] > 0);
    return connected ? Optional.of(blocks.blocks) : Optional.empty();
  }

  /** Depth first, with a stack of its own so that long chains do not overflow. */
  private void visit(int root) {
    Deque<Integer> way = new ArrayDeque<>();
    came[root] = Labels.START;
    enter(root, way);
    while (!way.isEmpty()) {
      int node = way.getLast();
      int[] links = graph.at(node);
      if (next[node] < links.length) {
        int link = links[next[node]++];
        int other = graph.other(link, node);
        if (seen[other] == 0) {
          open.addLast(link);
          came[other] = link;
          enter(other, way);
        } else if (link != came[node] && seen[other] < seen[node]) {
          open.addLast(link);
          low[node] = Math.min(low[node], seen[other]);
        }
      } else {
        way.removeLast();
        if (!way.isEmpty()) {
          leave(node, way.getLast());
        }
      }
    }
  }

  private void enter(int node, Deque<Integer> way) {
    seen[node] = ++time;
    low[node] = time;
    holds[node] = needed.get(node);
    way.addLast(node);
  }

  private void leave(int node, int parent) {
    low[parent] = Math.min(low[parent], low[node]);
    holds[parent] |= holds[node];
    if (low[node] >= seen[parent]) {
      BitSet links = new BitSet();
      int link;
      do {
        link = open.removeLast();
        links.set(link);
      } while (link != came[node]);
      if (holds[node]) {
        needed.set(parent);
        blocks.add(block(links));
      }
    }
  }

  private Block block(BitSet links) {
    int[] number = new int[graph.nodes()];
    Arrays.fill(number, -1);
    List<Integer> ends = new ArrayList<>();
    int count = 0;
    BitSet nodes = graph.touched(links);
    for (int node = nodes.nextSetBit(0); node >= 0; node = nodes.nextSetBit(node + 1)) {
      if (needed.get(node)) {
        ends.add(count);
      }
      number[node] = count++;
    }
    int[] whole = links.stream().toArray();
    LinkGraph part =
        new LinkGraph(
            count,
            Arrays.stream(whole).map(link -> number[graph.from(link)]).toArray(),
            Arrays.stream(whole).map(link -> number[graph.to(link)]).toArray(),
            Arrays.stream(whole).mapToDouble(graph::cost).toArray());
    return new Block(part, Arrays.stream(whole).boxed().toList(), ends);
  }
}
