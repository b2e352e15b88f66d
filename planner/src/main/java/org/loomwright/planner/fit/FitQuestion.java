package org.loomwright.planner.fit;

import java.util.List;
import java.util.Set;
import org.loomwright.model.vehicle.TellHow;

/**
 * A question that can be answered without opening the vehicle.
 *
 * @param id trait id
 * @param name name of the trait
 * @param text the question in full
 * @param how asked of the owner, or looked at
 * @param place name of the place where one looks
 * @param options the possible answers, in document order
 * @param decides what the answer helps to decide
 */
public record FitQuestion(
    String id,
    String name,
    String text,
    TellHow how,
    String place,
    List<Option> options,
    Set<Topic> decides) {
  /**
   * A possible answer.
   *
   * @param value value id
   * @param words the value as the owner would say it
   * @param expect what is seen then; empty when nothing is recorded
   * @param share how common it is, 0 to 1; the options of a question add up to 1
   */
  public record Option(String value, String words, String expect, double share) {}

  public FitQuestion {
    options = List.copyOf(options);
    decides =
        java.util.Collections.unmodifiableSet(
            decides.isEmpty()
                ? java.util.EnumSet.noneOf(Topic.class)
                : java.util.EnumSet.copyOf(decides));
  }
}
