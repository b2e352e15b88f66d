package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.Splice;

/**
 * Distances between splices and what is near them, measured along the harness.
 *
 * <p>A splice stays 40 mm away from another splice, a branch or a connector (makers' service
 * texts), and neighbours in one bundle are staggered by 50 mm (makers' service texts), which is the
 * stricter of the two and so counts for them.
 */
public final class SpliceSpacing {
  /** Least distance to another splice, a junction or an end, mm. */
  public static final double APART_MM = 40;

  /** Least distance to the next splice of the same branch, mm. */
  public static final double STAGGER_MM = 50;

  private SpliceSpacing() {}

  /**
   * A splice too near to something.
   *
   * @param splice the splice
   * @param other the node or splice that it is too near to
   * @param distanceMm along the harness, mm
   * @param limitMm least distance, mm
   */
  public record Fault(String splice, String other, double distanceMm, double limitMm) {}

  /** All splices that are too near to something, worst first. */
  public static List<Fault> check(BoardTree tree) {
    return check(tree, APART_MM, STAGGER_MM);
  }

  /**
   * All splices that are too near to something, worst first.
   *
   * @param apartMm least distance to another splice, a junction or an end, mm
   * @param staggerMm least distance to the next splice of the same branch, mm
   */
  public static List<Fault> check(BoardTree tree, double apartMm, double staggerMm) {
    List<Fault> faults = new ArrayList<>();
    TreeDistances distances = TreeDistances.of(tree);
    List<Splice> splices = tree.splices();
    for (int i = 0; i < splices.size(); i++) {
      Splice splice = splices.get(i);
      Branch branch = tree.branch(splice.branch()).orElseThrow();
      add(faults, splice.name(), branch.from(), splice.atMm(), apartMm);
      add(faults, splice.name(), branch.to(), branch.lengthMm() - splice.atMm(), apartMm);
      for (Splice other : splices.subList(i + 1, splices.size())) {
        if (other.branch().equals(splice.branch())) {
          double apart = Math.abs(other.atMm() - splice.atMm());
          add(faults, splice.name(), other.name(), apart, staggerMm);
        } else {
          Branch second = tree.branch(other.branch()).orElseThrow();
          double apart = distances.betweenMm(branch, splice.atMm(), second, other.atMm());
          add(faults, splice.name(), other.name(), apart, apartMm);
        }
      }
    }
    faults.sort(Comparator.comparingDouble((Fault fault) -> fault.distanceMm - fault.limitMm));
    return List.copyOf(faults);
  }

  private static void add(
      List<Fault> faults, String splice, String other, double distanceMm, double limitMm) {
    if (distanceMm < limitMm) {
      faults.add(new Fault(splice, other, distanceMm, limitMm));
    }
  }
}
