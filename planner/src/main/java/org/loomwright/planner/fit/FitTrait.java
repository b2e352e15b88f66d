package org.loomwright.planner.fit;

import java.util.List;
import org.loomwright.model.vehicle.TellHow;

/**
 * A trait that the shop has to find out, because it shows only once the vehicle is opened or
 * measured, or matters only together with something that does.
 *
 * @param id trait id
 * @param name name of the trait
 * @param how how it is told
 * @param question what to look at, measure or ask
 * @param place name of the place where it is told
 * @param openings names of what has to be opened for it, outermost first
 * @param minutes time it takes, openings included
 */
public record FitTrait(
    String id,
    String name,
    TellHow how,
    String question,
    String place,
    List<String> openings,
    double minutes) {
  public FitTrait {
    openings = List.copyOf(openings);
  }
}
