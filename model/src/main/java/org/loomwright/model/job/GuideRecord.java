package org.loomwright.model.job;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a fitter brings back from a one-file guide: answers, values and steps done on one vehicle.
 *
 * @param kit kit document
 * @param revision revision of the kit, as that document writes it
 * @param release number of the release the guide was made from; absent when the kit was not
 *     released
 * @param vehicle vehicle document
 * @param guide fingerprint of the guide, 16 hexadecimal digits
 * @param vehicleNote which vehicle it is, as typed
 * @param serial serial number of the kit, as typed
 * @param partNumber part number of the kit, as typed
 * @param by who did the work, as typed
 * @param begun when the guide was begun
 * @param ended when it was finished or stopped; absent while under way
 * @param state how far it was followed
 * @param cases cases the answers led to
 * @param answers trait to value
 * @param taken reading to the value as typed: a plain number in the unit of its band, "yes" or
 *     "no", or words
 * @param measured trait to the number typed where measuring gave the answer
 * @param steps printed numbers of the steps done, in rising order
 * @param odd what did not look as the guide says
 */
public record GuideRecord(
    String kit,
    String revision,
    Optional<Integer> release,
    String vehicle,
    String guide,
    Optional<String> vehicleNote,
    Optional<String> serial,
    Optional<String> partNumber,
    Optional<String> by,
    Instant begun,
    Optional<Instant> ended,
    State state,
    List<String> cases,
    Map<String, String> answers,
    Map<String, String> taken,
    Map<String, String> measured,
    List<Integer> steps,
    List<Odd> odd) {

  /** How far the guide was followed. */
  public enum State {
    UNDER_WAY("under way"),
    FINISHED("finished"),
    STOPPED("stopped");

    private final String word;

    State(String word) {
      this.word = word;
    }

    /** The word in a record. */
    public String word() {
      return word;
    }
  }

  /**
   * Something that did not look as the guide says.
   *
   * @param step printed number of the step
   * @param words what was seen
   */
  public record Odd(int step, String words) {}

  public GuideRecord {
    cases = List.copyOf(cases);
    answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    taken = Collections.unmodifiableMap(new LinkedHashMap<>(taken));
    measured = Collections.unmodifiableMap(new LinkedHashMap<>(measured));
    steps = List.copyOf(steps);
    odd = List.copyOf(odd);
  }
}
