package org.loomwright.model.vehicle;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Resistance;

/**
 * A ground stud.
 *
 * @param id name used in references
 * @param name name for people
 * @param place where it is
 * @param openings what must be open to reach it
 * @param thread thread, e.g. "M6"
 * @param lugs lugs already there
 * @param lugsMost most lugs it may carry
 * @param limit most current it may carry
 * @param baseLoad most current that factory loads return through it
 * @param resistance resistance from the stud back to the battery's negative post, by body or cable
 * @param sensor whether it serves sensors; no added load may use it then
 * @param prepare how the contact is prepared
 * @param evidence how this is known
 */
public record GroundStud(
    String id,
    String name,
    String place,
    List<String> openings,
    String thread,
    int lugs,
    int lugsMost,
    Current limit,
    Current baseLoad,
    Optional<Resistance> resistance,
    boolean sensor,
    String prepare,
    Optional<Evidence> evidence) {
  public GroundStud {
    openings = List.copyOf(openings);
    if (lugs < 0 || lugsMost < lugs) {
      throw new IllegalArgumentException(
          "lugs must be 0 or more and at most lugsMost; got " + lugs + " of " + lugsMost);
    }
  }
}
