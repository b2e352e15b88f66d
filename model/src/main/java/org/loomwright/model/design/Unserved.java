package org.loomwright.model.design;

import java.math.BigInteger;
import java.util.List;
import org.loomwright.model.condition.Condition;

/**
 * Builds for which no set of ways meets all needs.
 *
 * @param words the builds in words
 * @param when the builds as a condition
 * @param builds number of builds
 * @param needs smallest set of needs that can't be met together
 * @param reason why, in words
 */
public record Unserved(
    String words, Condition when, BigInteger builds, List<String> needs, String reason) {
  public Unserved {
    needs = List.copyOf(needs);
  }
}
