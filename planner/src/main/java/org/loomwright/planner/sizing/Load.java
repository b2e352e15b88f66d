package org.loomwright.planner.sizing;

import java.util.Collection;
import org.loomwright.model.equipment.Need;

/**
 * What a lead carries.
 *
 * @param continuousA most current without end
 * @param peakA highest current, 0 when there is no peak
 * @param peakTimeS how long the peak lasts
 */
public record Load(double continuousA, double peakA, double peakTimeS) {
  /** No load. */
  public static final Load NONE = new Load(0, 0, 0);

  /** Whether there is a peak: a current above nothing for a time above nothing. */
  public boolean hasPeak() {
    return peakA > 0 && peakTimeS > 0;
  }

  /** Load of one need. */
  public static Load of(Need need) {
    return new Load(
        need.continuous().amperes(),
        need.peak().map(peak -> peak.amperes()).orElse(0.0),
        need.peakTime().map(time -> time.seconds()).orElse(0.0));
  }

  /**
   * Loads of several needs at once: all run without end, and the worst peak comes on top of the
   * others' continuous current, for the longest peak time.
   */
  public static Load together(Collection<Need> needs) {
    double sum = needs.stream().mapToDouble(need -> need.continuous().amperes()).sum();
    double peakA = 0;
    double peakTimeS = 0;
    for (Need need : needs) {
      Load own = of(need);
      if (own.peakA() > 0) {
        peakA = Math.max(peakA, sum - own.continuousA() + own.peakA());
        peakTimeS = Math.max(peakTimeS, own.peakTimeS());
      }
    }
    return new Load(sum, peakA, peakTimeS);
  }
}
