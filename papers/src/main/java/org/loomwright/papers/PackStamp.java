package org.loomwright.papers;

import java.util.Optional;

/**
 * What a pack says of its kit beyond the plan.
 *
 * @param release number of the release that the fitting guide names; absent for a kit that is not
 *     released
 * @param verifiedOn number of vehicles the kit was fitted to by this guide and signed for, told in
 *     the fit check
 */
public record PackStamp(Optional<Integer> release, int verifiedOn) {
  /** Of a kit that is neither released nor fitted. */
  public static PackStamp none() {
    return new PackStamp(Optional.empty(), 0);
  }
}
