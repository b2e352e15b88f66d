package org.loomwright.planner.watch;

/**
 * Is told what planning is at. Planning is stopped by interrupting its thread: within about a tenth
 * of a second it ends with {@link PlanningStopped}.
 */
@FunctionalInterface
public interface Watch {
  /** Nobody watches. */
  Watch NONE = phase -> {};

  /** Called on the planning thread when a phase begins. */
  void at(PlanPhase phase);
}
