package org.loomwright.model.design;

import java.math.BigInteger;
import java.util.List;
import org.loomwright.model.condition.Condition;

/**
 * What some builds have of one need.
 *
 * @param status status
 * @param when builds concerned
 * @param words the builds in words
 * @param builds number of builds
 * @param reason why, with the facts it rests on
 * @param evidence evidence of those facts, in words
 */
public record GapPart(
    GapStatus status,
    Condition when,
    String words,
    BigInteger builds,
    String reason,
    List<String> evidence) {
  public GapPart {
    evidence = List.copyOf(evidence);
  }
}
