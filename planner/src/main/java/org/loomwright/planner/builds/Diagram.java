package org.loomwright.planner.builds;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A decision diagram over some traits in a fixed order: each node asks for one trait and has one
 * way on for each of its values. Traits that make no difference are not asked for.
 *
 * <p>A way on is a number: a node of the list when it is 0 or more, else an end, the first being
 * -1, the second -2. Nodes stand after all nodes they lead to.
 *
 * @param nodes nodes
 * @param ends what the ends hold; no two are equal
 * @param top where to begin, a way on like any other
 */
public record Diagram<T>(List<Node> nodes, List<T> ends, int top) {
  /** The answer to a trait that is not known. */
  public static final int UNKNOWN = -1;

  /**
   * A node.
   *
   * @param trait number of the trait asked for
   * @param next way on for each value of the trait
   */
  public record Node(int trait, List<Integer> next) {
    public Node {
      next = List.copyOf(next);
    }
  }

  public Diagram {
    nodes = List.copyOf(nodes);
    ends = List.copyOf(ends);
  }

  /** Puts the values of all ways on from a trait that is not known together. */
  @FunctionalInterface
  public interface Join<R> {
    /**
     * One value for all.
     *
     * @param trait number of the trait
     * @param parts a value for each value of the trait
     */
    R of(int trait, List<R> parts);
  }

  /**
   * What each way on comes to.
   *
   * @param ends by end
   * @param nodes by node
   */
  public record Folded<R>(List<R> ends, List<R> nodes) {
    /** What a way on comes to. */
    public R at(int way) {
      return way < 0 ? ends.get(-1 - way) : nodes.get(way);
    }
  }

  /**
   * Works out what each node comes to when some traits are known.
   *
   * @param known number of the known value of each trait, or {@link #UNKNOWN}
   * @param end what an end comes to
   * @param join what a node comes to whose trait is not known
   */
  public <R> Folded<R> fold(List<Integer> known, Function<T, R> end, Join<R> join) {
    List<R> done = new ArrayList<>();
    Folded<R> folded = new Folded<>(ends.stream().map(end).toList(), done);
    for (Node node : nodes) {
      int value = known.get(node.trait());
      done.add(
          value == UNKNOWN
              ? join.of(node.trait(), node.next().stream().map(folded::at).toList())
              : folded.at(node.next().get(value)));
    }
    return folded;
  }

  /** The same ways to other ends; ends that become equal become one. */
  public <R> Diagram<R> mapped(Function<T, R> change) {
    Maker<R> maker = new Maker<>();
    List<Integer> ways = new ArrayList<>();
    List<Integer> endWays = ends.stream().map(it -> maker.end(change.apply(it))).toList();
    for (Node node : nodes) {
      ways.add(
          maker.node(
              node.trait(),
              node.next().stream()
                  .map(it -> it < 0 ? endWays.get(-1 - it) : ways.get(it))
                  .toList()));
    }
    return maker.done(top < 0 ? endWays.get(-1 - top) : ways.get(top));
  }

  /** Builds a diagram from the ends upwards, each node and end once. */
  static final class Maker<T> {
    private final List<Node> nodes = new ArrayList<>();
    private final Map<Node, Integer> known = new HashMap<>();
    private final Map<T, Integer> ends = new LinkedHashMap<>();

    int end(T value) {
      return -1 - ends.computeIfAbsent(value, it -> ends.size());
    }

    int node(int trait, List<Integer> next) {
      if (next.stream().distinct().count() == 1) {
        return next.get(0);
      }
      Node node = new Node(trait, next);
      Integer before = known.get(node);
      if (before != null) {
        return before;
      }
      nodes.add(node);
      known.put(node, nodes.size() - 1);
      return nodes.size() - 1;
    }

    Diagram<T> done(int top) {
      return new Diagram<>(nodes, List.copyOf(ends.keySet()), top);
    }
  }
}
