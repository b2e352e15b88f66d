package org.loomwright.drawing.board;

import java.util.List;
import java.util.Optional;

/**
 * A harness as a tree with true lengths. Made anew, it is checked: names are unique, branches join
 * known nodes, the whole hangs together without a loop, junctions have two branches or more and
 * ends just one, lengths are more than 0, and marks lie on their branches. What is wrong is said in
 * an {@link IllegalArgumentException}, all of it at once.
 *
 * @param name what the harness is called
 * @param nodes junctions and ends
 * @param branches the bundles between nodes; at least one
 * @param splices splices on the branches
 * @param marks labels and tape on the branches
 */
public record BoardTree(
    String name, List<Node> nodes, List<Branch> branches, List<Splice> splices, List<Mark> marks) {

  public BoardTree {
    nodes = List.copyOf(nodes);
    branches = List.copyOf(branches);
    splices = List.copyOf(splices);
    marks = List.copyOf(marks);
    BoardTreeCheck.check(name, nodes, branches, splices, marks);
  }

  /** Where branches meet or end. */
  public sealed interface Node {
    /** Unique among the nodes. */
    String name();
  }

  /** Where branches meet. */
  public record Junction(String name) implements Node {}

  /**
   * Where one branch ends.
   *
   * @param kind what is there
   * @param widthMm width of the face or symbol as drawn, mm, more than 0
   * @param heightMm height of the face or symbol as drawn, mm, more than 0
   * @param tableWidthMm width of the table beside it, mm; 0 for none
   * @param tableHeightMm height of the table beside it, mm; 0 for none
   */
  public record End(
      String name,
      EndKind kind,
      double widthMm,
      double heightMm,
      double tableWidthMm,
      double tableHeightMm)
      implements Node {

    /** Whether room for a table is wanted. */
    public boolean hasTable() {
      return tableWidthMm > 0 && tableHeightMm > 0;
    }
  }

  /** What an end is. */
  public enum EndKind {
    CONNECTOR,
    STUD,
    OPEN
  }

  /**
   * A bundle between two nodes.
   *
   * @param from the node from which places on the branch are measured
   * @param to the other node
   * @param lengthMm true length, mm, more than 0
   * @param diameterMm diameter of the bundle, mm, more than 0
   */
  public record Branch(String name, String from, String to, double lengthMm, double diameterMm) {}

  /**
   * A splice in a branch.
   *
   * @param atMm from the branch's {@code from} node, mm
   */
  public record Splice(String name, String branch, double atMm) {}

  /**
   * A label or tape on a branch.
   *
   * @param atMm its middle from the branch's {@code from} node, mm
   * @param lengthMm how much of the branch it covers, mm, more than 0
   * @param text what the label says, or which tape
   */
  public record Mark(MarkKind kind, String branch, double atMm, double lengthMm, String text) {}

  /** What a mark is. */
  public enum MarkKind {
    LABEL,
    TAPE
  }

  /** The node of that name. */
  public Optional<Node> node(String wanted) {
    return nodes.stream().filter(node -> node.name().equals(wanted)).findFirst();
  }

  /** The branch of that name. */
  public Optional<Branch> branch(String wanted) {
    return branches.stream().filter(branch -> branch.name().equals(wanted)).findFirst();
  }
}
