package org.loomwright.planner.tree;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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

  /** Numbers of nodes in the part at hand; those of other nodes are left over and not read. */
  private final int[] number;

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
    number = new int[graph.nodes()];
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
      List<Integer> links = new ArrayList<>();
      int link;
      do {
        link = open.removeLast();
        links.add(link);
      } while (link != came[node]);
      if (holds[node]) {
        needed.set(parent);
        blocks.add(block(links.stream().mapToInt(Integer::intValue).sorted().toArray()));
      }
    }
  }

  private Block block(int[] links) {
    int[] nodes =
        Arrays.stream(links)
            .flatMap(link -> IntStream.of(graph.from(link), graph.to(link)))
            .sorted()
            .distinct()
            .toArray();
    List<Integer> ends = new ArrayList<>();
    for (int i = 0; i < nodes.length; i++) {
      number[nodes[i]] = i;
      if (needed.get(nodes[i])) {
        ends.add(i);
      }
    }
    LinkGraph part =
        new LinkGraph(
            nodes.length,
            Arrays.stream(links).map(link -> number[graph.from(link)]).toArray(),
            Arrays.stream(links).map(link -> number[graph.to(link)]).toArray(),
            Arrays.stream(links).mapToDouble(graph::cost).toArray());
    return new Block(part, Arrays.stream(links).boxed().toList(), ends);
  }
}
