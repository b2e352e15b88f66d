package org.loomwright.model.design;

import java.util.List;
import org.loomwright.model.vehicle.View;

/**
 * A face shown beside a step.
 *
 * @param owner connector or block id of the vehicle, or id of a supplied housing
 * @param housing housing part
 * @param cavities cavities in question
 * @param view view the fitter has
 */
public record Shown(String owner, String housing, List<String> cavities, View view) {
  public Shown {
    cavities = List.copyOf(cavities);
  }
}
