package org.loomwright.planner.impact;

import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;

/**
 * A release of a kit as it went out: what it was made of, and the plan of that.
 *
 * @param number its number
 * @param order the kit with the documents it was made of
 * @param plan their plan, whose leads and guide are with the people who have the kit
 */
public record Released(long number, KitOrder order, Plan plan) {}
