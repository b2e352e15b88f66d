package org.loomwright.planner.kit;

import org.loomwright.model.quantity.Percent;
import org.loomwright.model.rules.Sourced;
import org.loomwright.planner.need.NeedAt;

/**
 * What a need that gets added leads loses on its feed or ground in one of its cases.
 *
 * @param need a supply or a ground
 * @param caseId the case
 * @param dropV most voltage lost in any state of the networks, V: from bus bar to pin, or from pin
 *     to the battery's negative post
 * @param limitV most that may be lost, V
 * @param limit the rule the limit comes from
 */
public record NeedDrop(
    NeedAt need, String caseId, double dropV, double limitV, Sourced<Percent> limit) {}
