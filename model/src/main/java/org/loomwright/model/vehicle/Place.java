package org.loomwright.model.vehicle;

import java.util.Optional;
import org.loomwright.model.quantity.Temperature;

/**
 * A spot in the vehicle where something is landed or worked on.
 *
 * @param id name used in references
 * @param name name for people
 * @param ambient highest temperature of the air around a bundle there
 * @param wet whether water reaches it
 * @param engineBay whether the stricter loading limits of an engine bay apply
 * @param underneath whether it is reached from below, so that the vehicle has to be supported
 * @param at where it is in the vehicle's plan view; absent when nobody has marked it
 */
public record Place(
    String id,
    String name,
    Temperature ambient,
    boolean wet,
    boolean engineBay,
    boolean underneath,
    Optional<PlanSpot> at) {
  /** One that is not reached from below. */
  public Place(
      String id,
      String name,
      Temperature ambient,
      boolean wet,
      boolean engineBay,
      Optional<PlanSpot> at) {
    this(id, name, ambient, wet, engineBay, false, at);
  }
}
