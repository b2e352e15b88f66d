package org.loomwright.model.vehicle;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Temperature;

/**
 * A path between two places that a bundle can follow.
 *
 * @param id name used in references
 * @param from place at one end
 * @param to place at the other end
 * @param length length along the path
 * @param tolerance how far the true length may be off, either way
 * @param follows what the bundle is laid along, e.g. "the factory loom on the left sill"
 * @param alongLoom whether that is a factory loom; such runs are preferred
 * @param passes what it passes through, e.g. "grommet behind the step well"
 * @param holes holes it passes through whose size is known, in order from its first end
 * @param ambient highest temperature on the way, where hotter than the places at its ends
 * @param wet whether water reaches it between its ends
 * @param moving whether the bundle bends there in use, as at a hinge or between body and axle
 * @param near what it comes near to
 * @param bends points of the plan view it goes over, in order from its first end; for drawing
 * @param restraint whether it runs along restraint wiring; such runs are not used
 * @param highVoltage whether it runs along high-voltage wiring; such runs are not used
 * @param evidence how the length is known
 */
public record Run(
    String id,
    String from,
    String to,
    Length length,
    Length tolerance,
    String follows,
    boolean alongLoom,
    List<String> passes,
    List<Hole> holes,
    Optional<Temperature> ambient,
    boolean wet,
    boolean moving,
    List<Nearby> near,
    List<PlanSpot> bends,
    boolean restraint,
    boolean highVoltage,
    Optional<Evidence> evidence) {
  public Run {
    passes = List.copyOf(passes);
    holes = List.copyOf(holes);
    near = List.copyOf(near);
    bends = List.copyOf(bends);
    if (length.mm() <= 0) {
      throw new IllegalArgumentException("a run's length must be more than zero");
    }
  }
}
