package org.loomwright.model.equipment;

import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.Evidence;

/**
 * Something the equipment asks for beside wires: a module, or coding of a control unit.
 *
 * @param what what is needed, in words
 * @param metWhen builds on which it is there already or not needed
 * @param evidence how this is known
 */
public record Demand(String what, Condition metWhen, Optional<Evidence> evidence) {}
