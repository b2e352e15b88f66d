package org.loomwright.model.job;

import java.util.Locale;

/** How far a job has come. */
public enum JobState {
  /** Questions are being answered; nothing was changed on the vehicle yet. */
  SURVEY,
  /** The kit is being fitted. */
  UNDER_WAY,
  /** Fitted, measured and signed. */
  SIGNED_OFF,
  /** Given up; what was done is written down. */
  GIVEN_UP;

  /** As people say it, e.g. "under way". */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
