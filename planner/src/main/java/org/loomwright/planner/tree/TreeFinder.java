package org.loomwright.planner.tree;

import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The cheapest tree that joins given nodes (the Steiner tree problem in graphs).
 *
 * <p>The graph is first cut where a single node holds two parts together; what is said below is for
 * each part. When all nodes of a part are to be joined, its least spanning tree is the answer. Else
 * the dynamic programme of Dreyfus and Wagner finds the cheapest tree as long as its 3^k·nodes +
 * 2^k·links steps (k one less than the nodes to join) stay below {@value #LIMIT}: about 12 nodes to
 * join of 100. Beyond that the tree is found by the metric closure method of Kou, Markowsky and
 * Berman, at most 2·(1 - 1/n) times the least cost for n nodes to join, and then bettered step by
 * step; a dual ascent after Wong says what any tree costs at least.
 *
 * <p>The same links and nodes always give the same tree: where costs tie, links that come first in
 * the input win. Safe to use from several threads.
 */
public final class TreeFinder {
  /** Steps allowed for the exact sum. */
  static final double LIMIT = 2e7;

  private final List<Link> links;
  private final Map<String, Integer> number = new LinkedHashMap<>();
  private final LinkGraph graph;
  private final double limit;

  private TreeFinder(List<Link> links, double limit) {
    this.links = List.copyOf(links);
    this.limit = limit;
    Set<String> ids = new HashSet<>();
    int[] from = new int[links.size()];
    int[] to = new int[links.size()];
    double[] cost = new double[links.size()];
    for (int i = 0; i < from.length; i++) {
      Link link = links.get(i);
      if (!ids.add(link.id())) {
        throw new IllegalArgumentException("link " + link.id() + " comes up twice");
      }
      from[i] = numberOf(link.from());
      to[i] = numberOf(link.to());
      cost[i] = link.cost();
    }
    graph = new LinkGraph(number.size(), from, to, cost);
  }

  /**
   * Over some links; the nodes are the links' ends.
   *
   * @throws IllegalArgumentException when two links have the same id
   */
  public static TreeFinder of(List<Link> links) {
    return new TreeFinder(links, LIMIT);
  }

  /** As {@link #of(List)}, with another limit on the steps of the exact sum. */
  static TreeFinder of(List<Link> links, double limit) {
    return new TreeFinder(links, limit);
  }

  /**
   * The cheapest tree found that joins all the nodes; empty when they are not connected. No node or
   * one node alone is joined by no link, also when no link touches it.
   */
  public Optional<FoundTree> joining(Set<String> nodes) {
    if (nodes.size() < 2) {
      return Optional.of(tree(new BitSet(), 0, 0));
    }
    BitSet ends = new BitSet();
    for (String node : nodes) {
      Integer at = number.get(node);
      if (at == null) {
        return Optional.empty();
      }
      ends.set(at);
    }
    return Blocks.between(graph, ends).map(this::joined);
  }

  /** The links as given. */
  List<Link> links() {
    return links;
  }

  /** The numbered graph behind it. */
  LinkGraph graph() {
    return graph;
  }

  /** The number of a node, empty when no link touches it. */
  Optional<Integer> number(String node) {
    return Optional.ofNullable(number.get(node));
  }

  private int numberOf(String node) {
    return number.computeIfAbsent(node, key -> number.size());
  }

  private FoundTree joined(List<Block> blocks) {
    BitSet chosen = new BitSet();
    double least = 0;
    int most = 0;
    for (Block block : blocks) {
      LinkGraph part = block.graph();
      List<Integer> ends = block.ends();
      BitSet tree;
      if (ends.size() == part.nodes()) {
        tree = part.spanning(part.all());
        least += part.cost(tree);
      } else if (ends.size() == 2 || ExactTree.steps(ends.size(), part) <= limit) {
        tree = ExactTree.of(part, ends);
        least += part.cost(tree);
      } else {
        NearTree.Near near = NearTree.of(part, ends);
        tree = near.links();
        least += Math.min(near.leastCost(), part.cost(tree));
        most = Math.max(most, ends.size());
      }
      block.addTo(chosen, tree);
    }
    return tree(chosen, least, most);
  }

  /** The result; {@code most}: the most nodes to join in a part not found exactly, or zero. */
  private FoundTree tree(BitSet chosen, double least, int most) {
    Set<String> ids = new LinkedHashSet<>();
    chosen.stream().forEach(link -> ids.add(links.get(link).id()));
    double cost = graph.cost(chosen);
    if (most == 0 || !Closeness.less(least, cost)) {
      return new FoundTree(
          ids, cost, cost, true, "exact: no tree that joins these nodes costs less");
    }
    String bound =
        String.format(
            Locale.ROOT,
            "at most %.2f %% dearer than the cheapest tree that joins these nodes, by a lower bound"
                + " on every such tree; the way it was found never exceeds %.3f times the least",
            (cost / least - 1) * 100,
            NearTree.factor(most));
    return new FoundTree(ids, cost, least, false, bound);
  }
}
