package org.loomwright.model.vehicle;

/** How an action on the vehicle can be taken back. */
public enum Undo {
  EASILY,
  SPECIAL_TOOL,
  NOT_AT_ALL;

  /** True unless a person can take the action back with ordinary tools. */
  public boolean isHard() {
    return this != EASILY;
  }
}
