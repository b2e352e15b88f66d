package org.loomwright.model.finding;

import java.util.Locale;

/** What became of a finding. */
public enum FindingState {
  /** Nobody has decided yet. */
  OPEN,
  /** It is so, and something was done about it. */
  ACCEPTED,
  /** Nothing follows from it. */
  SET_ASIDE;

  /** As people say it, e.g. "set aside". */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
