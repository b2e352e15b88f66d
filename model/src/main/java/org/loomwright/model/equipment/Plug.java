package org.loomwright.model.equipment;

import java.util.List;
import java.util.Optional;

/**
 * A plug of the equipment.
 *
 * @param id name used in references
 * @param name name for people
 * @param matesWith housing part, on the harness side, that it mates with
 * @param plating plating of the equipment's own pins, e.g. "tin"
 * @param pins pins
 */
public record Plug(
    String id, String name, String matesWith, Optional<String> plating, List<Pin> pins) {
  public Plug {
    pins = List.copyOf(pins);
  }
}
