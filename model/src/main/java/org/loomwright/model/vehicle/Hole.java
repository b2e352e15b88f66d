package org.loomwright.model.vehicle;

import java.util.Optional;
import org.loomwright.model.quantity.Length;

/**
 * A hole that a run passes through.
 *
 * @param name name for people, e.g. "floor hole beside the trough"
 * @param diameter diameter of the bare hole, or of the largest circle in it
 * @param bore largest bundle its factory grommet takes; absent where it has none
 * @param taken diameter of what already runs through it; absent when it is free
 */
public record Hole(String name, Length diameter, Optional<Length> bore, Optional<Length> taken) {}
