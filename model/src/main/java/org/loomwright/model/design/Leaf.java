package org.loomwright.model.design;

import java.math.BigInteger;
import java.util.List;

/**
 * One end of the guide with the builds that reach it.
 *
 * @param step last step
 * @param cases cases those builds can have, one or more per component
 * @param words builds in words
 * @param builds number of builds
 */
public record Leaf(String step, List<String> cases, String words, BigInteger builds) {
  public Leaf {
    cases = List.copyOf(cases);
  }
}
