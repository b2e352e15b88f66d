package org.loomwright.model.parts;

import org.loomwright.model.quantity.Current;
import org.loomwright.model.quantity.Temperature;
import org.loomwright.model.quantity.WireSize;

/**
 * One point of a terminal's current table. A point of 0 A says at which ambient temperature the
 * curve of that wire ends.
 *
 * @param size conductor size; holds for thicker ones too
 * @param ambient ambient temperature
 * @param current most continuous current with this wire at this ambient temperature
 */
public record CurrentLimit(WireSize size, Temperature ambient, Current current) {}
