package org.loomwright.intake;

import java.util.Optional;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;

/** What an accepted row becomes. Evidence is added when it is accepted. */
public sealed interface Outcome {
  /**
   * A circuit that ends in the cavity.
   *
   * @param circuit the circuit; with evidence as on file, if it is
   * @param isNew whether it is added, with an id made unique then, or put in place of that on file
   * @param note what of the row has no field of its own
   * @param before what is on file and will be replaced, in words
   */
  record OfCircuit(Circuit circuit, boolean isNew, Optional<String> note, Optional<String> before)
      implements Outcome {}

  /**
   * A fact on the cavity.
   *
   * @param fact the fact; with evidence as on file, if it is
   * @param note what of the row has no field of its own
   */
  record OfFact(CavityFact fact, Optional<String> note) implements Outcome {}
}
