package org.loomwright.drawing.map;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * A tree in columns and rows: each stop one column beyond its parent, the deepest branch straight
 * on, the others beside it as near as they can be. Lines between neighbouring columns never cross.
 */
final class LayeredTree {
  private final List<List<Integer>> neighbours;
  private final boolean[] flipped;
  private final int[] column;
  private final int[] row;

  private LayeredTree(List<List<Integer>> neighbours, boolean[] flipped) {
    this.neighbours = neighbours;
    this.flipped = flipped;
    this.column = new int[neighbours.size()];
    this.row = new int[neighbours.size()];
  }

  /**
   * Lays out one tree.
   *
   * @param neighbours neighbours of each node in the tree
   * @param any a node of the tree
   * @param flipped nodes whose branches change sides
   */
  static LayeredTree of(List<List<Integer>> neighbours, int any, boolean[] flipped) {
    LayeredTree tree = new LayeredTree(neighbours, flipped);
    tree.place(tree.farthest(any), -1, 0);
    return tree;
  }

  int column(int node) {
    return column[node];
  }

  int row(int node) {
    return row[node];
  }

  /** Nodes of the tree of a node, in the order they are reached. */
  static List<Integer> reached(List<List<Integer>> neighbours, int from) {
    boolean[] seen = new boolean[neighbours.size()];
    List<Integer> reached = new ArrayList<>();
    Deque<Integer> open = new ArrayDeque<>(List.of(from));
    seen[from] = true;
    while (!open.isEmpty()) {
      int node = open.removeFirst();
      reached.add(node);
      for (int next : neighbours.get(node)) {
        if (!seen[next]) {
          seen[next] = true;
          open.add(next);
        }
      }
    }
    return reached;
  }

  /** One end of the longest way through the tree. */
  private int farthest(int any) {
    List<Integer> reached = reached(neighbours, any);
    int end = reached.get(reached.size() - 1);
    List<Integer> back = reached(neighbours, end);
    int other = back.get(back.size() - 1);
    // Either end would do; the earlier in the document is taken.
    return Math.min(end, other);
  }

  /** Rows taken in each column from a node's own on. */
  private record Outline(int[] top, int[] bottom) {
    int depth() {
      return top.length;
    }
  }

  /** Places a branch with its first node in row 0. */
  private Outline place(int node, int parent, int at) {
    column[node] = at;
    row[node] = 0;
    List<Integer> children =
        new ArrayList<>(neighbours.get(node).stream().filter(it -> it != parent).toList());
    List<Outline> outlines = new ArrayList<>();
    for (int child : children) {
      outlines.add(place(child, node, at + 1));
    }
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < children.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingInt((Integer i) -> -outlines.get(i).depth()));
    Outline all = null;
    boolean below = !flipped[node];
    for (int i : order) {
      Outline own = outlines.get(i);
      int shift = all == null ? 0 : below ? under(all, own) : -under(own, all);
      move(children.get(i), node, shift);
      all = all == null ? own : joined(all, own, shift);
      below = all == own ? below : !below;
    }
    return above(all);
  }

  /** Rows the lower branch has to go down to be clear of the upper one. */
  private static int under(Outline upper, Outline lower) {
    int shift = Integer.MIN_VALUE;
    for (int i = 0; i < Math.min(upper.depth(), lower.depth()); i++) {
      shift = Math.max(shift, upper.bottom()[i] - lower.top()[i] + 1);
    }
    return shift;
  }

  private static Outline joined(Outline one, Outline other, int shift) {
    int depth = Math.max(one.depth(), other.depth());
    int[] top = new int[depth];
    int[] bottom = new int[depth];
    Arrays.fill(top, Integer.MAX_VALUE);
    Arrays.fill(bottom, Integer.MIN_VALUE);
    for (int i = 0; i < depth; i++) {
      if (i < one.depth()) {
        top[i] = one.top()[i];
        bottom[i] = one.bottom()[i];
      }
      if (i < other.depth()) {
        top[i] = Math.min(top[i], other.top()[i] + shift);
        bottom[i] = Math.max(bottom[i], other.bottom()[i] + shift);
      }
    }
    return new Outline(top, bottom);
  }

  private static Outline above(@org.jspecify.annotations.Nullable Outline children) {
    int deeper = children == null ? 0 : children.depth();
    int[] top = new int[deeper + 1];
    int[] bottom = new int[deeper + 1];
    if (children != null) {
      System.arraycopy(children.top(), 0, top, 1, deeper);
      System.arraycopy(children.bottom(), 0, bottom, 1, deeper);
    }
    return new Outline(top, bottom);
  }

  private void move(int node, int parent, int by) {
    if (by == 0) {
      return;
    }
    row[node] += by;
    for (int next : neighbours.get(node)) {
      if (next != parent) {
        move(next, node, by);
      }
    }
  }
}
