package org.loomwright.model.equipment;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.quantity.WireSize;

/**
 * What one pin needs to work.
 *
 * @param kind supply, ground or signal
 * @param feed supply kind by DIN 72552 or signal name; required for supplies and signals
 * @param continuous most current drawn or returned without end, anywhere in the supply range
 * @param draws how the current depends on the voltage; absent means the same at any voltage. A
 *     resistance draws {@code continuous} at the highest supply, a power at the lowest voltage it
 *     works at
 * @param returnsBy pin ("PLUG PIN") of the ground the current returns through; absent means the
 *     ground of the plug that returns most, or else that of the equipment
 * @param peak highest current
 * @param peakTime how long the peak lasts; required with a peak
 * @param duty share of time the load is on; absent means always
 * @param minimumVoltage lowest voltage at the pin at which the equipment works
 * @param ownFuse whether it must have a fuse of its own
 * @param fuseAtMost largest fuse it may be behind
 * @param leastArea smallest conductor a standard or the maker of the equipment asks for
 * @param shareWith pins ("PLUG PIN") with which it may share one feed
 * @param apartFrom pins ("PLUG PIN") whose leads must not be joined with its own
 * @param standard where {@code leastArea}, {@code fuseAtMost} and {@code apartFrom} come from
 */
public record Need(
    NeedKind kind,
    Optional<String> feed,
    Current continuous,
    Optional<LoadForm> draws,
    Optional<String> returnsBy,
    Optional<Current> peak,
    Optional<TimeSpan> peakTime,
    Optional<Percent> duty,
    Optional<Voltage> minimumVoltage,
    boolean ownFuse,
    Optional<Current> fuseAtMost,
    Optional<WireSize> leastArea,
    List<String> shareWith,
    List<String> apartFrom,
    Optional<String> standard) {
  public Need {
    shareWith = List.copyOf(shareWith);
    apartFrom = List.copyOf(apartFrom);
  }
}
