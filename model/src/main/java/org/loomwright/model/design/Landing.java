package org.loomwright.model.design;

import java.util.Optional;

/** How and where a lead ends. */
public sealed interface Landing {
  /**
   * In a cavity of a connector of the vehicle.
   *
   * @param pullPlug cavity plug to pull first
   */
  record InCavity(
      String connector, String cavity, String terminal, Optional<String> seal, boolean pullPlug)
      implements Landing {}

  /** In a cavity of a housing that the kit brings; filled on the bench. */
  record InHousing(String housing, String cavity, String terminal, Optional<String> seal)
      implements Landing {}

  /** On the load blade of a fuse slot. */
  record InSlot(String block, String slot, String terminal) implements Landing {}

  /** On a ground stud. */
  record OnGround(String ground, String ring) implements Landing {}

  /** Spliced into a factory circuit at a place. */
  record IntoCircuit(String circuit, String place, String splice) implements Landing {}

  /** In a joint of added leads; made on the bench. */
  record InJoint(String joint, String splice) implements Landing {}

  /** Capped, labelled and taped back; never live. Loose ends of own leads are made so. */
  record Parked(String place, String cap) implements Landing {}
}
