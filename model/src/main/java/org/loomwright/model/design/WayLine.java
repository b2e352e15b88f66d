package org.loomwright.model.design;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.vehicle.Undo;

/**
 * One possible way to meet a need.
 *
 * @param id id used by wishes
 * @param need need
 * @param kind kind
 * @param words the way in words
 * @param when builds on which it can be used
 * @param builds number of those builds
 * @param cost what it costs, in the rules' currency
 * @param undo how it can be taken back
 * @param uses what it uses up: cavities, slots, studs, capacity
 * @param forbidden reason why it is not allowed
 * @param cases cases that use it
 */
public record WayLine(
    String id,
    String need,
    WayKind kind,
    String words,
    Condition when,
    BigInteger builds,
    double cost,
    Undo undo,
    List<String> uses,
    Optional<String> forbidden,
    List<String> cases) {
  public WayLine {
    uses = List.copyOf(uses);
    cases = List.copyOf(cases);
  }
}
