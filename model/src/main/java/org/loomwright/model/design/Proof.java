package org.loomwright.model.design;

import java.math.BigInteger;
import java.util.List;

/**
 * Result of walking every possible build through the guide.
 *
 * @param proven whether every obligation was shown
 * @param builds builds covered
 * @param obligations obligations with verdicts
 * @param leaves ends of the guide
 * @param counterexamples smallest counterexample of each obligation that failed
 */
public record Proof(
    boolean proven,
    BigInteger builds,
    List<Obligation> obligations,
    List<Leaf> leaves,
    List<Counterexample> counterexamples) {
  public Proof {
    obligations = List.copyOf(obligations);
    leaves = List.copyOf(leaves);
    counterexamples = List.copyOf(counterexamples);
  }
}
