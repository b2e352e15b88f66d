package org.loomwright.model.vehicle;

import java.util.Optional;
import org.loomwright.model.quantity.Percent;

/**
 * One value of a trait.
 *
 * @param id name used in conditions
 * @param words the value as the owner would say it, a clause such as "prepared for towing"
 * @param share how common it is among vehicles seen
 * @param counted vehicles of jobs and findings that had it and that the share takes in already;
 *     absent for none
 */
public record TraitValue(
    String id, String words, Optional<Percent> share, Optional<Integer> counted) {
  /** One whose share takes in no vehicle of jobs and findings. */
  public TraitValue(String id, String words, Optional<Percent> share) {
    this(id, words, share, Optional.empty());
  }
}
