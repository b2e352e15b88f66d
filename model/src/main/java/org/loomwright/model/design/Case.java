package org.loomwright.model.design;

import java.math.BigInteger;
import java.util.Map;
import org.loomwright.model.condition.Condition;

/**
 * Builds that all get the same treatment for the needs of one component. Needs that share no lead
 * and never compete for a slot, stud or capacity form components planned apart; the cases of each
 * component are disjoint and together cover every served build. A build therefore has one case per
 * component, and the number of cases grows with the sum, not the product, of the differences.
 *
 * @param id component letter and number, "A1" first
 * @param component component letter
 * @param topic what the component is about, in words, e.g. "heater feed"
 * @param words the builds in words
 * @param when the builds as a condition over traits
 * @param builds number of builds
 * @param share share of vehicles, 0 to 1
 * @param ways need id of this component to the id of the way that meets it
 */
public record Case(
    String id,
    String component,
    String topic,
    String words,
    Condition when,
    BigInteger builds,
    double share,
    Map<String, String> ways) {
  public Case {
    ways = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(ways));
  }
}
