package org.loomwright.model.equipment;

import java.util.Optional;

/**
 * One pin of a plug.
 *
 * @param cavity number as moulded on the housing
 * @param name what it is for
 * @param need what it needs; absent for pins that are not used
 */
public record Pin(String cavity, String name, Optional<Need> need) {}
