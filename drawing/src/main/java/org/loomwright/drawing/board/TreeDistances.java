package org.loomwright.drawing.board;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.drawing.board.BoardTree.Branch;

/**
 * Distances between nodes along a tree.
 *
 * @param fromTo distance by node and node, mm
 */
record TreeDistances(Map<String, Map<String, Double>> fromTo) {

  static TreeDistances of(BoardTree tree) {
    Map<String, List<Branch>> beside = new LinkedHashMap<>();
    for (Branch branch : tree.branches()) {
      beside.computeIfAbsent(branch.from(), any -> new ArrayList<>()).add(branch);
      beside.computeIfAbsent(branch.to(), any -> new ArrayList<>()).add(branch);
    }
    Map<String, Map<String, Double>> all = new LinkedHashMap<>();
    for (String start : beside.keySet()) {
      Map<String, Double> reached = new HashMap<>();
      Deque<String> open = new ArrayDeque<>();
      reached.put(start, 0.0);
      open.add(start);
      while (!open.isEmpty()) {
        String at = open.remove();
        double soFar = reached.getOrDefault(at, 0.0);
        for (Branch branch : beside.getOrDefault(at, List.of())) {
          String next = branch.from().equals(at) ? branch.to() : branch.from();
          if (reached.putIfAbsent(next, soFar + branch.lengthMm()) == null) {
            open.add(next);
          }
        }
      }
      all.put(start, reached);
    }
    return new TreeDistances(all);
  }

  /** Along the tree between places on two branches that are not the same, mm. */
  double betweenMm(Branch first, double firstMm, Branch second, double secondMm) {
    double least = Double.POSITIVE_INFINITY;
    for (boolean firstStart : new boolean[] {true, false}) {
      for (boolean secondStart : new boolean[] {true, false}) {
        double apart =
            (firstStart ? firstMm : first.lengthMm() - firstMm)
                + nodesMm(
                    firstStart ? first.from() : first.to(),
                    secondStart ? second.from() : second.to())
                + (secondStart ? secondMm : second.lengthMm() - secondMm);
        least = Math.min(least, apart);
      }
    }
    return least;
  }

  private double nodesMm(String one, String other) {
    return fromTo.getOrDefault(one, Map.of()).getOrDefault(other, Double.POSITIVE_INFINITY);
  }
}
