package org.loomwright.model.vehicle;

import org.loomwright.model.quantity.Length;

/**
 * What a run comes near to.
 *
 * @param what the hazard
 * @param distance free distance between the bundle's surface and it, where it is least
 */
public record Nearby(Hazard what, Length distance) {}
