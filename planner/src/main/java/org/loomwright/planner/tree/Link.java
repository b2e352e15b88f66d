package org.loomwright.planner.tree;

/**
 * A way between two nodes that may be walked both ways. Several links may join the same nodes, and
 * a link may lead back to its own node (no tree ever uses that one).
 *
 * @param id name of the link, its own among all links
 * @param from one node
 * @param to the other node
 * @param cost cost of using it, zero or more, finite; any unit, the same for all links
 */
public record Link(String id, String from, String to, double cost) {
  /**
   * Checks the cost.
   *
   * @throws IllegalArgumentException when the cost is negative or no finite number
   */
  public Link {
    if (!(cost >= 0) || Double.isInfinite(cost)) {
      throw new IllegalArgumentException(
          "link " + id + ": cost " + cost + " must be zero or more and finite");
    }
  }

  /**
   * The node at the other end.
   *
   * @throws IllegalArgumentException when the link does not touch the node
   */
  public String other(String node) {
    if (node.equals(from)) {
      return to;
    }
    if (node.equals(to)) {
      return from;
    }
    throw new IllegalArgumentException("link " + id + " does not touch " + node);
  }
}
