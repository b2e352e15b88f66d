package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.End;
import org.loomwright.drawing.board.BoardTree.Junction;
import org.loomwright.drawing.board.BoardTree.Mark;
import org.loomwright.drawing.board.BoardTree.Node;
import org.loomwright.drawing.board.BoardTree.Splice;

/** Says all that is wrong with a tree. */
final class BoardTreeCheck {
  private static final double LONGEST_MM = 1e6;

  private final List<String> faults = new ArrayList<>();
  private final Map<String, Node> nodes = new LinkedHashMap<>();
  private final Map<String, Branch> branches = new LinkedHashMap<>();

  private BoardTreeCheck() {}

  static void check(
      String name,
      List<Node> nodes,
      List<Branch> branches,
      List<Splice> splices,
      List<Mark> marks) {
    BoardTreeCheck check = new BoardTreeCheck();
    check.nodes(nodes);
    check.branches(branches);
    if (check.faults.isEmpty()) {
      check.shape();
    }
    check.marks(splices, marks);
    if (!check.faults.isEmpty()) {
      throw new IllegalArgumentException(
          "board tree \"" + name + "\": " + String.join("; ", check.faults));
    }
  }

  private void nodes(List<Node> given) {
    for (Node node : given) {
      if (node.name().isBlank()) {
        faults.add("a node has no name");
      }
      if (nodes.put(node.name(), node) != null) {
        faults.add("node " + node.name() + " is there twice; names must be unique");
      }
      if (node instanceof End end) {
        String what = "end " + end.name() + ": its ";
        positive(what + "width", end.widthMm());
        positive(what + "height", end.heightMm());
        notNegative(what + "table's width", end.tableWidthMm());
        notNegative(what + "table's height", end.tableHeightMm());
      }
    }
  }

  private void branches(List<Branch> given) {
    if (given.isEmpty()) {
      faults.add("there is no branch; at least one is needed");
    }
    for (Branch branch : given) {
      String what = "branch " + branch.name() + ": ";
      if (branch.name().isBlank()) {
        faults.add("a branch has no name");
      }
      if (branches.put(branch.name(), branch) != null) {
        faults.add("branch " + branch.name() + " is there twice; names must be unique");
      }
      for (String node : List.of(branch.from(), branch.to())) {
        if (!nodes.containsKey(node)) {
          faults.add(what + "there is no node " + node);
        }
      }
      if (branch.from().equals(branch.to())) {
        faults.add(what + "it begins and ends at " + branch.from());
      }
      positive(what + "its length", branch.lengthMm());
      positive(what + "its diameter", branch.diameterMm());
    }
  }

  /** Joins nodes branch by branch: a branch within what is joined already closes a loop. */
  private void shape() {
    Map<String, String> group = new HashMap<>();
    Map<String, Integer> count = new HashMap<>();
    for (Branch branch : branches.values()) {
      count.merge(branch.from(), 1, Integer::sum);
      count.merge(branch.to(), 1, Integer::sum);
      String from = head(group, branch.from());
      String to = head(group, branch.to());
      if (from.equals(to)) {
        faults.add(
            "not a tree: branch "
                + branch.name()
                + " closes a loop between "
                + branch.from()
                + " and "
                + branch.to());
      } else {
        group.put(to, from);
      }
    }
    Set<String> heads = new LinkedHashSet<>();
    nodes.keySet().forEach(node -> heads.add(head(group, node)));
    if (heads.size() > 1) {
      faults.add(
          "not one tree: no branch joins the parts that hold "
              + heads.stream().sorted().collect(Collectors.joining(", ")));
    }
    for (Node node : nodes.values()) {
      int found = count.getOrDefault(node.name(), 0);
      if (node instanceof End && found > 1) {
        faults.add("end " + node.name() + " has " + found + " branches; an end has just one");
      }
      if (node instanceof Junction && found == 1) {
        faults.add("junction " + node.name() + " has a single branch; make it an end");
      }
    }
  }

  private static String head(Map<String, String> group, String node) {
    String at = node;
    while (true) {
      String next = group.get(at);
      if (next == null) {
        return at;
      }
      at = next;
    }
  }

  private void marks(List<Splice> splices, List<Mark> marks) {
    Set<String> names = new LinkedHashSet<>();
    for (Splice splice : splices) {
      if (!names.add(splice.name())) {
        faults.add("splice " + splice.name() + " is there twice; names must be unique");
      }
      on("splice " + splice.name(), splice.branch(), splice.atMm(), 0);
    }
    for (Mark mark : marks) {
      String what = mark.kind().name().toLowerCase(Locale.ROOT) + " \"" + mark.text() + "\"";
      positive(what + ": its length", mark.lengthMm());
      on(what, mark.branch(), mark.atMm(), mark.lengthMm() / 2);
    }
  }

  private void on(String what, String name, double atMm, double halfMm) {
    Branch branch = branches.get(name);
    if (branch == null) {
      faults.add(what + ": there is no branch " + name);
    } else if (!(atMm - halfMm >= 0 && atMm + halfMm <= branch.lengthMm())) {
      faults.add(
          what
              + " at "
              + atMm
              + " mm does not lie on branch "
              + name
              + ", which is "
              + branch.lengthMm()
              + " mm long");
    }
  }

  private void positive(String what, double value) {
    if (!(value > 0 && value <= LONGEST_MM)) {
      faults.add(what + " is " + value + " mm; it must be more than 0 and at most a kilometre");
    }
  }

  private void notNegative(String what, double value) {
    if (!(value >= 0 && value <= LONGEST_MM)) {
      faults.add(what + " is " + value + " mm; it must be 0 or more");
    }
  }
}
