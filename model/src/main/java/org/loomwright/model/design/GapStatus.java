package org.loomwright.model.design;

/** How much of a need a build already meets. */
public enum GapStatus {
  ALREADY_THERE,
  PARTLY_THERE,
  MISSING,
  NOT_KNOWN;

  /** The status in words. */
  public String words() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }
}
