package org.loomwright.model.design;

import java.math.BigInteger;
import java.util.Map;
import org.loomwright.model.condition.Condition;

/**
 * Builds that all get the same treatment.
 *
 * @param id letter, "A" first
 * @param words the builds in words
 * @param when the builds as a condition over traits
 * @param builds number of builds
 * @param share share of vehicles, 0 to 1
 * @param ways need id to the id of the way that meets it
 * @param partNumber part number sold to it
 */
public record Case(
    String id,
    String words,
    Condition when,
    BigInteger builds,
    double share,
    Map<String, String> ways,
    String partNumber) {
  public Case {
    ways = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(ways));
  }
}
