package org.loomwright.planner.fit;

import java.util.List;
import java.util.Optional;
import org.loomwright.planner.builds.Diagram;

/**
 * Whether the wiring fits.
 *
 * @param whole outcome {@link #PROVEN}, {@link #REFUSED} or {@link #NOT_PROVEN}
 * @param refusals why the kit can't serve some builds
 * @param held why nothing is promised for any build: a clause such as "its instructions are not
 *     proven"; empty when the kit stands
 */
public record Wiring(Diagram<Left> whole, List<Refusal> refusals, Optional<String> held) {
  /** The kit and its instructions are proven for the build. */
  public static final int PROVEN = 0;

  /** There is no way to meet all needs on the build. */
  public static final int REFUSED = 1;

  /** There are ways, but the kit is not proven. */
  public static final int NOT_PROVEN = 2;

  /**
   * Builds that are not served.
   *
   * @param builds the builds in words
   * @param needs names of the pins whose needs can't be met together
   * @param reason why, in full, for the shop
   * @param concerned outcome 1 on these builds, 0 on the others
   */
  public record Refusal(String builds, List<String> needs, String reason, Diagram<Left> concerned) {
    public Refusal {
      needs = List.copyOf(needs);
    }
  }

  public Wiring {
    refusals = List.copyOf(refusals);
  }
}
