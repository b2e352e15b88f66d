package org.loomwright.model.job;

import java.util.Optional;

/**
 * A value taken on the vehicle. It says for itself what it is, so that it can be read without the
 * guide.
 *
 * @param reading id of the reading in the guide
 * @param name what was read
 * @param value the value as people write it, with its unit, such as "12.6 V"; "yes" or "no" for a
 *     function; words for stored faults
 * @param wanted where it had to lie, in words; absent where any value did
 */
public record Taken(String reading, String name, String value, Optional<String> wanted) {}
