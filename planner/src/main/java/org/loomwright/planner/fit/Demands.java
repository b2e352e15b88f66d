package org.loomwright.planner.fit;

import java.util.List;
import org.loomwright.planner.builds.Diagram;

/**
 * What the equipment asks for beside wires, of one kind: modules, or coding.
 *
 * @param whole outcome 0 where nothing is needed, 1 where something is
 * @param each each demand
 */
public record Demands(Diagram<Left> whole, List<Demanded> each) {
  /**
   * One demand.
   *
   * @param words what is needed, with the equipment that needs it
   * @param evidence how and when this was found out, and what was seen; empty when nothing is
   *     recorded
   * @param needed outcome 0 where it is there already or not needed, 1 where it is needed
   */
  public record Demanded(String words, String evidence, Diagram<Left> needed) {}

  public Demands {
    each = List.copyOf(each);
  }
}
