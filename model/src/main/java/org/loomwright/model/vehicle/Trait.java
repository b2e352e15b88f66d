package org.loomwright.model.vehicle;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.Evidence;

/**
 * One way in which builds of a vehicle differ.
 *
 * @param id name used in conditions
 * @param name name for people
 * @param values two or more values, exactly one of which each build has
 * @param tell how to tell the values apart
 * @param evidence how the trait is known
 */
public record Trait(
    String id, String name, List<TraitValue> values, Tell tell, Optional<Evidence> evidence) {
  public Trait {
    values = List.copyOf(values);
    if (values.size() < 2) {
      throw new IllegalArgumentException(
          "a trait needs two or more values; '" + id + "' has " + values.size());
    }
  }

  /** The condition that this trait has the given value. */
  public Condition is(String value) {
    return Condition.is(id, value);
  }
}
