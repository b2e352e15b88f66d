package org.loomwright.cli.store;

import org.loomwright.store.BackupSummary;

/** Counted things in words. */
final class Counts {
  private Counts() {}

  static String of(long count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }

  /** What a store or a backup holds. */
  static String of(BackupSummary summary) {
    return of(summary.revisions(), "revision")
        + ", "
        + of(summary.pictures(), "picture")
        + ", "
        + of(summary.releases(), "release")
        + " with "
        + of(summary.files(), "file");
  }

  /** The seals to compare with those of a backup kept elsewhere, on one line. */
  static String seals(BackupSummary summary) {
    return "Last seals: revision "
        + (summary.revisionSeal().isEmpty() ? "none" : summary.revisionSeal())
        + ", release "
        + (summary.releaseSeal().isEmpty() ? "none" : summary.releaseSeal())
        + ".";
  }
}
