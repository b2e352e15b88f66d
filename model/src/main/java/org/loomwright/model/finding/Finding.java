package org.loomwright.model.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.document.Document;
import org.loomwright.model.evidence.How;

/**
 * Something seen on a real vehicle that the records did not say, comebacks included.
 *
 * @param id name used in addresses and references
 * @param name a few words that tell it from others in a list
 * @param revision revision as the shop writes it
 * @param vehicle vehicle document it was seen on
 * @param at what of the vehicle it concerns
 * @param seen what it was, as exact as the next reader needs it
 * @param expected what stands on file about it
 * @param how what it rests on
 * @param when day it was seen, such as 2026-03-04
 * @param by whom to ask about it
 * @param vehicleNote which vehicle it was, as the shop writes it: end of the serial number, plate
 * @param job job during which it was seen
 * @param kit of a comeback, or seen during a job: the kit that was fitted
 * @param lead the lead of that kit it is about, as its papers name it
 * @param step the step of that kit's guide it is about, by its id
 * @param traits trait to the value that vehicle has, as far as it was looked at
 * @param photos photos taken on the vehicle
 * @param state what became of it
 * @param outcome what was done about it, or why nothing was; needed unless it is open
 * @param takenInto revision of the vehicle, as that document writes it, that holds it first
 */
public record Finding(
    String id,
    String name,
    String revision,
    String vehicle,
    Optional<FoundAt> at,
    String seen,
    Optional<String> expected,
    How how,
    String when,
    String by,
    Optional<String> vehicleNote,
    Optional<String> job,
    Optional<String> kit,
    Optional<String> lead,
    Optional<String> step,
    Map<String, String> traits,
    List<FindingPhoto> photos,
    FindingState state,
    Optional<String> outcome,
    Optional<String> takenInto)
    implements Document {
  public Finding {
    traits = Collections.unmodifiableMap(new LinkedHashMap<>(traits));
    photos = List.copyOf(photos);
  }

  /** Whether nobody has decided yet what follows from it. */
  public boolean isOpen() {
    return state == FindingState.OPEN;
  }
}
