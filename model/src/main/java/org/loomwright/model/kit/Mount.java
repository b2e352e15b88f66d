package org.loomwright.model.kit;

import java.util.Optional;

/**
 * Where one plug of the equipment meets the vehicle.
 *
 * @param equipment equipment document
 * @param plug plug of it
 * @param connector connector of the vehicle it plugs into; the kit supplies its housing on builds
 *     where the connector is absent
 * @param place place of a housing that only the kit brings; exactly one of connector and place
 */
public record Mount(
    String equipment, String plug, Optional<String> connector, Optional<String> place) {
  public Mount {
    if (connector.isPresent() == place.isPresent()) {
      throw new IllegalArgumentException("a mount names either a connector or a place");
    }
  }
}
