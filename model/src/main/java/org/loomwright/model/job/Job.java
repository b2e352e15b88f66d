package org.loomwright.model.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.document.Document;

/**
 * One vehicle on one day: the kit that goes into it, what was answered, done, measured and left as
 * fitted.
 *
 * @param id name used in addresses and references
 * @param name a few words that tell it from others in a list
 * @param revision revision as the shop writes it
 * @param kit kit document
 * @param release number of the release of the kit that is fitted; absent before one was chosen
 * @param vehicle vehicle document
 * @param vehicleNote which vehicle it is: end of the serial number, plate
 * @param owner whose vehicle it is, as far as the shop writes that down
 * @param when day of the work, such as 2026-03-04
 * @param by who does it
 * @param state how far it has come
 * @param partNumber part number that is fitted
 * @param serial serial number of that kit
 * @param guide fingerprint of the guide that is followed
 * @param answers trait to the value found on this vehicle
 * @param done ids of the steps done, in their order
 * @param taken values taken
 * @param deviations what was otherwise than the guide says
 * @param photos photos
 * @param signOff who answers for the work
 */
public record Job(
    String id,
    String name,
    String revision,
    String kit,
    Optional<Integer> release,
    String vehicle,
    String vehicleNote,
    Optional<String> owner,
    String when,
    String by,
    JobState state,
    Optional<String> partNumber,
    Optional<String> serial,
    Optional<String> guide,
    Map<String, String> answers,
    List<String> done,
    List<Taken> taken,
    List<Deviation> deviations,
    List<JobPhoto> photos,
    Optional<SignOff> signOff)
    implements Document {
  public Job {
    answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    done = List.copyOf(done);
    taken = List.copyOf(taken);
    deviations = List.copyOf(deviations);
    photos = List.copyOf(photos);
  }

  /** The value of a reading, as written down. */
  public Optional<Taken> taken(String reading) {
    return taken.stream().filter(it -> it.reading().equals(reading)).findFirst();
  }

  /** Whether nothing more is done: signed off, or given up. */
  public boolean isOver() {
    return state == JobState.SIGNED_OFF || state == JobState.GIVEN_UP;
  }
}
