package org.loomwright.model.design;

import java.math.BigInteger;

/**
 * One end of the guide with the builds that reach it.
 *
 * @param step last step
 * @param caseId case
 * @param words builds in words
 * @param builds number of builds
 */
public record Leaf(String step, String caseId, String words, BigInteger builds) {}
