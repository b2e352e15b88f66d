package org.loomwright.model.design;

import java.util.List;
import org.loomwright.model.vehicle.TellHow;

/**
 * A question about one trait.
 *
 * @param trait trait
 * @param how kind of observation
 * @param answers possible answers
 */
public record Ask(String trait, TellHow how, List<Answer> answers) {
  public Ask {
    answers = List.copyOf(answers);
  }
}
