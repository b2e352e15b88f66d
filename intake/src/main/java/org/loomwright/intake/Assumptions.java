package org.loomwright.intake;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Spot;

/**
 * What holds for all rows of a paste and stands in none of them.
 *
 * @param presentWhen builds that have the circuits of the table; "never" for the table of a
 *     better-equipped build; not "unknown", as nothing could ask for it
 * @param farEnd where wires go of which the table says nothing; empty keeps those as notes
 * @param housings housings of other connectors that the table may name as ends
 */
public record Assumptions(Condition presentWhen, Optional<Spot> farEnd, List<Housing> housings) {
  public Assumptions {
    housings = List.copyOf(housings);
    if (presentWhen.isUnknown()) {
      throw new IllegalArgumentException(
          "the builds that have pasted circuits can't be 'unknown'; write 'always', 'never' or a"
              + " condition");
    }
  }

  /** The circuits are on every build, and nothing is known beside the table. */
  public static Assumptions usual() {
    return new Assumptions(Condition.always(), Optional.empty(), List.of());
  }
}
