package org.loomwright.model.vehicle;

import org.loomwright.model.quantity.Length;

/**
 * A point of the vehicle's plan view.
 *
 * @param along distance from the view's left edge, in the vehicle's own size
 * @param down distance from the view's top edge, in the vehicle's own size
 */
public record PlanSpot(Length along, Length down) {}
