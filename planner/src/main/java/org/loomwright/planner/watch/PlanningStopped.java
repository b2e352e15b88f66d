package org.loomwright.planner.watch;

/**
 * Planning was stopped before it came to an end: its thread was interrupted. The thread still
 * counts as interrupted when this is thrown.
 */
public final class PlanningStopped extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private PlanningStopped() {
    super("Planning was stopped.");
  }

  /**
   * Looks whether to stop; called in loops, often.
   *
   * @throws PlanningStopped when the thread was interrupted
   */
  public static void ifAsked() {
    if (isAsked()) {
      throw new PlanningStopped();
    }
  }

  /** Whether the thread was interrupted. */
  public static boolean isAsked() {
    return Thread.currentThread().isInterrupted();
  }
}
