package org.loomwright.model.document;

import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.vehicle.Vehicle;

/**
 * One document of a workspace. Documents name each other by {@link #id()}; a kit also names the
 * revisions it was designed against.
 */
public sealed interface Document permits Vehicle, Equipment, Kit, Parts, Rules {
  /** Short name used by references, unique among documents of one kind. */
  String id();

  /** Name for people. */
  String name();

  /** Revision as the shop writes it, e.g. "3" or "B". */
  String revision();
}
