package org.loomwright.model.vehicle;

import java.util.Optional;
import org.loomwright.model.quantity.Length;

/**
 * The vehicle seen from above, its front at the left, as the ground on which runs are drawn.
 *
 * @param picture picture that fills the view; absent for none
 * @param along length of the view, from its left edge to its right edge, in the vehicle's own size
 * @param down height of the view, from its top edge to its bottom edge, in the vehicle's own size
 */
public record PlanView(Optional<PlanPicture> picture, Length along, Length down) {}
