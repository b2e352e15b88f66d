package org.loomwright.planner.guide;

import java.util.List;

/**
 * A caution and what calls for it. It is said once on every build that comes to a step which does,
 * directly before the first of them. Nothing switches it off: no wish and no rule of the shop.
 *
 * @param id its step is "caution/ID"
 * @param title what it is about
 * @param text what to do; {@link CautionTable#WAIT} stands for the maker's waiting time
 * @param causes what of a step calls for it, any of them
 */
record CautionRule(String id, String title, String text, List<CautionCause> causes) {
  CautionRule {
    causes = List.copyOf(causes);
  }
}
